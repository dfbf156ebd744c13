import { describe, expect, it } from 'vitest';
import type { Vec } from './projection';
import { bendingAt, between, circle, endParts, fit, lengthOf, moved, onSheet, type RoutePose } from './route';

/** Half a circle of 100 mm from the top round to the bottom, in the side view or leaning into the plan. */
const half = (lean = 0): Vec[] =>
  Array.from({ length: 181 }, (_, degree): Vec => {
    const turn = (degree * Math.PI) / 180;
    return [100 * Math.sin(turn), 100 * Math.cos(turn) * Math.cos(lean), 100 * Math.cos(turn) * Math.sin(lean)];
  });
const pose: RoutePose = {
  hose: half(),
  a: [
    [0, 100, 0],
    [-80, 100, 0],
  ],
  b: [
    [0, -100, 0],
    [-80, -100, 0],
  ],
};
const far = (a: Vec, b: Vec) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

describe('a routed hose on the page', () => {
  it.each([0, 0.7, 1.5])('its circle touches it where it is tightest and has its centre, leaning by %s', (lean) => {
    const line = half(lean);
    const bend = bendingAt(line, lengthOf(line) / 2);
    if (!bend) throw new Error('the line bends');
    expect(bend.point[0]).toBeCloseTo(100, 1);
    const inner = circle(bend, 100, 90);
    for (const at of inner) expect(far(at, [0, 0, 0])).toBeCloseTo(90, 4);
    expect(Math.min(...inner.map((at) => far(at, bend.point)))).toBeCloseTo(10, 1);
  });

  it('a circle is found at the very ends as well, and none where it is straight', () => {
    const line = half();
    expect(bendingAt(line, 0)?.inward[1]).toBeCloseTo(-1, 1);
    expect(bendingAt(line, lengthOf(line))?.inward[1]).toBeCloseTo(1, 1);
    expect(
      bendingAt(
        [
          [0, 0, 0],
          [1, 0, 0],
          [2, 0, 0],
        ],
        1,
      ),
    ).toBeNull();
  });

  it.each([320, 390, 780])('every pose is seen whole at a width of %s, both views at one scale', (width) => {
    const room = { side: 320, plan: 120 };
    const wide: RoutePose = { ...pose, hose: [...pose.hose, [0, -100, 60]], b: [[-400, -100, 60]] };
    const fitted = fit([pose, wide], 20, width, room);
    for (const view of ['side', 'plan'] as const) {
      expect(fitted.height[view]).toBeLessThanOrEqual(room[view] + 1);
      for (const at of [...pose.hose, ...pose.a, ...wide.hose, ...wide.b]) {
        const [x, y] = onSheet(fitted, view, at);
        expect(x).toBeGreaterThan(20);
        expect(x).toBeLessThan(width - 20);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(fitted.height[view]);
      }
    }
    expect(onSheet(fitted, 'side', [10, 0, 0])[0]).toBe(onSheet(fitted, 'plan', [10, 0, 0])[0]);
  });

  it('a drag comes to the move in space that the page shows', () => {
    const fitted = fit([pose], 20, 390, { side: 320, plan: 120 });
    for (const view of ['side', 'plan'] as const) {
      const [before, after] = [onSheet(fitted, view, [0, 0, 0]), onSheet(fitted, view, moved(fitted, view, 12, -7))];
      expect([after[0] - before[0], after[1] - before[1]]).toEqual([expect.closeTo(12, 6), expect.closeTo(-7, 6)]);
    }
  });

  it('a part of a line is as long as asked, across its points and within one step', () => {
    const line: Vec[] = [
      [0, 0, 0],
      [10, 0, 0],
      [10, 10, 0],
    ];
    expect(lengthOf(between(line, 4, 16))).toBeCloseTo(12, 9);
    expect(between(line, 2, 5)).toEqual([
      [2, 0, 0],
      [5, 0, 0],
    ]);
    expect(lengthOf(between(line, -5, 100))).toBeCloseTo(20, 9);
  });

  it('ferrule, tube and nut of an end follow one another to its sealing face', () => {
    const { ferrule, tube, nut } = endParts(
      [
        [0, 0, 0],
        [60, 0, 0],
        [60, 40, 0],
      ],
      20,
    );
    expect(ferrule[0]).toEqual([0, 0, 0]);
    expect(nut.at(-1)).toEqual([60, 40, 0]);
    expect(lengthOf(ferrule) + lengthOf(nut)).toBeLessThan(100);
    expect(lengthOf(tube)).toBeGreaterThan(0);
  });
});
