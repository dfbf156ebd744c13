import { fireEvent, render, screen, waitFor } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { fake } from '../../backend/fake';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import { benchSheet } from './bench.fixture';
import { atPlace, lastPlaceOf, outside, spreadOf } from './crimp';
import { fieldName, fieldOf, setValue, valueOf, type Field } from './fields';
import Host from './Host.fixture.svelte';
import { nextOf, proofOf } from './next';
import { benchSteps, rowsOf, tick } from './steps';

const now = new Date('2026-11-25T10:00:00Z');
const job = (over: Partial<JobDoc> = {}): JobDoc => ({ ...emptyJob(), step: 'make', ...over });
const done = (...names: string[]) => Object.fromEntries(names.map((name) => [name, now.toISOString()]));
const BENCH = ['fetch-parts', 'cut', 'crimp.A', 'measure-crimp.A'];

describe('what is next on the bench', () => {
  it('asks what is missing before the hose is cut, never after', () => {
    const sheet = benchSheet({ missing: [{ code: 'lubricant', role: 'B' }] });
    const doc = job({ ticks: done('fetch-parts') });
    expect(nextOf(sheet, doc)).toEqual({ do: 'enter', field: { of: 'end', role: 'B', key: 'lubricant' } });
    doc.ticks = done('fetch-parts', 'cut');
    expect(nextOf(sheet, doc)).toMatchObject({ do: 'tick', step: { code: 'crimp' } });
  });

  it('asks for the crimp diameter before that end is crimped, however late', () => {
    const sheet = benchSheet({ missing: [{ code: 'crimp-diameter', role: 'A' }] });
    const doc = job({ ticks: done('fetch-parts', 'cut') });
    expect(nextOf(sheet, doc)).toMatchObject({ do: 'enter', field: { role: 'A', key: 'crimp_diameter_mm' } });
  });

  it('passes over what can not be typed here, such as a torque', () => {
    const sheet = benchSheet({ missing: [{ code: 'torque', role: 'A' }] });
    expect(nextOf(sheet, job({ ticks: done('fetch-parts') }))).toMatchObject({ do: 'tick', step: { code: 'cut' } });
  });

  it('reads a crimp in four directions before it is ticked', () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A') });
    doc.crimps.A = [28.5, 28.5, 28.5];
    expect(nextOf(benchSheet(), doc)).toEqual({ do: 'read-crimp', role: 'A' });
    doc.crimps.A.push(28.5);
    expect(nextOf(benchSheet(), doc)).toMatchObject({ do: 'tick' });
  });

  it('asks whether there is a rig, and shows the steps of that way alone', () => {
    const doc = job({ ticks: done(...BENCH) });
    doc.crimps.A = [28.5, 28.5, 28.5, 28.5];
    expect(nextOf(benchSheet(), doc)).toEqual({ do: 'say-rig' });
    doc.proving.rig = false;
    expect(benchSteps(benchSheet(), doc.proving).map((step) => step.code)).toContain('no-rig');
    doc.proving.rig = true;
    const codes = benchSteps(benchSheet(), doc.proving).map((step) => step.code);
    expect(codes).toContain('close-guard');
    expect(codes).not.toContain('no-rig');
  });
});

describe('a proof', () => {
  const proved = (over: Partial<JobDoc['proving']> = {}) =>
    job({
      ticks: done(...BENCH, 'close-guard', 'release-and-look'),
      proving: { rig: true, failed: false, pressure_bar: 412, hold_s: 30, gauge: 'G1', calibrated: null, ...over },
    });

  it('stands once pressure, hold and gauge are written and every step is ticked', () => {
    expect(proofOf(benchSheet(), proved())).toEqual({ state: 'proved', pressure_bar: 412 });
    const unticked = proved();
    delete unticked.ticks['release-and-look'];
    expect(proofOf(benchSheet(), unticked)).toEqual({ state: 'not-proved' });
  });

  it.each([
    ['below the proof pressure', { pressure_bar: 411 }],
    ['shorter than the hold', { hold_s: 29 }],
    ['without a gauge', { gauge: '' }],
    ['that leaked', { failed: true }],
  ])('%s proves nothing', (_, over) => {
    expect(proofOf(benchSheet(), proved(over))).toEqual({ state: 'not-proved' });
  });

  it('that leaked leads to another hose, never to a tag', () => {
    expect(nextOf(benchSheet(), proved({ failed: true }))).toEqual({ do: 'make-again' });
  });

  it('without a rig is a state of its own', () => {
    expect(proofOf(benchSheet(), job({ proving: { ...emptyJob().proving, rig: false } }))).toEqual({ state: 'no-rig' });
  });
});

describe('steps', () => {
  it('show the cautions of the current one alone, and its figures', () => {
    const sheet = benchSheet();
    const rows = rowsOf(benchSteps(sheet, emptyJob().proving), done('fetch-parts'), sheet);
    expect(rows.map((row) => row.state)).toEqual(['done', 'now', 'todo', 'todo']);
    expect(rows[1]).toMatchObject({
      detail: '1155 ± 2\u00a0mm',
      cautions: ['Wear glasses and gloves against wire ends.'],
    });
    expect(rows[2]?.cautions).toBeUndefined();
  });

  it('can be ticked and taken back', () => {
    const doc = job();
    tick(doc, 'crimp.A', now);
    expect(doc.ticks).toEqual({ 'crimp.A': '2026-11-25T10:00:00.000Z' });
    tick(doc, 'crimp.A', now);
    expect(doc.ticks).toEqual({});
  });
});

