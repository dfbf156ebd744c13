// The turn of end B against end A. One convention everywhere: looking along the hose from A towards B with
// A's elbow pointing up, the angle clockwise to B's elbow, 0 to 359 degrees.
import { clockwise, type Point } from './geometry';

/** An angle as 0 to under 360. */
export function wrap(degrees: number): number {
  return ((degrees % 360) + 360) % 360;
}

/** Where the hand of that turn ends on the clock: 0 up, 90 right. */
export function hand(centre: Point, radius: number, turnDeg: number): Point {
  return clockwise(centre, radius, wrap(turnDeg));
}
