// The answer of the routing as it is drawn: poses in space, the tightest spot, the dimensions of a pose.
import type { FieldRouted } from '../../backend/types';
import { add, times, type Vec } from '../../drawings/projection';
import { lengthOf, type RoutePose } from '../../drawings/route';

/** How many points round an elbow's corner. */
const ROUND = 8;

/** An end from the hose to its sealing face, its corner rounded as an elbow is. */
export function course(axis: readonly Vec[]): Vec[] {
  const [seal, corner, ferrule] = axis;
  if (!seal || !corner || !ferrule) return axis.toReversed();
  const legs = [lengthOf([ferrule, corner]), lengthOf([corner, seal])] as const;
  const cut = 0.7 * Math.min(...legs);
  const towards = (end: Vec, far: number) => add(corner, times(add(end, times(corner, -1)), cut / (far || 1)));
  const [from, to] = [towards(ferrule, legs[0]), towards(seal, legs[1])];
  const bend = Array.from({ length: ROUND + 1 }, (_, index): Vec => {
    const t = index / ROUND;
    return add(add(times(from, (1 - t) ** 2), times(corner, 2 * t * (1 - t))), times(to, t * t));
  });
  return [ferrule, ...bend, seal];
}

/** Every pose that is drawn; where the hose does not reach, its ends alone. */
export function posesOf(answer: FieldRouted): RoutePose[] {
  return answer.poses.map(({ a, b }, index) => {
    const ends = { a: course(a.axis_mm), b: course(b.axis_mm) };
    const points = answer.routed?.poses[index]?.points_mm ?? [];
    const [first, last] = [ends.a[0], ends.b[0]];
    return { ...ends, hose: points.length > 0 && first && last ? [first, ...points, last] : [] };
  });
}

export interface Spot {
  atMm: number;
  centreMm: number;
  insideMm: number;
}

/** Where a pose bends tightest, along the hose as it is drawn; null where it is straight or not known. */
export function spotOf(answer: FieldRouted, index: number): Spot | null {
  const bend = answer.routed?.poses[index];
  const [end, first] = [answer.poses[index]?.a.axis_mm.at(-1), bend?.points_mm[0]];
  if (!bend || bend.min_radius_mm === null || bend.at_mm === null || bend.min_inside_radius_mm === null) return null;
  // The hose is drawn from the ferrule on; the routing counts from where it may bend.
  const before = end && first ? lengthOf([end, first]) : 0;
  return { atMm: before + bend.at_mm, centreMm: bend.min_radius_mm, insideMm: bend.min_inside_radius_mm };
}
