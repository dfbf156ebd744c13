// What falls due, in the groups and the order that a person plans by. Days, limits, chances and verdicts are the register's.
import type { Question } from '../../backend';
import type { DueLine, DueFor } from '../../backend/types';
import { isPast } from '../../state/past';

const DAY_MS = 86_400_000;
/** How far ahead one plans: the month, the quarter, the year. */
export const SPANS = [30, 90, 365] as const;
export type Span = (typeof SPANS)[number];

/** What is looked at: what is to be replaced (fitted, in store, found wanting, or asked too much of), or to be inspected. */
export type View = 'service' | 'inspection';
export const VIEWS: Record<View, DueFor[]> = {
  service: ['service', 'storage', 'finding', 'asked'],
  inspection: ['inspection'],
};

/** The order: by the day, or by chance of failing times what a failure does. */
export type By = NonNullable<Question<'register.due'>['by']>;

export interface Groups {
  /** What must not run on, whatever its day. */
  stopped: DueLine[];
  /** No day is known to count from. */
  unknown: DueLine[];
  past: DueLine[];
  /** Each in the first span that it falls due in. */
  within: Record<Span, DueLine[]>;
}

/** Whole days from one day to another. */
export function daysUntil(day: string, on: string): number {
  return Math.round((Date.parse(day) - Date.parse(on)) / DAY_MS);
}

/** Rows in their groups; each keeps the register's order. */
export function groups(list: readonly DueLine[], on: string): Groups {
  const all: Groups = { stopped: [], unknown: [], past: [], within: { 30: [], 90: [], 365: [] } };
  for (const due of list) {
    if (due.verdict === 'stop') all.stopped.push(due);
    else if (due.due === null) all.unknown.push(due);
    else if (isPast(due, on)) all.past.push(due);
    else {
      const days = daysUntil(due.due, on);
      const span = SPANS.find((most) => days <= most);
      if (span) all.within[span].push(due);
    }
  }
  return all;
}

/** A site with how much is past there. */
export interface SiteDue {
  site: string;
  name: string;
  past: number;
  stopped: number;
}

/** The site with most stopped, then most past its limit; null where nothing is, or at no site. */
export function worstSite(
  sites: readonly { site: string | null; name: string | null; past: number; stopped: number }[],
): SiteDue | null {
  const [worst] = sites
    .filter(({ site, past }) => site !== null && past > 0)
    .sort((one, other) => other.stopped - one.stopped || other.past - one.past);
  return worst?.site ? { site: worst.site, name: worst.name ?? '', past: worst.past, stopped: worst.stopped } : null;
}
