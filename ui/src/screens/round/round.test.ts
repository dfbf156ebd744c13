import { expect, it } from 'vitest';
import type { DueLine } from '../../backend/types';
import { firstRound, visitsOf } from './round';

const due = (machine: string, site: string, day: string | null, what = 'service') =>
  ({
    ...{ code: 'c', what, due: day },
    at: { place: 'p', machine, machine_name: `Machine ${machine}`, site, site_name: site },
  }) as unknown as DueLine;

const ON = '2026-11-25';
const list = [
  due('1', 'Yard', '2026-11-01'),
  due('1', 'Yard', '2026-12-10'),
  due('2', 'Yard', '2026-11-24'),
  due('3', 'Quarry', '2026-11-20'),
  due('3', 'Quarry', '2026-11-20', 'inspection'),
  due('4', 'Quarry', null),
];

it('goes to machines with hoses past their day, those with most first', () => {
  expect(visitsOf(list, ON, 0).map(({ machine, due }) => [machine, due])).toEqual([
    ['1', 1],
    ['2', 1],
    ['3', 1],
  ]);
  expect(visitsOf(list, ON, 30)[0]).toMatchObject({ machine: '1', due: 2 });
});

it('proposes the site with most to do', () => {
  expect(firstRound(visitsOf(list, ON, 30))).toEqual(['1', '2']);
  expect(firstRound([])).toEqual([]);
});
