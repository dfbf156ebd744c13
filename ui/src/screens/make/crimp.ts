// Where the readings of a crimp stand around the ferrule and along it. What they say is judged by `bench.judge`.
import type { Role } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';

/** Directions over the flats that are read at one place along the ferrule. */
export const CRIMP_DIRECTIONS = 4;
/** Places along the ferrule: behind its mouth, in its middle, before its end. */
export const CRIMP_PLACES = 3;

/** Readings of one end in mm, four to a place; null was struck and is to be read anew. */
export type Readings = JobDoc['crimps'][Role];

/** The place along the ferrule that a reading belongs to. */
export function placeOf(index: number): number {
  return Math.floor(index / CRIMP_DIRECTIONS);
}

/** The readings of one place along the ferrule, with null for those not read yet. */
export function atPlace(readings: Readings, place: number): (number | null)[] {
  return Array.from({ length: CRIMP_DIRECTIONS }, (_, at) => readings[place * CRIMP_DIRECTIONS + at] ?? null);
}

/** The place along the ferrule that was read last. */
export function lastPlaceOf(readings: Readings): number {
  return placeOf(Math.max(0, readings.length - 1));
}

/** The reading after that one at the same place; null where the place is full or the next one stands already. */
export function nextAtPlace(readings: Readings, index: number): number | null {
  const next = index + 1;
  return placeOf(next) === placeOf(index) && (readings[next] ?? null) === null ? next : null;
}
