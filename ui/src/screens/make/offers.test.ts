import { describe, expect, it } from 'vitest';
import { emptyJob } from '../../state/job-doc';
import { cutoffHow } from './cutoff-how';
import { cutoffsFor, offersFor, takeOffer, type Lookup } from './offers';

const row = (supplier: string, cutoff_mm: number | null, id: number) => ({
  id,
  kept: '2026-11-01',
  row: {
    ...{ supplier, standard: 'EN 853', type: '2SN', dn: 16, family: 'ORFS', size: '-10' },
    ...{ ferrule: 'S16', crimp_diameter_mm: 28.5, crimp_tolerance_mm: 0.1, cutoff_mm, from: 'north.csv, row 3' },
  },
});

const lookup = {
  ends: [
    {
      role: 'A',
      rows: [row('North (invented)', 41, 1), row('South (invented)', 41, 2)],
      last: {
        code: '7KQ4M-2XR9D-D',
        assembled: '2026-10-02',
        by: 'A. Fitter',
        cutoff_mm: 42,
        settings: { role: 'B', ferrule: 'S17', source: 'a sheet' },
      },
      cutoff: { mm: 41.3, spread_mm: 0.4, n: 5, how: 'same-ends' },
    },
  ],
  cutoffs: null,
} as unknown as Lookup;

describe('what is on offer for an end', () => {
  it('are the suppliers’ rows and the last hose, each with whose it is', () => {
    const offers = offersFor(lookup, 'A', 'mm');
    expect(offers.map(({ label }) => label)).toEqual([
      'A as North (invented) says',
      'A as South (invented) says',
      'A as last time: 7KQ4M-2XR9D-D, 2 Oct 2026, A. Fitter',
    ]);
    expect(offers[0]?.note).toMatch(/^Cut-off 41.mm · Ferrule S16 · Crimp diameter 28\.5.mm/);
    expect(offersFor(lookup, 'B', 'mm')).toEqual([]);
    expect(offersFor(null, 'A', 'mm')).toEqual([]);
  });

  it('is taken whole, under the end that asks and with its source; a cut-off that was measured stands', () => {
    const doc = {
      ...emptyJob(),
      spec: { ends: [{ role: 'A' as const, family: 'ORFS', size: '-10', cutoff_mm: 40.8 }] },
    };
    takeOffer(doc, offersFor(lookup, 'A', 'mm')[0]!);
    expect(doc.settings).toMatchObject([
      { role: 'A', ferrule: 'S16', crimp_diameter_mm: 28.5, source: 'North (invented), north.csv, row 3' },
    ]);
    expect(doc.spec.ends[0]?.cutoff_mm).toBe(40.8);
    takeOffer(doc, offersFor(lookup, 'A', 'mm')[2]!);
    expect(doc.settings).toMatchObject([{ role: 'A', ferrule: 'S17', source: 'a sheet' }]);
  });

  it('gives each cut-off once, and what finished lengths taught', () => {
    expect(cutoffsFor(lookup, 'A', 'mm').map(({ mm }) => mm)).toEqual([41, 41.3]);
    expect(cutoffsFor(lookup, 'A', 'mm')[1]?.label).toMatch(/41\.3.mm ± 0\.4.mm: learned from 5 finished hoses/);
  });
});

describe('how a new end is measured', () => {
  it.each([
    [{ form: 'straight', gender: 'female' as const }, /nut pushed back/],
    [{ form: 'elbow90', gender: 'female' as const }, /middle of its sealing face, measured along the hose/],
    [{ form: 'banjo' }, /middle of its eye/],
    [{ form: 'straight', gender: 'male' as const }, /end of its thread/],
  ])('says where to measure from: %o', (end, words) => {
    const spec = { ends: [{ role: 'A' as const, family: 'ORFS', size: '-10', ...end }] };
    expect(cutoffHow(spec, 'A')).toMatch(words);
  });
});
