import { describe, expect, it } from 'vitest';
import type { Answer } from '../../backend';
import { columnName, matchedOf, openOf } from './match';
import { matches, rowText, rowTitle } from './supplier-rows';

const found = {
  header_row: 1,
  rows: 2,
  columns: [
    { column: 0, heading: 'Norm', is: 'standard', unit: null, examples: [] },
    { column: 1, heading: 'Crimp', is: 'crimp-diameter', unit: 'mm', examples: [] },
  ],
  missing: ['supplier'],
  choices: [],
} as unknown as Answer<'supplier.match'>;

describe('the columns of a supplier’s table', () => {
  it('leave open what no column is, and what was taken away from one', () => {
    expect(openOf(found, [{ column: 0, is: 'standard', unit: null }])).toEqual(['supplier']);
    expect(openOf(found, [{ column: 0, is: null, unit: null }])).toEqual(['supplier', 'standard']);
    expect(openOf(found, [{ column: 0, is: 'supplier', unit: null }])).toEqual(['standard']);
  });

  it('are asked without those that are passed over, each with its unit', () => {
    const columns = [
      { column: 0, is: null, unit: null },
      { column: 1, is: 'crimp-diameter', unit: 'in' as const },
      { column: 2, is: 'dn', unit: null },
    ];
    expect(matchedOf(columns)).toEqual([
      { column: 1, is: 'crimp-diameter', unit: 'in' },
      { column: 2, is: 'dn' },
    ]);
  });

  it('have words, and one that has none stands as it is', () => {
    expect(columnName('die-set')).toBe('die set');
    expect(columnName('new-one')).toBe('new-one');
  });
});

describe('a supplier’s row', () => {
  const row = {
    ...{ supplier: 'North', standard: 'EN 853', type: '2SN', dn: 16, family: 'ORFS', size: '-10' },
    ...{ ferrule: 'S16', crimp_diameter_mm: 28.5, cutoff_mm: 41, from: 'north.csv, row 3' },
  };

  it('says what it is for and what it gives', () => {
    expect(rowTitle(row)).toBe('EN 853 2SN DN16, ORFS \u221210');
    expect(rowText(row, 'mm')).toMatch(/^Ferrule S16 · Crimp diameter 28\.5.mm · Cut-off 41.mm$/);
  });

  it.each([
    ['orfs 16', true],
    ['ORFS -10', true],
    ['s16 2sn', true],
    ['jic', false],
    ['', true],
  ])('is found by its words: "%s"', (looked, is) => {
    expect(matches(row, looked)).toBe(is);
  });
});
