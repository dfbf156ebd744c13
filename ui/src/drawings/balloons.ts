// Where the balloons of a drawing stand: outside the part, no two on one another, leaders uncrossed.
import type { Point } from './geometry';

/** A balloon placed for its point. */
export interface Placed {
  at: Point;
  to: Point;
}

/**
 * Places one balloon for each point in three columns' worth of room: points in the upper part go to a row
 * along the top, the rest to a row along the bottom, each row in the order of its points so that leaders do
 * not cross. A row holds its balloons at least `gap` apart.
 */
export function placeBalloons(
  points: readonly Point[],
  room: { width: number; top: number; bottom: number; edge: number },
  gap: number,
): Placed[] {
  const each = Math.max(1, Math.floor((room.width - 2 * room.edge) / gap) + 1);
  const middle = [...points].map(([, y]) => y).sort((a, b) => a - b)[Math.floor(points.length / 2)] ?? 0;
  const rows: { up: number[]; down: number[] } = { up: [], down: [] };
  points.forEach(([, y], index) => {
    const wanted = y < middle || points.length === 1 ? rows.up : rows.down;
    const other = wanted === rows.up ? rows.down : rows.up;
    (wanted.length < each ? wanted : other).push(index);
  });
  const placed: Placed[] = points.map((to) => ({ at: to, to }));
  for (const [row, y] of [
    [rows.up, room.top],
    [rows.down, room.bottom],
  ] as const) {
    row.sort((a, b) => (points[a]?.[0] ?? 0) - (points[b]?.[0] ?? 0));
    spread(
      row.map((index) => points[index]?.[0] ?? 0),
      room.edge,
      room.width - room.edge,
      gap,
    ).forEach((x, order) => {
      const index = row[order];
      const to = index === undefined ? undefined : points[index];
      if (index !== undefined && to) placed[index] = { at: [x, y], to };
    });
  }
  return placed;
}

/** Moves sorted positions apart to at least `gap` inside bounds, each as little as it takes. */
export function spread(wanted: readonly number[], low: number, high: number, gap: number): number[] {
  const room = Math.min(gap, wanted.length > 1 ? (high - low) / (wanted.length - 1) : gap);
  const out = [...wanted];
  for (let index = 0; index < out.length; index += 1) {
    const least = index === 0 ? low : (out[index - 1] ?? low) + room;
    out[index] = Math.max(out[index] ?? low, least);
  }
  for (let index = out.length - 1; index >= 0; index -= 1) {
    const most = index === out.length - 1 ? high : (out[index + 1] ?? high) - room;
    out[index] = Math.min(out[index] ?? high, most);
  }
  return out;
}
