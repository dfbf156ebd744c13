import { expect, it } from 'vitest';
import { changed, columnName, saidOf, type Found } from './match';

const found = (column: number, is: string | null, more: Partial<Found> = {}): Found => ({
  ...{ column, heading: `H${column}`, is, units: [], unit: null, days: null, asks: null, examples: [] },
  ...more,
});

it('columns that are passed over are not asked about, the others each with its unit and order of days', () => {
  const columns = [
    found(0, null),
    found(1, 'crimp-diameter', { unit: 'in' }),
    found(2, 'fitted', { days: 'month-first' }),
    found(3, 'dn'),
  ];
  expect(saidOf(columns)).toEqual([
    { column: 1, is: 'crimp-diameter', unit: 'in' },
    { column: 2, is: 'fitted', days: 'month-first' },
    { column: 3, is: 'dn' },
  ]);
});

it('no two columns are the same thing, and a unit goes with what it was the unit of', () => {
  const columns = [found(0, 'length_mm', { unit: 'mm' }), found(1, 'fitted', { days: 'day-first' })];
  const next = changed(columns, found(1, 'length_mm', { days: 'day-first' }));
  expect(next.map(({ is, unit, days }) => [is, unit, days])).toEqual([
    [null, null, null],
    ['length_mm', null, null],
  ]);
});

it('what is said of a column stays with it', () => {
  const columns = [found(0, 'length_mm'), found(1, 'fitted')];
  expect(changed(columns, found(0, 'length_mm', { unit: 'in' }))[0]?.unit).toBe('in');
});

it('columns have words, and one that has none stands as it is', () => {
  expect(columnName('van', 'die-set')).toBe('die set');
  expect(columnName('list', 'machine_hours')).toBe('machine’s hours now');
  expect(columnName('list', 'new_one')).toBe('new_one');
});
