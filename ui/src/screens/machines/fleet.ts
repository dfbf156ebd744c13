// Machines and places for their lists. Limits, ages and verdicts come from the register.
import type { Due, Hit, MachineId, MachineRow, PlaceRow, SiteId, SiteRow, Stay } from '../../backend/types';
import type { Aged } from './ages';

/** A site with its machines; null are the machines without one. */
export interface SiteGroup {
  site: SiteRow | null;
  machines: MachineRow[];
}

/** Machines under their sites, in the register's order; the machines without a site last. */
export function bySite(sites: readonly SiteRow[], machines: readonly MachineRow[]): SiteGroup[] {
  const at = (site: SiteId | null) => machines.filter((machine) => machine.site === site);
  const loose = at(null);
  return [
    ...sites.map((site) => ({ site, machines: at(site.site) })),
    ...(loose.length > 0 ? [{ site: null, machines: loose }] : []),
  ];
}

/** How many hoses of each machine are past their limit of service. */
export function pastLimit(due: readonly Due[]): Map<MachineId, number> {
  const count = new Map<MachineId, number>();
  for (const { what, verdict, at } of due) {
    if (what !== 'service' || verdict === 'pass' || !at?.machine) continue;
    count.set(at.machine, (count.get(at.machine) ?? 0) + 1);
  }
  return count;
}

const order: readonly Hit['what'][] = ['machine', 'place', 'hose', 'site'];

/** Hits as a person looks for them: the machine before its places, a place before its hoses. */
export function sortedHits(hits: readonly Hit[]): Hit[] {
  return hits.toSorted((one, other) => order.indexOf(one.what) - order.indexOf(other.what));
}

/** A place in the list of its machine. */
export interface PlaceLine {
  row: PlaceRow;
  /** What has not come off; more than one is a contradiction that a person settles. */
  hoses: Stay[];
  /** The gravest of their ages. */
  age: Aged | null;
}

const past = ({ age }: PlaceLine): boolean => age !== null && age.due.verdict !== 'pass';

/** The places of a machine: past their limit first, the longest over before the others, then by number. */
export function placeLines(rows: readonly PlaceRow[], ages: ReadonlyMap<string, Aged>): PlaceLine[] {
  const lines = rows.map((row): PlaceLine => {
    const hoses = row.hoses.filter((stay) => stay.off === null && stay.off_date === null);
    return { row, hoses, age: oldest(hoses.flatMap(({ code }) => ages.get(code) ?? [])) };
  });
  return lines.toSorted(
    (one, other) =>
      Number(past(other)) - Number(past(one)) ||
      (past(one) ? dueDay(one).localeCompare(dueDay(other)) : 0) ||
      one.row.place.number - other.row.place.number,
  );
}

const dueDay = ({ age }: PlaceLine): string => age?.due.due ?? '';

function oldest(ages: readonly Aged[]): Aged | null {
  return ages.toSorted((one, other) => (one.due.due ?? '').localeCompare(other.due.due ?? ''))[0] ?? null;
}

/** The place that needs a hose first: the one longest past its limit, else the lowest number. */
export function firstPlace(lines: readonly PlaceLine[]): { line: PlaceLine; past: boolean } | null {
  const [line] = lines;
  return line ? { line, past: past(line) } : null;
}

/** The number for the next place: one past the highest. */
export function nextNumber(rows: readonly PlaceRow[]): number {
  return Math.max(0, ...rows.map(({ place }) => place.number)) + 1;
}

/** A place's number as it was typed; null where it is not a whole number from 1 to 999. */
export function placeNumber(typed: string): number | null {
  const text = typed.trim();
  return /^[1-9]\d{0,2}$/.test(text) ? Number(text) : null;
}
