// What falls due, in the groups and the order that a person plans by. Days, limits and verdicts are the register's.
import type { Due, DueFor, PolicySet, Scope, SiteId } from '../../backend/types';
import { isPast } from '../../state/past';

const DAY_MS = 86_400_000;
/** How far ahead one plans. */
const AHEAD_DAYS = 365;

/** What is looked at: the life of hoses (fitted or lying in store), or their inspections. */
export type View = 'service' | 'inspection';

export interface Groups {
  /** No day is known to count from. */
  unknown: Due[];
  past: Due[];
  soon: Due[];
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
  const all: Groups = { unknown: [], past: [], soon: [] };
  for (const due of list) {
    if (!isOf(view, due.what) || (site !== null && due.at?.site !== site)) continue;
    if (due.due === null) all.unknown.push(due);
    else if (isPast(due, on)) all.past.push(due);
    else if (daysUntil(due.due, on) <= AHEAD_DAYS) all.soon.push(due);
  }
  return all;
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
