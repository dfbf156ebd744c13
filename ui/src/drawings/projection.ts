// Parts of an assembly in space, seen square from the side: x along the hose, y up, z towards the viewer.
import type { Point } from './geometry';

export type Vec = readonly [x: number, y: number, z: number];

export const add = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const times = (a: Vec, k: number): Vec => [a[0] * k, a[1] * k, a[2] * k];
const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vec): Vec => times(a, 1 / (Math.hypot(...a) || 1));

/** Where a point in space falls on the page. */
export const onPage = ([x, y]: Vec): Point => [x, -y];

/**
 * The way an elbow leaves the hose. `outward` is 1 at the right end, -1 at the left; `bendDeg` how far it
 * bends from the hose's line; `turnDeg` where it points, clockwise from straight up when one looks along
 * the hose from left to right. Seen so, the right hand is the viewer's side of the page.
 */
export function elbowDirection(outward: 1 | -1, bendDeg: number, turnDeg: number): Vec {
  const [bend, turn] = [(bendDeg * Math.PI) / 180, (turnDeg * Math.PI) / 180];
  return [outward * Math.cos(bend), Math.sin(bend) * Math.cos(turn), Math.sin(bend) * Math.sin(turn)];
}

/** The centre line of an elbow from its start, along the hose, round the bend: points in space. */
export function elbowLine(start: Vec, outward: 1 | -1, bendDeg: number, turnDeg: number, radius: number): Vec[] {
  const side: Vec = [0, Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  const steps = Math.max(1, Math.ceil(bendDeg / 7.5));
  return Array.from({ length: steps + 1 }, (_, index) => {
    const angle = (((bendDeg * index) / steps) * Math.PI) / 180;
    return add(add(start, [outward * radius * Math.sin(angle), 0, 0]), times(side, radius * (1 - Math.cos(angle))));
  });
}

/** Two directions square to an axis and to each other. */
function frame(axis: Vec): [Vec, Vec] {
  const u = unit(cross(axis, Math.abs(axis[2]) > 0.9 ? [0, 1, 0] : [0, 0, 1]));
  return [u, cross(axis, u)];
}

/** A ring of points about a centre, square to an axis. */
export function ring(centre: Vec, axis: Vec, radius: number, corners: number): Vec[] {
  const [u, v] = frame(unit(axis));
  return Array.from({ length: corners }, (_, index) => {
    const angle = ((index + 0.5) / corners) * 2 * Math.PI;
    return add(centre, add(times(u, radius * Math.cos(angle)), times(v, radius * Math.sin(angle))));
  });
}

/** A prism on the page: its outline, its face where that is seen, and the edges between that show. */
export interface Prism {
  outline: Point[];
  face: Point[] | null;
  edges: [Point, Point][];
}

/** A prism of `corners` sides from one centre to another, as it is seen. */
export function prism(from: Vec, to: Vec, radius: number, corners: number): Prism {
  const axis = unit(add(to, times(from, -1)));
  const [near, far] = [ring(from, axis, radius, corners), ring(to, axis, radius, corners)];
  const seen = near.map((corner, index) => {
    const next = near[(index + 1) % corners] ?? corner;
    const middle = times(add(corner, next), 0.5);
    return dot(add(middle, times(from, -1)), [0, 0, 1]) > 1e-6;
  });
  const edges: [Point, Point][] = [];
  near.forEach((corner, index) => {
    const other = far[index];
    if (other && seen[index] && seen[(index + corners - 1) % corners]) edges.push([onPage(corner), onPage(other)]);
  });
  const facing = Math.abs(axis[2]) > 0.05;
  return {
    outline: hull([...near, ...far].map(onPage)),
    face: facing ? (axis[2] > 0 ? far : near).map(onPage) : null,
    edges,
  };
}

/** The smallest convex outline around points (monotone chain). */
export function hull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (run: readonly Point[]): Point[] => {
    const out: Point[] = [];
    for (const point of run) {
      for (;;) {
        const [a, b] = [out.at(-2), out.at(-1)];
        if (!a || !b || (b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0]) > 1e-9) break;
        out.pop();
      }
      out.push(point);
    }
    return out.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}
