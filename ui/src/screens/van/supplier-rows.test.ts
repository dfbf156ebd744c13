import { describe, expect, it } from 'vitest';
import { matches, rowText, rowTitle } from './supplier-rows';

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
