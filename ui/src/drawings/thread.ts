// The profile of a thread and of a seat in section. Radii and heights in mm; y runs from the mating face into the part.
import type { Point } from './geometry';

/** A thread by its catalogue row. */
export interface Thread {
  majorMm: number;
  minorMm: number;
  pitchMm: number;
  /** Angle between the flanks: 60 for unified and metric, 55 for Whitworth form. */
  flankDeg: number;
  /** 1 in 16 on the diameter. */
  taper?: boolean;
}

/** Radius lost for each mm of a 1 in 16 taper. */
const TAPER = 1 / 32;

/**
 * The line of a thread in section from y `from` to y `to`: points (radius, y). The basic profile's flats:
 * P/8 at the major diameter, P/4 at the minor; the flanks take their angle and what the diameters leave.
 */
export function threadLine(thread: Thread, from: number, to: number): Point[] {
  const { majorMm, minorMm, pitchMm, flankDeg, taper } = thread;
  const depth = Math.max(0, (majorMm - minorMm) / 2);
  const flank = Math.min(depth * Math.tan((flankDeg * Math.PI) / 360), pitchMm * 0.4);
  const major = pitchMm / 8;
  const minor = Math.max(0, pitchMm - major - 2 * flank);
  const widen = (y: number): number => (taper ? (y - from) * TAPER : 0);
  const points: Point[] = [];
  const at = (radius: number, y: number) => {
    if (y <= to) points.push([radius + widen(y), y]);
  };
  for (let y = from; y < to; y += pitchMm) {
    at(minorMm / 2, y);
    at(minorMm / 2, y + minor);
    at(majorMm / 2, y + minor + flank);
    at(majorMm / 2, y + minor + flank + major);
  }
  return points;
}

/** A seat by its catalogue row: what the mating cone looks like on this half. */
export interface Seat {
  /** Included angle: a 37 degree flare has 74. */
  angleDeg: number;
  /** Stands proud or is hollow, on the half that is drawn. */
  cone: 'convex' | 'concave';
}

/** How far a cone runs along the axis between two radii. */
export function coneDepth(outer: number, inner: number, angleDeg: number): number {
  return Math.abs(outer - inner) / Math.tan((angleDeg * Math.PI) / 360);
}
