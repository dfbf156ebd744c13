import { expect, test } from 'vitest';
import type { Spec } from '../../backend/types';
import type { Given } from '../../backend';
import { figuresOf, noRow, rowFor, rowOf } from './supplier-row';

const spec: Given<Spec> = {
  hose: { standard: 'EN 853', type: '2SN', dn: 16 },
  ends: [
    { role: 'A', family: 'JIC 37 flare', size: '-10', form: 'straight', cutoff_mm: 41 },
    { role: 'B', family: 'ORFS', size: '-10', form: 'elbow90', cutoff_mm: 44 },
  ],
  adapters: [],
};

test('a row is kept once it says whose it is, of which hose, and a figure', () => {
  const row = { ...noRow(), supplier: ' South ', dn: 16, hose: { standard: 'EN 853', type: '2SN' } };
  expect(rowOf(row)).toBeNull();
  expect(rowOf({ ...row, crimp_tolerance_mm: 0.1 })).toBeNull();
  expect(rowOf({ ...row, insertion_mm: 34, supplier: ' ' })).toBeNull();
  expect(rowOf({ ...row, insertion_mm: 34, hose: null })).toBeNull();
  expect(rowOf({ ...row, insertion_mm: 34 })).toMatchObject({ supplier: 'South', insertion_mm: 34, family: null });
});

test('a skive is kept with its lengths or not at all', () => {
  const row = { ...rowFor(spec, 'A', undefined), supplier: 'South' };
  expect(rowOf({ ...row, skive: 'outer' })).toBeNull();
  expect(figuresOf({ ...row, skive: 'outer' })).toContain('skive_outer_mm');
  expect(figuresOf(row)).not.toContain('skive_outer_mm');
  expect(rowOf({ ...row, skive: 'both', skive_outer_mm: 30, skive_inner_mm: 12 })?.skive).toEqual({
    both: { outer_mm: 30, inner_mm: 12 },
  });
  expect(rowOf({ ...row, skive: 'none' })?.skive).toBe('none');
});

test('from the bench it begins with hose, end and settings of the job, and never with the cut-off of a bent end', () => {
  const entered = { role: 'A' as const, ferrule: 'S16', skive: { outer: { length_mm: 30 } }, insertion_mm: 34 };
  expect(rowFor(spec, 'A', entered)).toMatchObject({
    dn: 16,
    hose: { standard: 'EN 853', type: '2SN' },
    end: { family: 'JIC 37 flare', size: '-10' },
    ferrule: 'S16',
    skive: 'outer',
    skive_outer_mm: 30,
    insertion_mm: 34,
    cutoff_mm: 41,
  });
  expect(rowFor(spec, 'B', undefined)).toMatchObject({ end: { family: 'ORFS' }, cutoff_mm: null });
});
