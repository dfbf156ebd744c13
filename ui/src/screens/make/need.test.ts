import { describe, expect, it } from 'vitest';
import { emptyJob } from '../../state/job-doc';
import { isKept, stillUsed, takeSpec, type Need, type Used } from './need.svelte';

const used = (piece: string, length_mm: number): Used => ({
  store: 'Van 1',
  pieces: [{ piece, length_mm, scrap_rest: false }],
  items: [],
});
const chosen = (piece: string, scrap_rest = false) => ({
  hose: 'EN 853 2SN DN16',
  used: { ...used(piece, 1180), pieces: [{ piece, length_mm: 1180, scrap_rest }] },
});

describe('what goes off the stock', () => {
  it('keeps the piece that the person took, with the length as it is cut now', () => {
    const now = stillUsed(used('reel', 1195), chosen('offcut', true), 'EN 853 2SN DN16');
    expect(now?.used.pieces).toEqual([{ piece: 'offcut', length_mm: 1195, scrap_rest: true }]);
  });

  it('is said anew for another hose, and where the parts are no longer there', () => {
    expect(stillUsed(used('reel', 1195), chosen('reel'), 'EN 853 1SN DN16')).toBeNull();
    expect(stillUsed(null, chosen('reel'), 'EN 853 2SN DN16')).toBeNull();
    expect(stillUsed(used('reel', 1195), null, 'EN 853 2SN DN16')).toBeNull();
  });

  it('is not spoken of where no stock is kept', () => {
    const line = { state: 'not-kept', elsewhere: [] };
    const need = (lines: unknown[]) => ({ lines }) as unknown as Need;
    expect(isKept(need([line]))).toBe(false);
    expect(isKept(need([line, { ...line, elsewhere: [{ store: 'Shop', quantity: 4 }] }]))).toBe(true);
    expect(isKept(need([{ ...line, state: 'short' }]))).toBe(true);
  });
});

it('another hose is checked again, and nothing entered for the one before stays', () => {
  const doc = { ...emptyJob(), step: 'make' as const, checked: true, settings: [{ role: 'A' as const, source: 'x' }] };
  doc.cutoffs = { A: [41], B: [] };
  doc.stock = chosen('reel');
  const ends = [{ role: 'A' as const, family: 'ORFS', size: '-10', cutoff_mm: 41 }];
  takeSpec(doc, { hose: { standard: 'EN 857', type: '2SC', dn: 16 }, ends });
  expect(doc.spec.ends[0]?.cutoff_mm ?? null).toBeNull();
  expect([doc.step, doc.checked, doc.settings, doc.cutoffs, doc.stock]).toEqual([
    'check',
    false,
    [],
    { A: [], B: [] },
    null,
  ]);
});
