import { fireEvent, render, screen, waitFor } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { fake } from '../../backend/fake';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import { benchSheet } from './bench.fixture';
import { atPlace, firstOutside, lastPlaceOf, nextReading, outside, spreadOf } from './crimp';
import { fieldName, fieldOf, putReading, settingsForB, setValue, valueOf, type Field } from './fields';
import Host from './Host.fixture.svelte';
import { heroOf } from './hero';
import { crimped, draftOf } from './lengths';
import { mayTick, nextOf, proofOf } from './next';
import { benchSteps, rowsOf, tick } from './steps';

const now = new Date('2026-11-25T10:00:00Z');
const job = (over: Partial<JobDoc> = {}): JobDoc => ({ ...emptyJob(), step: 'make', ...over });
const done = (...names: string[]) => Object.fromEntries(names.map((name) => [name, now.toISOString()]));
const TWELVE = Array.from({ length: 12 }, () => 28.5);
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

  it('reads a crimp in four directions at three places before it is ticked', () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A') });
    const measured = benchSheet().steps.find((step) => step.code === 'measure-crimp')!;
    for (let index = 0; index < 12; index += 1) {
      expect(nextOf(benchSheet(), doc)).toEqual({ do: 'read-crimp', role: 'A', index });
      expect(mayTick(benchSheet(), doc, measured)).toBe(false);
      doc.crimps.A.push(28.5);
    }
    expect(nextOf(benchSheet(), doc)).toMatchObject({ do: 'tick', step: { code: 'measure-crimp' } });
    expect(mayTick(benchSheet(), doc, measured)).toBe(true);
  });

  it('never ticks a crimp while a reading lies outside, nor goes on to the tag once it was ticked', () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A') });
    doc.crimps.A = TWELVE.with(1, 28.65);
    const measured = benchSheet().steps.find((step) => step.code === 'measure-crimp')!;
    expect(nextOf(benchSheet(), doc)).toEqual({ do: 'crimp-outside', role: 'A', index: 1 });
    expect(mayTick(benchSheet(), doc, measured)).toBe(false);
    Object.assign(doc, { ticks: done(...BENCH), proving: { ...doc.proving, rig: false }, proof: { state: 'no-rig' } });
    expect(nextOf(benchSheet(), doc)).toMatchObject({ do: 'crimp-outside' });
    putReading(doc, 'A', 1, 28.55);
    expect(doc.ticks).not.toHaveProperty('measure-crimp.A');
    expect(nextOf(benchSheet(), doc)).toMatchObject({ do: 'tick', step: { code: 'measure-crimp' } });
  });

  it('asks whether there is a rig, and shows the steps of that way alone', () => {
    const doc = job({ ticks: done(...BENCH) });
    doc.crimps.A = TWELVE;
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

describe('with inch set', () => {
  const step = (code: string, role: 'A' | null = null) => ({ step: 'make' as const, code, role, cautions: [] });

  it('the tape is written in fractions, the micrometer in decimals', () => {
    const sheet = benchSheet();
    const rows = rowsOf([step('cut'), step('crimp', 'A'), step('measure-length')], {}, sheet, 'inch');
    expect(rows.map((row) => row.detail)).toEqual([
      '45 15/32 ± 5/64\u00a0in',
      '1.1220 ± 0.0039\u00a0in',
      '48 13/16\u00a0in, +15/32 −5/32',
    ]);
    expect(heroOf(step('measure-length'), sheet, 'inch')).toMatchObject({ figure: '48 13/16', unit: 'in' });
    expect(heroOf(step('crimp', 'A'), sheet, 'inch')).toMatchObject({ figure: '1.1220', unit: 'in', by: '± 0.0039' });
  });

  it('a reading taken back is the one that was typed', () => {
    expect(draftOf(1.163 * 25.4, 'inch')).toEqual({ unit: 'in', typed: { in: '1.163' } });
    expect(draftOf(29.55, 'mm')).toEqual({ unit: 'mm', typed: { mm: '29.55' } });
    expect(crimped(1.163 * 25.4, 'inch')).toBe('1.1630\u00a0in');
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

  it('are held against the figures of their own end', () => {
    expect(firstOutside(benchSheet(), { A: [28.5], B: [28.5, 28.7] })).toEqual({ role: 'B', index: 1 });
    const bare = benchSheet({ settings: [{ role: 'A' }, { role: 'B' }] });
    expect(firstOutside(bare, { A: [28.5], B: [1] })).toBeNull();
  });

  it('that were struck are read anew before another is', () => {
    const doc = job({ crimps: { A: [28.5, 82.5, 28.5], B: [] } });
    putReading(doc, 'A', 1, null);
    expect(doc.crimps.A).toEqual([28.5, null, 28.5]);
    expect(nextReading(doc.crimps.A)).toBe(1);
    expect(spreadOf(doc.crimps.A)).toMatchObject({ min: 28.5, max: 28.5, count: 2 });
    putReading(doc, 'A', 2, null);
    expect(doc.crimps.A).toEqual([28.5]);
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

  it('a reading that lies outside leads to reading again, and can be struck or taken back with Rubout', async () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A') });
    doc.crimps.A = [28.5, 28.65, 28.5, 28.5];
    let left = doc;
    render(Host, { backend: fake({ make: () => benchSheet() }), doc, onchange: (next: JobDoc) => (left = next) });
    await screen.findByRole('button', { name: /Read again at A: 28.65/ });
    expect(screen.queryByRole('button', { name: /Tick: crimp A is read/ })).toBeNull();
    await fireEvent.click(screen.getByRole('checkbox', { name: /Measure the crimp/ }));
    expect(left.ticks).not.toHaveProperty('measure-crimp.A');
    await fireEvent.click(screen.getByRole('button', { name: 'Back' }));

    await fireEvent.click(screen.getByRole('button', { name: /Read again at A: 28.65/ }));
    await fireEvent.click(screen.getByRole('button', { name: 'Rub out' }));
    expect(left.typing).toMatchObject({ of: 'make.crimp.A.1', draft: { typed: { mm: '28.65' } } });
    await fireEvent.click(screen.getByRole('button', { name: 'Rub out' }));
    await fireEvent.click(screen.getByRole('button', { name: '2' }));
    await fireEvent.click(screen.getByRole('button', { name: /Keep 28.62/ }));
    expect(left.crimps.A).toEqual([28.5, 28.62, 28.5, 28.5]);

    await fireEvent.click(screen.getByRole('button', { name: /Crimp A, reading 2: 28.62/ }));
    await fireEvent.click(screen.getByRole('button', { name: /Strike 28.62/ }));
    expect(left.crimps.A).toEqual([28.5, null, 28.5, 28.5]);
    await fireEvent.click(screen.getByRole('button', { name: /Read on at A: place 1 of 3/ }));
    await fireEvent.click(screen.getByRole('button', { name: 'Rub out' }));
    expect(left.typing?.of).toBe('make.crimp.A.0');
  });

  it('takes all settings of A for B with one tap that says them, once A lacks none', async () => {
    const settings: JobDoc['settings'] = [{ role: 'A', ferrule: 'F 16', crimp_diameter_mm: 28.5, source: 'a sheet' }];
    const missing = [{ code: 'ferrule', role: 'B' as const }];
    const doc = job({ ticks: done('fetch-parts'), settings });
    expect(settingsForB(benchSheet({ missing: [...missing, { code: 'die-set', role: 'A' }] }), doc)).toBeNull();
    let left = doc;
    const make = () => benchSheet({ missing: left.settings.length < 2 ? missing : [] });
    render(Host, { backend: fake({ make }), doc, onchange: (next: JobDoc) => (left = next) });
    await fireEvent.click(
      await screen.findByRole('button', {
        name: /All of end B as at A.*Ferrule F 16 · Crimp diameter 28.5.mm · From a sheet/,
      }),
    );
    expect(left.settings).toEqual([...settings, { ...settings[0], role: 'B' }]);
    await screen.findByRole('button', { name: /Tick: hose is cut/ });
    expect(settingsForB(benchSheet(), left)).toBeNull();
  });

  it('has no day of calibration before one is entered', async () => {
    const proving = { ...emptyJob().proving, rig: true };
    render(Host, { backend: fake({ make: () => benchSheet() }), doc: job({ ticks: done(...BENCH), proving }) });
    const open = await screen.findByRole('button', { name: 'Gauge calibrated on: not known' });
    expect(screen.queryByLabelText('Gauge calibrated on')).toBeNull();
    await fireEvent.click(open);
    expect(screen.getByLabelText<HTMLInputElement>('Gauge calibrated on').value).toBe('');
  });

  it('brings the step that comes up into view', async () => {
    const shown: string[] = [];
    Element.prototype.scrollIntoView = function show() {
      shown.push(this.querySelector('[role=checkbox]')?.textContent?.trim() ?? '');
    };
    const proving = { ...emptyJob().proving, rig: true };
    render(Host, {
      backend: fake({ make: () => benchSheet() }),
      doc: job({ ticks: done(...BENCH), proving, crimps: { A: TWELVE, B: [] } }),
    });
    await fireEvent.click(await screen.findByRole('button', { name: /Tick: guard is shut/ }));
    await waitFor(() => expect(shown.at(-1)).toMatch(/Release all pressure/));
  });

  it('says why nothing is made, and leads back to Check', async () => {
    let left: JobDoc | null = null;
    render(Host, { backend: fake(), doc: job(), onchange: (next: JobDoc) => (left = next) });
    await waitFor(() => expect(screen.getByText('NOT MADE')).toBeTruthy());
    await fireEvent.click(screen.getByRole('button', { name: /Back to Check/ }));
    expect((left as JobDoc | null)?.step).toBe('check');
  });
});
