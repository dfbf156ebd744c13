// Ages for drawing. What an age counts from, its limit and its verdict come from the register.
import type { DueLine, PlaceId, Stay, TagCode } from '../../backend/types';
import type { Life } from '../../drawings/LifeChain.svelte';
import { isPast } from '../../state/past';

const DAY_MS = 86_400_000;
/** Mean length of a year and a month of the Gregorian calendar. */
const YEAR_DAYS = 365.2425;
const MONTH_DAYS = YEAR_DAYS / 12;

const days = (from: string, to: string): number => Math.max(0, (Date.parse(to) - Date.parse(from)) / DAY_MS);

/** Years between two days, for a bar. */
export function years(from: string, to: string): number {
  return days(from, to) / YEAR_DAYS;
}

/** Whole months between two days, to the nearest. */
export function months(from: string, to: string): number {
  return Math.round(days(from, to) / MONTH_DAYS);
}

/** The age of one hose held against its limit of service. */
export interface Aged {
  due: DueLine;
  /** Years since the day it counts from; null where no day is known. */
  years: number | null;
  /** True where the hose is at least that old: only the day it was fitted or found is known. */
  atLeast: boolean;
  /** The day it falls due has come. */
  past: boolean;
}

/** The service age of every fitted hose, under its code. */
export function serviceAges(list: readonly DueLine[], on: string): Map<TagCode, Aged> {
  return new Map(list.filter((due) => due.what === 'service').map((due) => [due.code, aged(due, on)]));
}

/** An age for its bar. */
export function aged(due: DueLine, on: string): Aged {
  return {
    due,
    years: due.since ? years(due.since, on) : null,
    atLeast: due.counted_from === 'fitted' && due.what !== 'inspection',
    past: isPast(due, on),
  };
}

/** Whether nobody knows how old it is: no day to count from, or only the day it was found sitting there. */
export function ageUnknown({ due, atLeast }: Aged, stay: Stay | undefined): boolean {
  return due.since === null || (atLeast && stay?.already_there === true);
}

/** Where a scale of ages ends: whole even years past the limits and the oldest hose, so that ticks are round. */
export function scaleEnd(limits: readonly (number | null)[], ages: readonly number[]): number {
  const most = Math.max(2, ...limits.map((limit) => (limit ?? 0) * 1.3), ...ages);
  return Math.ceil(most / 2) * 2;
}

/** The limit that most of these hoses have: the line that a column of bars shares. */
export function commonLimit(ages: readonly Aged[]): number | null {
  const count = new Map<number, number>();
  for (const { due } of ages) if (due.years !== null) count.set(due.years, (count.get(due.years) ?? 0) + 1);
  return [...count].sort((one, other) => other[1] - one[1])[0]?.[0] ?? null;
}

/** The stays of one place as the links of a chain, oldest first. One whose first day nobody knows is a link of no known length. */
export function lives(stays: readonly Stay[], on: string, cause: (code: string) => string, off: string): Life[] {
  return stays.map((stay): Life => {
    const ended = stay.off !== null || stay.off_date !== null;
    return {
      months: stay.on_date === null ? null : months(stay.on_date, stay.off_date ?? on),
      from: stay.on_date?.slice(0, 4) ?? '?',
      why: ended ? (stay.cause ? cause(stay.cause) : off) : undefined,
      failed: stay.cause !== null,
    };
  });
}

/** What failed at a place. */
export interface Failures {
  times: number;
  /** Causes with how often, the most frequent first. */
  causes: { code: string; times: number }[];
}

/** How often the hoses of one place failed, and why. */
export function failures(stays: readonly Stay[]): Failures {
  const count = new Map<string, number>();
  for (const { cause } of stays) if (cause) count.set(cause, (count.get(cause) ?? 0) + 1);
  const causes = [...count].map(([code, times]) => ({ code, times })).sort((one, other) => other.times - one.times);
  return { times: causes.reduce((sum, { times }) => sum + times, 0), causes };
}

/** The hoses at a place that have not come off. More than one is a conflict. */
export function sitting(stays: readonly Stay[], at?: PlaceId): Stay[] {
  return stays.filter((stay) => stay.off === null && stay.off_date === null && (!at || stay.at.place === at));
}
