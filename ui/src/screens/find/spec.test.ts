import { describe, expect, it } from 'vitest';
import type { EndCandidate, Found } from '../../backend/types';
import { emptyJob } from '../../state/job-doc';
import { named, ownWord, specOf } from './spec';

const end = (family: string, size: string): EndCandidate => ({
  family,
  size,
  standard: '',
  dash: null,
  thread: null,
  gender: 'female',
  probability: 0.9,
  also: [],
});
const found: Found = {
  hose: [{ standard: 'EN 853', type: '2SN', dn: 16, dash: 10, probability: 0.9, also: [] }],
  ends: [
    { role: 'B', candidates: [end('ORFS', '-10')], lookalikes: [], unknown: 0, changed: 0 },
    { role: 'A', candidates: [end('JIC 37 flare', '-10')], lookalikes: [], unknown: 0, changed: 0 },
  ],
  unknown: { hose: 0 },
  settled: { hose: false, A: false, B: false },
  enough: { hose: false, A: false, B: false },
  odd_ends: false,
  contradictions: [],
  next: [],
};
const read = () => {
  const doc = emptyJob();
  doc.readings = { hose: { layers: 2 }, ends: [], mates: [], overall_length_mm: '48 in' };
  return doc;
};

describe('the spec of what was found', () => {
  it('takes the likeliest of each part, its form and the overall length', () => {
    const doc = read();
    doc.finding.forms.A = 'elbow45';
    expect(specOf(doc, found)).toEqual({
      hose: { standard: 'EN 853', type: '2SN', dn: 16 },
      ends: [
        { role: 'A', family: 'JIC 37 flare', size: '-10', gender: 'female', form: 'elbow45' },
        { role: 'B', family: 'ORFS', size: '-10', gender: 'female' },
      ],
      overall_length_mm: 1219.2,
    });
  });

  it('leaves a form unsaid that nobody said, and keeps the one that the spec has', () => {
    const doc = read();
    expect(specOf(doc, found).ends.map((one) => one.form)).toEqual([undefined, undefined]);
    doc.spec.ends = [{ role: 'B', family: 'ORFS', size: '-10', form: 'elbow90' }];
    expect(specOf(doc, found).ends.map((one) => one.form)).toEqual([undefined, 'elbow90']);
  });

  it('does not write over an end that the person named', () => {
    const doc = read();
    Object.assign(doc, { ...named(doc, 'A', end('SAE 45 flare', '-10')) });
    doc.finding.chosen = ['A'];
    expect(specOf(doc, found).ends[0]?.family).toBe('SAE 45 flare');
  });

  it('keeps a person’s own word beside it, which the readings alone settle', () => {
    const doc = read();
    const { named: said } = named(doc, 'hose', { ...found.hose[0]!, type: '2SC' });
    const finding = { ...doc.finding, named: said };
    const word = { standard: 'EN 853', type: '2SC', dn: 16 };
    expect(ownWord(finding, found.settled, 'hose')).toEqual(word);
    expect(ownWord(finding, null, 'hose')).toEqual(word);
    expect(ownWord(finding, { ...found.settled, hose: true }, 'hose')).toBeNull();
    expect(ownWord(finding, found.settled, 'A')).toBeNull();
  });

  it('keeps a cut-off with its own end and drops it with another', () => {
    const doc = read();
    doc.spec.ends = [
      { role: 'A', family: 'JIC 37 flare', size: '-10', form: 'straight', cutoff_mm: 41 },
      { role: 'B', family: 'NPT', size: '3/4', form: 'straight', cutoff_mm: 30 },
    ];
    expect(specOf(doc, found).ends.map((one) => one.cutoff_mm)).toEqual([41, undefined]);
  });

  it('leaves the hose open while nothing was read of it', () => {
    const doc = read();
    delete doc.readings.hose;
    expect(specOf(doc, found).hose).toBeUndefined();
  });
});
