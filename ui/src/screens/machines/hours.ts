// What is odd about a reading of an hour meter.
import type { HoursRead } from '../../backend/types';

const DAY_MS = 86_400_000;
const HOURS_A_DAY = 24;

/**
 * `same-day`: lower than the reading of the same day, of which the register lets the higher stand. `lower`: a meter does
 * not run back. `jump`: more than a day has hours.
 */
export type HoursDoubt = 'same-day' | 'lower' | 'jump';

/** Why a reading is asked about once more; null where nothing is odd. */
export function hoursDoubt(last: HoursRead | null, hours: number, on: string): HoursDoubt | null {
  if (!last) return null;
  if (hours < last.hours) return last.date >= on ? 'same-day' : 'lower';
  const days = Math.max(1, Math.round((Date.parse(on) - Date.parse(last.date)) / DAY_MS));
  return hours - last.hours > days * HOURS_A_DAY ? 'jump' : null;
}
