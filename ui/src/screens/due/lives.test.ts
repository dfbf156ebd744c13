import { expect, it } from 'vitest';
import type { Life, LivesOf } from '../../backend/types';
import { band, curve } from '../../drawings/curve';
import { groupName, lifeEnd, lifeSteps, parted, span } from './lives';

const life = (more: Partial<Life> = {}): Life => ({
  n: 3,
  failures: 2,
  unfitted: null,
  shape: 1,
  scale: 4,
  shape_ci95: [0.5, 2],
  scale_ci95: [2, 8],
  log_likelihood: -3,
  b10: 0.4,
  b10_ci95: [0.1, 1.6],
  mean: 4,
  survival: [
    [1, 0.5],
    [3, 0],
  ],
  survival_ci95: [[0.2, 0.8], null],
  ...more,
});
const group = (standard: string, of: Life, longest = 3.2): LivesOf => ({
  of: { by: 'hose', standard, type: '2SN' },
  longest,
  life: of,
});

it('where nothing is left the band reaches from nought to what it was: nobody knows better', () => {
  expect(lifeSteps(life())).toEqual([
    { years: 1, left: 0.5, low: 0.2, high: 0.8 },
    { years: 3, left: 0, low: 0, high: 0.8 },
  ]);
});

it('the curve falls in steps and ends where watching ended', () => {
  const at = (years: number, part: number): [number, number] => [years, part];
  expect(curve(lifeSteps(life()), 3.2, at)).toBe('M0 1L1 1L1 0.5L3 0.5L3 0L3.2 0');
  expect(band(lifeSteps(life()).slice(0, 1), 2, at)).toBe('M0 1L1 1L1 0.8L2 0.8L2 0.2L1 0.2L1 1L0 1Z');
});

it('too few are told apart from those of which something can be said', () => {
  const few = group('EN 856', life({ failures: 1, unfitted: 'too-few-failures' }));
  const told = group('EN 853', life());
  expect(parted([told, few])).toEqual({ told: [told], few: [few] });
  expect(lifeEnd([told, group('EN 857', life(), 5.1)])).toBe(6);
});

it('a group is named as people name it, a bound that nobody knows is open', () => {
  expect(groupName({ by: 'hose', standard: 'EN 853', type: '2SN' })).toBe('EN 853 2SN');
  expect(groupName({ by: 'line', line: 'return' })).toBe('Return');
  expect(span(1.25, [0.5, null])).toMatch(/1\.[23].*0\.5.*\?/);
});
