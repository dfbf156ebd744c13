// What falls due, in the groups and the order that a person plans by. Days, limits and verdicts are the register's.
import type { Due, DueFor, PolicySet, Scope, SiteId } from '../../backend/types';
import { isPast } from '../../state/past';

const DAY_MS = 86_400_000;
/** How far ahead one plans: the month, the quarter, the year. */
export const SPANS = [30, 90, 365] as const;
export type Span = (typeof SPANS)[number];

/** What is looked at: the life of hoses (fitted or lying in store), or their inspections. */
export type View = 'service' | 'inspection';

export interface Groups {
  /** No day is known to count from. */
  unknown: Due[];
  past: Due[];
  /** Each in the first span that it falls due in. */
  within: Record<Span, Due[]>;
}

/** Whole days from one day to another. */
export function daysUntil(day: string, on: string): number {
  return Math.round((Date.parse(day) - Date.parse(on)) / DAY_MS);
}

/** Whether it belongs to that view. */
export function isOf(view: View, what: DueFor): boolean {
  return (what === 'inspection') === (view === 'inspection');
}

/** The hoses of one site, or of all, in their groups; each keeps the register's order. */
export function groups(list: readonly Due[], on: string, view: View, site: SiteId | null): Groups {
  const all: Groups = { unknown: [], past: [], within: { 30: [], 90: [], 365: [] } };
  for (const due of at(list, view, site)) {
    if (due.due === null) all.unknown.push(due);
    else if (isPast(due, on)) all.past.push(due);
    else {
      const days = daysUntil(due.due, on);
      const span = SPANS.find((most) => days <= most);
      if (span) all.within[span].push(due);
    }
  }
  return all;
}

/** What of a view is at a site, or anywhere. */
export function at(list: readonly Due[], view: View, site: SiteId | null): Due[] {
  return list.filter((due) => isOf(view, due.what) && (site === null || due.at?.site === site));
}

/** What falls due next, past or to come. */
export function firstOf({ past, within, unknown }: Groups): Due | undefined {
  return past[0] ?? SPANS.flatMap((span) => within[span])[0] ?? unknown[0];
}

/** A site with what is past there. */
export interface SiteDue {
  site: SiteId;
  name: string;
  past: number;
}

/** The site with most past its limit; null where nothing is. */
export function worstSite(past: readonly Due[]): SiteDue | null {
  const sites = new Map<SiteId, SiteDue>();
  for (const { at } of past) {
    if (!at?.site) continue;
    const known = sites.get(at.site) ?? { site: at.site, name: at.site_name ?? '', past: 0 };
    sites.set(at.site, { ...known, past: known.past + 1 });
  }
  return [...sites.values()].sort((one, other) => other.past - one.past)[0] ?? null;
}

/** The owner's policy of a scope as it stands; null where there is none. */
export function policyOf(policies: readonly PolicySet[], scope: Scope): PolicySet | null {
  const name = JSON.stringify(scope);
  return policies.find((policy) => JSON.stringify(policy.scope) === name) ?? null;
}
