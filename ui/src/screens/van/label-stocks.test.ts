import { expect, it } from 'vitest';
import { doubled, first, kept, newStock, without } from './label-stocks';

const named = (name: string) => ({ ...newStock(), name });
const stocks = ['wire tag', 'plate', 'wrap'].map(named);
const names = (of: readonly { name: string }[]) => of.map(({ name }) => name);

it('a label is changed in its place, added at the end, put first and taken away; the others stay as they are', () => {
  expect(names(kept(stocks, 1, named(' steel plate ')))).toEqual(['wire tag', 'steel plate', 'wrap']);
  expect(names(kept(stocks, 3, named('new')))).toEqual(['wire tag', 'plate', 'wrap', 'new']);
  expect(names(first(stocks, 2))).toEqual(['wrap', 'wire tag', 'plate']);
  expect(names(without(stocks, 0))).toEqual(['plate', 'wrap']);
});

it('two labels of one name are told, because a label is chosen by its name', () => {
  expect(doubled(stocks, 0, ' plate ')).toBe(true);
  expect(doubled(stocks, 1, 'plate')).toBe(false);
  expect(doubled(stocks, 3, 'new')).toBe(false);
});