describe('crimp readings', () => {
  it('are summed up, and held against what was entered; the edge is inside', () => {
    const spread = spreadOf([28.52, 28.47, 28.55, 28.49]);
    expect(spread).toMatchObject({ min: 28.47, max: 28.55 });
    expect(spread?.mean).toBeCloseTo(28.5075, 6);
    expect(outside([28.4, 28.6, 28.61, 28.39], 28.5, 0.1)).toEqual([2, 3]);
    expect(spreadOf([])).toBeNull();
  });

  it('stand four to a place along the ferrule', () => {
    const five = [1, 2, 3, 4, 5];
    expect(lastPlaceOf([1, 2, 3, 4])).toBe(0);
    expect(lastPlaceOf(five)).toBe(1);
    expect(atPlace(five, 1)).toEqual([5, null, null, null]);
  });
});

describe('a field', () => {
  const fields: Field[] = [
    { of: 'end', role: 'B', key: 'cutoff_mm' },
    { of: 'end', role: 'A', key: 'skive' },
    { of: 'crimp', role: 'A', index: 3 },
    { of: 'proof', key: 'gauge' },
  ];
  it.each(fields)('is found again by its name: %o', (field) => {
    expect(fieldOf(fieldName(field))).toEqual(field);
  });

  it('of another screen is none of ours', () => {
    expect(fieldOf('A.tpi')).toBeNull();
    expect(fieldOf('fit.hours')).toBeNull();
  });

  it('is written where the job keeps it', () => {
    const doc = job({ spec: { ends: [{ role: 'A', family: 'ORFS', size: '-10' }] } });
    setValue(doc, { of: 'end', role: 'A', key: 'cutoff_mm' }, 41);
    setValue(doc, { of: 'end', role: 'B', key: 'ferrule' }, 'F 16');
    setValue(doc, { of: 'end', role: 'B', key: 'crimp_diameter_mm' }, 28.5);
    expect(doc.spec.ends[0]?.cutoff_mm).toBe(41);
    expect(doc.settings).toEqual([{ role: 'B', ferrule: 'F 16', crimp_diameter_mm: 28.5 }]);
    expect(valueOf(doc, { of: 'end', role: 'A', key: 'ferrule' })).toBeNull();
  });
});

describe('the screen', () => {
  it('shows the cut at arm’s length and ticks the step in hand', async () => {
    const doc = job({ spec: { ends: [{ role: 'A', family: 'ORFS', size: '-10' }] }, ticks: done('fetch-parts') });
    const view = render(Host, { backend: fake({ make: () => benchSheet() }), doc });
    await waitFor(() => expect(screen.getByRole('img', { name: /Cut 1155/ })).toBeTruthy());
    await fireEvent.click(screen.getByRole('button', { name: /Tick: hose is cut/ }));
    await waitFor(() => expect(screen.getByRole('button', { name: /Tick: A is crimped/ })).toBeTruthy());
    view.unmount();
  });

  it('asks to measure a cut-off, keeps half a number, and puts it into the spec', async () => {
    const sheet = () =>
      benchSheet({
        cut: { ...benchSheet().cut, cutoff_a_mm: null, cut_length_mm: null },
        missing: [{ code: 'cutoff', role: 'A' }],
      });
    const doc = job({ spec: { ends: [{ role: 'A', family: 'ORFS', size: '-10' }] }, ticks: done('fetch-parts') });
    let left: JobDoc | null = null;
    render(Host, { backend: fake({ make: sheet }), doc, onchange: (next: JobDoc) => (left = next) });
    await waitFor(() => screen.getByRole('button', { name: /Measure the cut-off of A/ }));
    await fireEvent.click(screen.getByRole('button', { name: /Measure the cut-off of A/ }));
    for (const key of ['4', '1']) await fireEvent.click(screen.getByRole('button', { name: key }));
    expect((left as JobDoc | null)?.typing).toMatchObject({ of: 'make.A.cutoff_mm', draft: { typed: { mm: '41' } } });
    await fireEvent.click(screen.getByRole('button', { name: /Keep 41 mm/ }));
    expect((left as JobDoc | null)?.spec.ends[0]?.cutoff_mm).toBe(41);
    expect((left as JobDoc | null)?.typing).toBeNull();
  });

  it('says why nothing is made, and leads back to Check', async () => {
    let left: JobDoc | null = null;
    render(Host, { backend: fake(), doc: job(), onchange: (next: JobDoc) => (left = next) });
    await waitFor(() => expect(screen.getByText('NOT MADE')).toBeTruthy());
    await fireEvent.click(screen.getByRole('button', { name: /Back to Check/ }));
    expect((left as JobDoc | null)?.step).toBe('check');
  });
});
