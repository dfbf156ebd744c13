// A curve that falls in steps, and the band of its bounds.

/** The part left after a time, and what it may be. */
export interface CurveStep {
  years: number;
  left: number;
  low: number;
  high: number;
}

type Place = (years: number, part: number) => [number, number];

const point = ([x, y]: [number, number]): string => `${x} ${y}`;

/** The corners of a line that begins at 1 and falls in steps until it is watched no more. */
function corners(steps: readonly CurveStep[], of: (step: CurveStep) => number, longest: number, at: Place): string[] {
  let part = 1;
  const path = [point(at(0, part))];
  for (const step of steps) {
    path.push(point(at(step.years, part)));
    part = of(step);
    path.push(point(at(step.years, part)));
  }
  return [...path, point(at(longest, part))];
}

/** The curve itself, as an SVG path. */
export function curve(steps: readonly CurveStep[], longest: number, at: Place): string {
  return `M${corners(steps, (step) => step.left, longest, at).join('L')}`;
}

/** The band between its bounds, as an SVG path. */
export function band(steps: readonly CurveStep[], longest: number, at: Place): string {
  const high = corners(steps, (step) => step.high, longest, at);
  const low = corners(steps, (step) => step.low, longest, at);
  return `M${[...high, ...low.toReversed()].join('L')}Z`;
}
