// Plane geometry shared by the drawings. Units are CSS pixels unless a name says mm.

/** A point of a drawing: right and down. */
export type Point = readonly [x: number, y: number];

const short = (value: number): string => String(Math.round(value * 100) / 100);

/** An SVG path through points. */
export function path(points: readonly Point[], closed = true): string {
  const text = points.map(([x, y], index) => `${index ? 'L' : 'M'}${short(x)} ${short(y)}`).join('');
  return closed ? `${text}Z` : text;
}

/** A closed arrowhead at `tip`, coming from the side of `tail`. */
export function arrow(tip: Point, tail: Point, length = 12, width = length / 2): string {
  const [dx, dy] = [tip[0] - tail[0], tip[1] - tail[1]];
  const far = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [dx / far, dy / far];
  const back: Point = [tip[0] - ux * length, tip[1] - uy * length];
  return path([
    tip,
    [back[0] - (uy * width) / 2, back[1] + (ux * width) / 2],
    [back[0] + (uy * width) / 2, back[1] - (ux * width) / 2],
  ]);
}

/** The point at that distance from a centre, `degrees` clockwise from straight up. */
export function clockwise([x, y]: Point, radius: number, degrees: number): Point {
  const turn = (degrees * Math.PI) / 180;
  return [x + radius * Math.sin(turn), y - radius * Math.cos(turn)];
}

/** An arc about a centre, clockwise from one angle to the other, both from straight up. */
export function arc(centre: Point, radius: number, from: number, to: number): string {
  const [start, end] = [clockwise(centre, radius, from), clockwise(centre, radius, to)];
  const sweep = (((to - from) % 360) + 360) % 360;
  return `M${short(start[0])} ${short(start[1])}A${short(radius)} ${short(radius)} 0 ${sweep > 180 ? 1 : 0} 1 ${short(end[0])} ${short(end[1])}`;
}

/** A sector of a ring, clockwise from one angle to the other. */
export function sector(centre: Point, inner: number, outer: number, from: number, to: number): string {
  const [a, b] = [clockwise(centre, inner, to), clockwise(centre, inner, from)];
  const large = (((to - from) % 360) + 360) % 360 > 180 ? 1 : 0;
  return `${arc(centre, outer, from, to)}L${short(a[0])} ${short(a[1])}A${short(inner)} ${short(inner)} 0 ${large} 0 ${short(b[0])} ${short(b[1])}Z`;
}

/** A regular polygon; `turn` in degrees clockwise puts a corner there, 0 at the top. */
export function polygon(centre: Point, corners: number, radius: number, turn = 0): Point[] {
  return Array.from({ length: corners }, (_, index) => clockwise(centre, radius, turn + (index * 360) / corners));
}

/**
 * The scale for a part of that size in that room: whole pixels a millimetre where it can be, so that lines
 * fall on pixels and candidates beside one another can be compared; for large parts halves and quarters.
 */
export function wholeScale(room: number, sizeMm: number): number {
  const scale = room / sizeMm;
  if (!Number.isFinite(scale) || scale <= 0) return 1;
  const steps = scale >= 3 ? 1 : scale >= 1 ? 2 : 4;
  return Math.max(0.25, Math.floor(scale * steps) / steps);
}

/** About how wide a bold text of that size comes out in the condensed face: what a gap for it needs. */
export function textWidth(text: string, size: number): number {
  return text.length * size * 0.57;
}

/** Ticks at round values over a span: about `wanted` of them. */
export function ticks(from: number, to: number, wanted: number): number[] {
  const rough = (to - from) / Math.max(1, wanted);
  if (!(rough > 0)) return [];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((factor) => factor * power >= rough) ?? 10);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * step);
}

/** A box along a line, that far to either side of it. */
export function box(from: Point, to: Point, half: number): Point[] {
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const [nx, ny] = [(-(to[1] - from[1]) / far) * half, ((to[0] - from[0]) / far) * half];
  return [
    [from[0] + nx, from[1] + ny],
    [to[0] + nx, to[1] + ny],
    [to[0] - nx, to[1] - ny],
    [from[0] - nx, from[1] - ny],
  ];
}
