// What is odd about a reading of an hour meter.
import type { HoursRead } from '../../backend/types';
import { day } from '../../words/date';
import { say } from '../../words/words';
import { hoursText } from './words';

const DAY_MS = 86_400_000;
const HOURS_A_DAY = 24;

/**
 * `same-day`: lower than the reading of the same day, of which the register lets the higher stand. `lower`: a meter does
 * not run back. `jump`: more than a day has hours. `earlier`: of a day before the reading, and higher than it.
 */
export type HoursDoubt = 'same-day' | 'lower' | 'jump' | 'earlier';

/** What is odd about it, in words; null where nothing is. */
export function hoursDoubtText(last: HoursRead | null, hours: number, on: string): string | null {
  const doubt = hoursDoubt(last, hours, on);
  return doubt && last ? say(`machines-hours-${doubt}`, { last: hoursText(last.hours), day: day(last.date) }) : null;
}

/** The reading that stands, with its day. */
export const lastRead = ({ hours, date }: HoursRead): string =>
  say('machines-hours-last', { hours: hoursText(hours), day: day(date) });

/** Why a reading is asked about once more; null where nothing is odd. */
export function hoursDoubt(last: HoursRead | null, hours: number, on: string): HoursDoubt | null {
  if (!last) return null;
  if (on < last.date) return hours > last.hours ? 'earlier' : null;
  if (hours < last.hours) return last.date >= on ? 'same-day' : 'lower';
  const days = Math.max(1, Math.round((Date.parse(on) - Date.parse(last.date)) / DAY_MS));
  return hours - last.hours > days * HOURS_A_DAY ? 'jump' : null;
}
