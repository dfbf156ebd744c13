import { describe, expect, it } from 'vitest';
import { scrolledTo, seen } from './window';

const ROW = 48;
const VIEW = 480;

describe('what is drawn of a long list', () => {
  it('is what is in sight and a little around, of a hundred as of a hundred thousand', () => {
    for (const rows of [100, 100_000]) {
      const { from, to, top, height } = seen(rows, ROW, VIEW, 50 * ROW);
      expect([from, to, top, height]).toEqual([42, 68, 42 * ROW, rows * ROW]);
    }
  });

  it('is the whole of a short one, and nothing of none', () => {
    expect(seen(3, ROW, VIEW, 0)).toEqual({ from: 0, to: 3, top: 0, height: 3 * ROW });
    expect(seen(0, ROW, VIEW, 0)).toEqual({ from: 0, to: 0, top: 0, height: 0 });
  });

  it('reaches the last row of a million, which no browser draws at full height', () => {
    const rows = 1_000_000;
    const { height } = seen(rows, ROW, VIEW, 0);
    expect(height).toBeLessThan(17_000_000);
    const end = height - VIEW;
    const { from, to, top } = seen(rows, ROW, VIEW, end);
    expect(to).toBe(rows);
    expect(top + (rows - from) * ROW).toBeCloseTo(height, 3);
  });
});

describe('a row is brought into sight', () => {
  it('moves as little as possible, and not at all where it is seen', () => {
    expect(scrolledTo(5, 100, ROW, VIEW, 0)).toBe(0);
    expect(scrolledTo(10, 100, ROW, VIEW, 0)).toBe(ROW);
    expect(scrolledTo(2, 100, ROW, VIEW, 10 * ROW)).toBe(2 * ROW);
  });

  it('whichever of a million it is', () => {
    const rows = 1_000_000;
    for (const index of [0, 1, 499_999, 999_998, 999_999]) {
      const scrolled = scrolledTo(index, rows, ROW, VIEW, 7_000_000);
      const { from, to, top } = seen(rows, ROW, VIEW, scrolled);
      expect(index >= from && index < to).toBe(true);
      const place = top + (index - from) * ROW - scrolled;
      expect(place).toBeGreaterThanOrEqual(-0.01);
      expect(place + ROW).toBeLessThanOrEqual(VIEW + 0.01);
    }
  });
});
