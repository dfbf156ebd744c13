import { describe, expect, it } from 'vitest';
import { arc } from './geometry';
import { elbowDirection, onPage, prism } from './projection';
import { hand, wrap } from './turn';

describe('the turn, looking along the hose from A to B with A up', () => {
  it.each([
    { turn: 0, x: 0, y: -10, where: 'up' },
    { turn: 90, x: 10, y: 0, where: 'right' },
    { turn: 180, x: 0, y: 10, where: 'down' },
    { turn: 270, x: -10, y: 0, where: 'left' },
    { turn: -90, x: -10, y: 0, where: 'left' },
    { turn: 450, x: 10, y: 0, where: 'right' },
  ])('$turn degrees is $where on the clock', ({ turn, x, y }) => {
    const [hx, hy] = hand([0, 0], 10, turn);
    expect(hx).toBeCloseTo(x, 9);
    expect(hy).toBeCloseTo(y, 9);
  });

  it('runs clockwise', () => {
    // The sweep flag of an SVG arc is 1 clockwise on a page whose y runs down.
    expect(arc([0, 0], 10, 0, 90)).toBe('M0 -10A10 10 0 0 1 10 0');
    expect(arc([0, 0], 10, 0, 270)).toBe('M0 -10A10 10 0 1 1 -10 0');
  });

  it('is told as 0 to 359', () => {
    expect([wrap(-10), wrap(360), wrap(725)]).toEqual([350, 0, 5]);
  });

  it('agrees with the side view: the eye’s right hand is the viewer’s side of the page', () => {
    // The eye looks along +x with y up; its right is x cross y, which is +z, towards the viewer.
    const [x, y, z] = elbowDirection(1, 90, 90);
    expect([x, y, z].map((part) => Math.round(part * 1e9) / 1e9)).toEqual([0, 0, 1]);
    expect(elbowDirection(1, 90, 270)[2]).toBeCloseTo(-1, 9);
    expect(onPage(elbowDirection(1, 90, 0))[1], 'straight up the page').toBeCloseTo(-1, 9);
  });

  it('shows the face of an elbow that points at the viewer, and its back when it points away', () => {
    const towards = prism([0, 0, 0], [0, 0, 10], 5, 6);
    expect(towards.face).toHaveLength(6);
    const across = prism([0, 0, 0], [10, 0, 0], 5, 6);
    expect(across.face).toBeNull();
    expect(across.edges.length).toBeGreaterThan(0);
  });
});
