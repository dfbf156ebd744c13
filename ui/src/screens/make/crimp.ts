// Crimp readings against the person's own figures. Nothing is judged here beyond what was entered.

/** Directions over the flats that are read at one place along the ferrule. */
export const CRIMP_DIRECTIONS = 4;
/** Places along the ferrule: behind its mouth, in its middle, before its end. */
export const CRIMP_PLACES = 3;
/** All readings of one end. */
export const CRIMP_READINGS = CRIMP_DIRECTIONS * CRIMP_PLACES;

/** Readings of one end in mm. */
export interface Spread {
  min: number;
  max: number;
  mean: number;
}

/** Smallest, largest and mean; null while nothing was read. */
export function spreadOf(readings: readonly number[]): Spread | null {
  if (readings.length === 0) return null;
  return {
    min: Math.min(...readings),
    max: Math.max(...readings),
    mean: readings.reduce((sum, one) => sum + one, 0) / readings.length,
  };
}

/** Which readings lie outside the tolerance; a reading on its edge is inside. */
export function outside(readings: readonly number[], target: number, tolerance: number): number[] {
  // Readings are in hundredths: the sums of decimals must not decide at the edge.
  const edge = tolerance + 1e-9;
  return readings.flatMap((one, index) => (Math.abs(one - target) > edge ? [index] : []));
}

/** The readings of one place along the ferrule, with null for those not read yet. */
export function atPlace(readings: readonly number[], place: number): (number | null)[] {
  return Array.from({ length: CRIMP_DIRECTIONS }, (_, at) => readings[place * CRIMP_DIRECTIONS + at] ?? null);
}

/** The place along the ferrule that was read last. */
export function lastPlaceOf(readings: readonly number[]): number {
  return Math.floor(Math.max(0, readings.length - 1) / CRIMP_DIRECTIONS);
}
