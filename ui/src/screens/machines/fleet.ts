// Machines and places for their lists. Limits, ages and verdicts come from the register.
import type { Hit, MachineRow, PlaceId, PlaceRow, SiteId, SiteRow, Stay } from '../../backend/types';
import { ageUnknown, type Aged } from './ages';

/** A site with its machines; null are the machines without one. */
export interface SiteGroup {
  site: SiteRow | null;
  machines: MachineRow[];
}

/** Machines under their sites, in the register's order; the machines without a site last. */
export function bySite(sites: readonly SiteRow[], machines: readonly MachineRow[]): SiteGroup[] {
  const groups = new Map<SiteId | null, MachineRow[]>();
  for (const machine of machines) {
    const group = groups.get(machine.site);
    if (group) group.push(machine);
    else groups.set(machine.site, [machine]);
  }
  const at = (site: SiteId | null) => groups.get(site) ?? [];
  const loose = at(null);
  return [
    ...sites.map((site) => ({ site, machines: at(site.site) })),
    ...(loose.length > 0 ? [{ site: null, machines: loose }] : []),
  ];
}

const order: readonly Hit['what'][] = ['machine', 'place', 'hose', 'site'];

/** Hits as a person looks for them: the machine before its places, a place before its hoses. */
export function sortedHits(hits: readonly Hit[]): Hit[] {
  return hits.toSorted((one, other) => order.indexOf(one.what) - order.indexOf(other.what));
}

/** Why a place comes before the others, gravest first: its hose must not run on; failed, or came off, and none sits there; its hose is past its limit, or nobody knows how old it is. */
const reasons = ['stopped', 'failed', 'came-off', 'past', 'age-unknown'] as const;
export type Reason = (typeof reasons)[number];

/** A place in the list of its machine. */
export interface PlaceLine {
  row: PlaceRow;
  /** What has not come off; more than one is a contradiction that a person settles. */
  hoses: Stay[];
  /** The gravest of their ages. */
  age: Aged | null;
  /** Why it comes first; null where nothing is to be done. */
  reason: Reason | null;
  /** Whether a job there is not done. It keeps its row: rows that change places are tapped wrong. */
  job: boolean;
}

/** The places of a machine: what needs a hose first, then by number. `open` are the places with a job that is not done, `stopped` those whose hose must not run on. */
export function placeLines(
  rows: readonly PlaceRow[],
  ages: ReadonlyMap<string, Aged>,
  open: ReadonlySet<PlaceId> = new Set(),
  stopped: ReadonlySet<PlaceId> = new Set(),
): PlaceLine[] {
  const lines = rows.map((row): PlaceLine => {
    const hoses = row.hoses.filter((stay) => stay.off === null && stay.off_date === null);
    const age = oldest(hoses.flatMap(({ code }) => ages.get(code) ?? []));
    return {
      row,
      hoses,
      age,
      reason: stopped.has(row.place.place) ? 'stopped' : reasonOf(row, hoses, age),
      job: open.has(row.place.place),
    };
  });
  return lines.toSorted(
    (one, other) =>
      rank(one) - rank(other) ||
      (one.reason === 'past' ? dueDay(one).localeCompare(dueDay(other)) : offDay(other).localeCompare(offDay(one))) ||
      one.row.place.number - other.row.place.number,
  );
}

function reasonOf({ last_off }: PlaceRow, hoses: readonly Stay[], age: Aged | null): Reason | null {
  if (hoses.length === 0) return last_off && (last_off.cause === null ? 'came-off' : 'failed');
  if (age?.past) return 'past';
  const doubt =
    age &&
    ageUnknown(
      age,
      hoses.find(({ code }) => code === age.due.code),
    );
  return doubt ? 'age-unknown' : null;
}

const rank = ({ reason }: PlaceLine): number => (reason === null ? reasons.length : reasons.indexOf(reason));
const dueDay = ({ age }: PlaceLine): string => age?.due.due ?? '';
/** The day the hose came off that a place now misses. */
const offDay = ({ row, hoses }: PlaceLine): string => (hoses.length === 0 ? (row.last_off?.off_date ?? '') : '');

function oldest(ages: readonly Aged[]): Aged | null {
  return ages.toSorted((one, other) => (one.due.due ?? '').localeCompare(other.due.due ?? ''))[0] ?? null;
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
