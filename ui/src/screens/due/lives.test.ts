import { expect, it } from 'vitest';
import type { Life, LivesOf } from '../../backend/types';
import { band, curve } from '../../drawings/curve';
import {
  costFacts,
  costsOf,
  groupName,
  lifeEnd,
  lifeFacts,
  lifeSteps,
  livesQuestion,
  parted,
  placeNote,
  span,
  toTell,
} from './lives';

const life = (more: Partial<Life> = {}): Life => ({
  n: 3,
  failures: 2,
  between: 0,
  to_tell: { failures: 15, more: 13, factor: 1.5 },
  unfitted: null,
  wear: 'not-known',
  shape: 1,
  scale: 4,
  shape_ci95: [0.5, 2],
  scale_ci95: [2, 8],
  log_likelihood: -3,
  b10: 0.4,
  b10_ci95: [0.1, 1.6],
  mean: 4,
  survival_by: 'kaplan-meier',
  fitted: [],
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
  in_service: 1,
  life: of,
  expected: { failures: 1.25, ci95: [0, 4] },
  least_cost: null,
  years_to_tell: 6.5,
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

it('what the fit says stands with its bounds, and of wear nothing is said that the bounds do not say', () => {
  const facts = lifeFacts(group('EN 853', life()));
  expect(facts.map(({ what }) => what)).toEqual(['One in ten has failed by', 'Shape', 'Next quarter']);
  expect(facts[1]?.says).toMatch(/nobody can tell yet/);
  expect(facts[2]?.says).toBe('1.3 failures expected (0 to 4)');
  expect(lifeFacts(group('EN 853', life({ wear: 'wears-out' })))[1]?.says).toMatch(/they wear out/);
});

it('what it takes to tell is said with the years that may take', () => {
  expect(toTell(group('EN 853', life()))).toMatch(/13 more failures.*6\.5 years/);
});

it.each([
  ['1200', '100', { failure: 1200, planned: 100 }],
  ['1200,50', '100', { failure: 1200.5, planned: 100 }],
  ['100', '100', null],
  ['100', '0', null],
  ['', '100', null],
  ['much', '100', null],
])('costs are two amounts, the failure the dearer one: %s and %s', (failure, planned, costs) => {
  expect(costsOf(failure, planned)).toEqual(costs);
});

it('no cost is asked with that nobody gave', () => {
  expect(livesQuestion('hose', '', null)).toEqual({ by: 'hose' });
  expect(livesQuestion('load', '2020-01-01', { failure: 10, planned: 1 })).toEqual({
    ...{ by: 'load', since: '2020-01-01', failure_cost: 10, planned_cost: 1 },
  });
});

it('the age of least cost is told with what is nearly as good, and waiting is an open end', () => {
  const cost = { ratio: 10, age: 4, age_ci95: [3, null], cost: 0.6, near: [3.2, null], curve: [] };
  const says = costFacts(cost as unknown as Parameters<typeof costFacts>[0]).map((fact) => fact.says);
  expect(says[0]).toMatch(/4.*3.*\?/);
  expect(says[1]).toBe('from 3.2 years');
});

it('a bad place says whether it may be chance', () => {
  const excess = { seen: 5, expected: 1.2, ratio: 4.17, ratio_ci95: [1.35, 9.72], by_chance: 0.4 };
  const place = { at: {}, excess, stands_out: false } as unknown as Parameters<typeof placeNote>[0];
  expect(placeNote(place)).toBe('5 for 1.2 expected: 4.2 times (1.4 to 9.7). May be chance.');
  expect(placeNote({ ...place, stands_out: true })).toMatch(/Stands out/);
});
