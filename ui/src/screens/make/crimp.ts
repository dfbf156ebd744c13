// Crimp readings against the person's own figures. Nothing is judged here beyond what was entered.
import type { BuildSheet, Role } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';

/** Directions over the flats that are read at one place along the ferrule. */
export const CRIMP_DIRECTIONS = 4;
/** Places along the ferrule: behind its mouth, in its middle, before its end. */
export const CRIMP_PLACES = 3;
/** All readings of one end. */
const CRIMP_READINGS = CRIMP_DIRECTIONS * CRIMP_PLACES;

/** Readings of one end in mm, four to a place; null was struck and is to be read anew. */
export type Readings = JobDoc['crimps'][Role];

/** Readings of one end in mm. */
export interface Spread {
  min: number;
  max: number;
  mean: number;
  count: number;
}

/** Smallest, largest and mean; null while nothing was read. */
export function spreadOf(readings: Readings): Spread | null {
  const read = readings.filter((one) => one !== null);
  if (read.length === 0) return null;
  return {
    min: Math.min(...read),
    max: Math.max(...read),
    mean: read.reduce((sum, one) => sum + one, 0) / read.length,
    count: read.length,
  };
}

/** Which readings lie outside the tolerance; a reading on its edge is inside. */
export function outside(readings: Readings, target: number, tolerance: number): number[] {
  // Readings are in hundredths: the sums of decimals must not decide at the edge.
  const edge = tolerance + 1e-9;
  return readings.flatMap((one, index) => (one !== null && Math.abs(one - target) > edge ? [index] : []));
}

/** Which readings of an end lie outside what was entered for it; none while nothing was. */
export function outsideOf(settings: BuildSheet['settings'][number] | undefined, readings: Readings): number[] {
  const { crimp_diameter_mm: target, crimp_tolerance_mm: tolerance } = settings ?? {};
  return target == null || tolerance == null ? [] : outside(readings, target, tolerance);
}

/** The first reading of the hose that lies outside; such a crimp is neither ticked nor tagged. */
export function firstOutside(sheet: BuildSheet, crimps: JobDoc['crimps']): { role: Role; index: number } | null {
  for (const role of ['A', 'B'] as const) {
    const settings = sheet.settings.find((one) => one.role === role);
    const index = outsideOf(settings, crimps[role])[0];
    if (index !== undefined) return { role, index };
  }
  return null;
}

/** The reading that is to be taken next; null once all places are read. */
export function nextReading(readings: Readings): number | null {
  const struck = readings.indexOf(null);
  const next = struck < 0 ? readings.length : struck;
  return next < CRIMP_READINGS ? next : null;
}

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
