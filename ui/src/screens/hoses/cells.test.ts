import { expect, it } from 'vitest';
import { placeAt } from '../place.fixture';
import type { HoseRow } from './asked';
import { cells } from './cells';

const ON = '2026-11-25';
const row = (over: Partial<HoseRow>): HoseRow => ({
  code: 'AAAAA-AAAAA-0',
  state: 'fitted',
  at: placeAt,
  standard: 'EN 853',
  type: '2SN',
  dn: 16,
  length_mm: 1240,
  line: null,
  hose_made: null,
  assembled: null,
  fitted: null,
  age_years: 2.04,
  at_least: false,
  limit_years: 6,
  due: null,
  due_what: null,
  verdict: 'pass',
  failures: 0,
  grade: null,
  ...over,
});

it('says which hose, where and how old', () => {
  const { machine, place, hose, age, failures } = cells(row({ failures: 2 }), ON);
  expect([machine, place, hose, age, failures]).toEqual([
    'Excavator 3',
    '14 · Stick cylinder',
    '2SN DN16',
    '2.0 y',
    '2',
  ]);
});

it('what nobody knows is said, never left blank', () => {
  const loose = cells(row({ at: null, state: 'made', standard: null, age_years: null }), ON);
  expect(loose).toMatchObject({
    machine: 'Made, not fitted',
    place: 'AAAAA-AAAAA-0',
    age: 'age not known',
    due: 'not known',
  });
  expect(loose.hose).not.toBe('');
  expect(cells(row({ at_least: true }), ON).age).toBe('2.0 or more y');
});

it.each([
  [ON, 'today'],
  ['2026-11-24', '1 day over'],
  ['2024-11-25', '2 y over'],
  ['2026-12-05', 'in 10 days'],
  ['2027-12-05', '5 Dec 2027'],
])('due %s is written "%s"', (due, text) => expect(cells(row({ due }), ON).due).toBe(text));

it('says what falls due then', () => {
  expect(cells(row({ due: '2026-12-05', due_what: 'inspection' }), ON).dueOf).toBe('inspection');
  expect(cells(row({ due: null, due_what: null }), ON).dueOf).toBe('');
});
