// A routed hose on the page, to scale: side view (x right, y up) over plan (x right, z towards the viewer).
import type { Point } from './geometry';
import { add, times, type Vec } from './projection';

export type RouteView = 'side' | 'plan';

/** How a hose lies between its ports at one moment, in mm. */
export interface RoutePose {
  hose: readonly Vec[];
  /** Rigid ends, each from the hose to its sealing face; an elbow with its bend. */
  a: readonly Vec[];
  b: readonly Vec[];
}

/** Where the drawing lies on the page; one scale for both views, so that the plan stands under the side view. */
export interface RouteFit {
  scale: number;
  width: number;
  /** Page position of x = 0, and of y = 0 or z = 0 in each view. */
  x: number;
  y: Record<RouteView, number>;
  height: Record<RouteView, number>;
}

/** The most a view may be high, in px. */
export type Room = Record<RouteView, number>;

/** Room at the sides for letters, thumbs and the height's dimension at the left; above and below for the others. */
const MARGIN = { left: 80, right: 42, y: 44 };
const minus = (a: Vec, b: Vec): Vec => add(a, times(b, -1));
const size = (a: Vec): number => Math.hypot(...a);
const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const unit = (a: Vec): Vec => times(a, 1 / (size(a) || 1));

const axis = (view: RouteView, [, y, z]: Vec): number => (view === 'side' ? -y : z);

/** The scale and place at which all poses are seen whole. */
export function fit(poses: readonly RoutePose[], odMm: number, width: number, room: Room): RouteFit {
  const points = poses.flatMap((pose) => [...pose.hose, ...pose.a, ...pose.b]);
  const span = (of: (at: Vec) => number) => {
    const all = points.length > 0 ? points.map(of) : [0];
    return [Math.min(...all) - odMm, Math.max(...all) + odMm] as const;
  };
  const [x, side, plan] = [span(([at]) => at), span((at) => axis('side', at)), span((at) => axis('plan', at))];
  const per = (px: number, [from, to]: readonly [number, number], margins: number) =>
    Math.max(px - margins, 24) / Math.max(to - from, 1);
  const scale = Math.min(
    per(width, x, MARGIN.left + MARGIN.right),
    per(room.side, side, 2 * MARGIN.y),
    per(room.plan, plan, MARGIN.y),
  );
  const high = ([from, to]: readonly [number, number], margin: number) => Math.ceil((to - from) * scale + 2 * margin);
  return {
    scale,
    width,
    x: (width + MARGIN.left - MARGIN.right) / 2 - ((x[0] + x[1]) / 2) * scale,
    y: { side: MARGIN.y - side[0] * scale, plan: MARGIN.y / 2 - plan[0] * scale },
    height: { side: high(side, MARGIN.y), plan: high(plan, MARGIN.y / 2) },
  };
}

/** Where a point in space falls on the page. */
export const onSheet = (fitted: RouteFit, view: RouteView, at: Vec): Point => [
  fitted.x + at[0] * fitted.scale,
  fitted.y[view] + axis(view, at) * fitted.scale,
];

/** A move on the page in space: what a finger that drags an end does to it. */
export const moved = (fitted: RouteFit, view: RouteView, dx: number, dy: number): Vec =>
  view === 'side' ? [dx / fitted.scale, -dy / fitted.scale, 0] : [dx / fitted.scale, 0, dy / fitted.scale];

/** The part of a line between two distances from its start. */
export function between(line: readonly Vec[], from: number, to: number): Vec[] {
  const out: Vec[] = [];
  let far = 0;
  line.forEach((point, index) => {
    const before = line[index - 1];
    if (before) {
      const step = size(minus(point, before));
      const cut = (at: number) => add(before, times(minus(point, before), step > 0 ? (at - far) / step : 0));
      if (from > far && from < far + step) out.push(cut(from));
      if (to > far && to < far + step) out.push(cut(to));
      far += step;
    }
    if (far >= from && far <= to) out.push(point);
  });
  return out;
}

export const lengthOf = (line: readonly Vec[]): number =>
  line.reduce((sum, point, index) => sum + (index ? size(minus(point, line[index - 1] ?? point)) : 0), 0);

/** How a line bends at a distance from its start: the point, the way on, and the way to the centre of its circle. */
export interface Bending {
  point: Vec;
  along: Vec;
  inward: Vec;
}

/** Null where the line is straight there, so that there is no circle. */
export function bendingAt(line: readonly Vec[], atMm: number): Bending | null {
  if (line.length < 3) return null;
  let far = 0;
  let index = 1;
  for (; index < line.length - 2; index += 1) {
    far += size(minus(line[index] ?? [0, 0, 0], line[index - 1] ?? [0, 0, 0]));
    if (far >= atMm) break;
  }
  const [before, point, after] = [line[index - 1], line[index], line[index + 1]];
  if (!before || !point || !after) return null;
  const along = unit(minus(after, before));
  const bent = minus(unit(minus(after, point)), unit(minus(point, before)));
  const inward = minus(bent, times(along, dot(bent, along)));
  return size(inward) > 1e-6 ? { point, along, inward: unit(inward) } : null;
}

/** The circle that touches the line there from the inside, its centre that far from the point: points in space. */
export function circle({ point, along, inward }: Bending, centreMm: number, radiusMm: number): Vec[] {
  const centre = add(point, times(inward, centreMm));
  return Array.from({ length: 72 }, (_, index) => {
    const turn = (index / 72) * 2 * Math.PI;
    return add(centre, add(times(inward, -radiusMm * Math.cos(turn)), times(along, radiusMm * Math.sin(turn))));
  });
}

/** A rigid end in its parts, by plain proportion: nothing is dimensioned from them. */
export interface EndParts {
  ferrule: Vec[];
  tube: Vec[];
  nut: Vec[];
}

export function endParts(course: readonly Vec[], odMm: number): EndParts {
  const all = lengthOf(course);
  const ferrule = Math.min(1.6 * odMm, all * 0.4);
  const nut = Math.min(1.2 * odMm, all * 0.3);
  return {
    ferrule: between(course, 0, ferrule),
    tube: between(course, ferrule * 0.9, all - nut * 0.9),
    nut: between(course, all - nut, all),
  };
}
