import { expect, it } from 'vitest';
import { filters, shown } from './list-rows';

const told = [
  { row: 2, is: 'made', what: 'Yard, Loader 9, 1' },
  { row: 3, is: 'refused', what: 'dn: it is blank; it is needed' },
  { row: 4, is: 'made', what: 'Yard, Loader 9, 2' },
] as const;

it('what no row is can not be looked at, and what is wrong stands before the rest', () => {
  expect(filters(told)).toEqual([
    { id: 'all', rows: 3 },
    { id: 'refused', rows: 1 },
    { id: 'made', rows: 2 },
  ]);
  expect(filters([])).toEqual([{ id: 'all', rows: 0 }]);
});

it('each is looked at alone', () => {
  expect(shown(told, 'refused').map(({ row }) => row)).toEqual([3]);
  expect(shown(told, 'all')).toHaveLength(3);
});
