import { fireEvent, render, screen, waitFor } from '@testing-library/svelte';
import { describe, expect, it, vi } from 'vitest';
import type { Answer } from '../../backend';
import { fake } from '../../backend/fake';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import { benchSheet, judge } from './bench.fixture';
import type { BenchQuestion } from './bench';
import { atPlace, lastPlaceOf, nextAtPlace } from './crimp';
import { doubtOf } from './doubts';
import { fieldName, fieldOf, putReading, readAnew, settingsForB, setValue, valueOf, type Field } from './fields';
import Host from './Host.fixture.svelte';
import { heroOf } from './hero';
import { crimped, draftOf } from './lengths';
import { makeAgain } from './scrap';
import { benchSteps, rowsOf, tick } from './steps';

const now = new Date('2026-11-25T10:00:00Z');
const job = (over: Partial<JobDoc> = {}): JobDoc => ({ ...emptyJob(), step: 'make', ...over });
const done = (...names: string[]) =>
  Object.fromEntries(names.map((name) => [name, { at: now.toISOString(), by: null }]));
const TWELVE = Array.from({ length: 12 }, () => 28.5);
const BENCH = ['fetch-parts', 'cut', 'crimp.A', 'measure-crimp.A', 'measure-length'];
/** A backend with that sheet and a bench that is judged. */
const bench = (make = () => benchSheet(), more: Parameters<typeof fake>[0] = {}) =>
  fake({ make, 'bench.judge': (asked) => judge(asked as BenchQuestion), ...more });

describe('steps', () => {
  it('show the cautions of the current one alone, and its figures', () => {
    const sheet = benchSheet();
    const rows = rowsOf(benchSteps(sheet, emptyJob().proving), done('fetch-parts'), sheet);
    expect(rows.map((row) => row.state)).toEqual(['done', 'now', 'todo', 'todo', 'todo']);
    expect(rows[1]).toMatchObject({
      figure: '1155 ± 2\u00a0mm',
      cautions: ['Wear glasses and gloves against wire ends.'],
    });
    expect(rows[2]?.cautions).toBeUndefined();
  });

  it('can be ticked, by whoever works on the job, and taken back', () => {
    const doc = job({ person: 'p' });
    tick(doc, 'crimp.A', now);
    expect(doc.ticks).toEqual({ 'crimp.A': { at: '2026-11-25T10:00:00.000Z', by: 'p' } });
    tick(doc, 'crimp.A', now);
    expect(doc.ticks).toEqual({});
  });
});

describe('with inch set', () => {
  const step = (code: string, role: 'A' | null = null) => ({ step: 'make' as const, code, role, cautions: [] });

  it('the tape is written in fractions, the micrometer in decimals', () => {
    const sheet = benchSheet();
    const rows = rowsOf([step('cut'), step('crimp', 'A'), step('measure-length')], {}, sheet, 'inch');
    expect(rows.map((row) => row.figure ?? row.detail)).toEqual([
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
  it('that were struck are left open for another, and take the tick of their end with them', () => {
    const doc = job({ crimps: { A: [28.5, 82.5, 28.5], B: [] }, ticks: done('measure-crimp.A') });
    putReading(doc, 'A', 1, null);
    expect(doc.crimps.A).toEqual([28.5, null, 28.5]);
    expect(doc.ticks).toEqual({});
    putReading(doc, 'A', 2, null);
    expect(doc.crimps.A).toEqual([28.5]);
  });

  it('that others take the place of stay on record: typed over, struck, pressed again', () => {
    const doc = job({ crimps: { A: [28.72], B: [] } });
    putReading(doc, 'A', 0, 28.72);
    putReading(doc, 'A', 1, 28.5);
    expect(doc.givenUp).toEqual({ A: [], B: [] });
    putReading(doc, 'A', 0, 28.6);
    putReading(doc, 'A', 1, null);
    readAnew(doc, 'A', 'pressed-again');
    expect(doc.crimps.A).toEqual([]);
    expect(doc.givenUp.A).toEqual([
      { mm: 28.72, by: 'caliper', why: 'read-again' },
      { mm: 28.5, by: 'caliper', why: 'struck' },
      { mm: 28.6, by: 'caliper', why: 'pressed-again' },
    ]);
    makeAgain(doc);
    expect(doc.givenUp.A).toEqual([]);
  });

  it('go on to the next direction until the place is full', () => {
    expect(nextAtPlace([28.5], 0)).toBe(1);
    expect(nextAtPlace([28.5, 28.5, 28.5, 28.5], 3)).toBeNull();
    expect(nextAtPlace([28.5, 28.4, 28.5], 1)).toBeNull();
  });

  it('stand four to a place along the ferrule', () => {
    const five = [1, 2, 3, 4, 5];
    expect(lastPlaceOf([1, 2, 3, 4])).toBe(0);
    expect(lastPlaceOf(five)).toBe(1);
    expect(atPlace(five, 1)).toEqual([5, null, null, null]);
  });
});

describe('a figure that can hardly be', () => {
  const target: Field = { of: 'end', role: 'A', key: 'crimp_diameter_mm' };
  const asks = (field: Field, mm: number, over: Partial<JobDoc> = {}) =>
    doubtOf(job({ spec: { overall_length_mm: 1240, ends: [] }, ...over }), field, mm, null, 'mm');

  it('is a target that was read on this very hose, whether or not the reading still stands', () => {
    expect(asks(target, 33.5)).toBeNull();
    expect(asks(target, 33.5, { crimps: { A: [33.5], B: [] } })).toMatch(/on this very hose/);
    const givenUp = { A: [{ mm: 33.5, by: 'caliper' as const, why: 'struck' as const }], B: [] };
    expect(asks(target, 33.5, { givenUp })).toMatch(/on this very hose/);
    expect(asks({ ...target, role: 'B' }, 33.5, { givenUp })).toBeNull();
  });

  it('is a tolerance like a diameter, and a cut-off or a cut as long as the hose', () => {
    const settings = [{ role: 'A' as const, crimp_diameter_mm: 28.5 }];
    expect(asks({ of: 'end', role: 'A', key: 'crimp_tolerance_mm' }, 28.5, { settings })).toMatch(/tenths/);
    expect(asks({ of: 'end', role: 'A', key: 'crimp_tolerance_mm' }, 0.3, { settings })).toBeNull();
    expect(asks({ of: 'cutoff', role: 'A', index: 0 }, 3838.4)).toMatch(/3838.4.mm.*1240.mm/);
    expect(asks({ of: 'finished', key: 'cut_mm' }, 3838.4)).toMatch(/no less than the whole hose/);
    expect(asks({ of: 'cutoff', role: 'A', index: 0 }, 41)).toBeNull();
  });

  it('another target than before is asked whose it is anew', () => {
    const doc = job({ settings: [{ role: 'A', crimp_diameter_mm: 28.5, source: 'a sheet' }] });
    setValue(doc, target, 28.5);
    expect(doc.settings[0]?.source).toBe('a sheet');
    setValue(doc, target, 28.9);
    expect(doc.settings[0]?.source).toBeNull();
  });
});

describe('a field', () => {
  const fields: Field[] = [
    { of: 'end', role: 'B', key: 'cutoff_mm' },
    { of: 'end', role: 'A', key: 'skive' },
    { of: 'crimp', role: 'A', index: 3 },
    { of: 'cutoff', role: 'B', index: 2 },
    { of: 'finished', key: 'turn_deg' },
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
    const view = render(Host, { backend: bench(), doc });
    await waitFor(() => expect(screen.getByRole('img', { name: /Cut 1155/ })).toBeTruthy());
    await fireEvent.click(screen.getByRole('button', { name: /Tick: hose is cut/ }));
    await waitFor(() => expect(screen.getByRole('button', { name: /Tick: A is crimped/ })).toBeTruthy());
    view.unmount();
  });

  it('measures a cut-off until its readings agree, keeps half a number, and puts it into the spec', async () => {
    const sheet = () =>
      benchSheet({
        cut: { ...benchSheet().cut, cutoff_a_mm: null, cut_length_mm: null },
        missing: [{ code: 'cutoff', role: 'A' }],
      });
    const measured = (asked: unknown) => {
      const { readings_mm } = asked as { readings_mm: number[] };
      const enough = readings_mm.length > 1;
      const verdict = enough ? ('pass' as const) : ('unsettled' as const);
      return { cutoff_mm: 41.2, verdict, do: enough ? 'tick' : 'cutoff-repeat' };
    };
    const doc = job({ spec: { ends: [{ role: 'A', family: 'ORFS', size: '-10' }] }, ticks: done('fetch-parts') });
    let left = doc;
    render(Host, {
      backend: bench(sheet, { 'cutoff.measured': measured }),
      doc,
      onchange: (next: JobDoc) => (left = next),
    });
    await fireEvent.click(await screen.findByRole('button', { name: /Measure the cut-off of A/ }));
    for (const key of ['4', '1']) await fireEvent.click(screen.getByRole('button', { name: key }));
    expect(left.typing).toMatchObject({ of: 'make.cutoff.A.0', draft: { typed: { mm: '41' } } });
    await fireEvent.click(screen.getByRole('button', { name: /Keep 41\smm/ }));
    await screen.findByRole('heading', { name: 'Cut-off A, reading 2' });
    expect(left.spec.ends[0]?.cutoff_mm).toBeUndefined();
    for (const key of ['4', '1']) await fireEvent.click(screen.getByRole('button', { name: key }));
    await fireEvent.click(screen.getByRole('button', { name: /Keep 41\smm/ }));
    await waitFor(() => expect(left.spec.ends[0]?.cutoff_mm).toBe(41.2));
    expect(left.cutoffs.A).toEqual([41, 41]);
    expect(left.typing).toBeNull();
  });

  it('a reading that lies outside leads to reading again, and can be struck or taken back with Rubout', async () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A') });
    doc.crimps.A = [28.5, 28.65, 28.5, 28.5];
    let left = doc;
    render(Host, { backend: bench(), doc, onchange: (next: JobDoc) => (left = next) });
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
    await fireEvent.click(screen.getByRole('button', { name: /Remove the reading 28.62/ }));
    expect(left.crimps.A).toEqual([28.5, null, 28.5, 28.5]);
    await fireEvent.click(screen.getByRole('button', { name: /Read on at A: place 1 of 3/ }));
    await fireEvent.click(screen.getByRole('button', { name: 'Rub out' }));
    expect(left.typing?.of).toBe('make.crimp.A.0');
    expect(left.givenUp.A).toMatchObject([{ mm: 28.65 }, { mm: 28.62, why: 'struck' }]);
  });

  it('a caliper that is too coarse leads to the micrometer, and the crimp stays pressed', async () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A') });
    doc.crimps.A = [...TWELVE];
    let left = doc;
    const coarse = (asked: unknown) => {
      const judged = judge(asked as BenchQuestion);
      const crimps = judged.crimps.map((one) => ({ ...one, verdict: 'unsettled' as const, do: 'finer-instrument' }));
      return { ...judged, crimps };
    };
    const backend = bench(undefined, { 'bench.judge': coarse });
    render(Host, { backend, doc, onchange: (next: JobDoc) => (left = next) });
    await fireEvent.click(await screen.findByRole('button', { name: /Read A with the micrometer/ }));
    expect(left.crimpedBy.A).toBe('micrometer');
    expect(left.ticks).toHaveProperty('crimp.A');
    expect(left.crimps.A).toEqual([]);
    expect(left.givenUp.A).toEqual(TWELVE.map((mm) => ({ mm, by: 'caliper', why: 'read-again' })));
  });

  const ends = (...kinds: [string, string]) => ({
    ends: (['A', 'B'] as const).map((role, at) => ({ role, family: kinds[at] ?? '', size: '-10' })),
  });

  it('gives B what A has where both ends are of one kind, says it, and writes over nothing that B has', async () => {
    const [a] = benchSheet().settings;
    const settings = [{ ...a, ferrule: 'F 16', source: 'a sheet' }];
    const bare = { role: 'B' as const, die_set: 'D 30' };
    const missing = [{ code: 'ferrule', role: 'B' as const }];
    const sheetOf = (doc: JobDoc) => {
      const at = (role: 'A' | 'B') => doc.settings.find((one) => one.role === role) ?? { role };
      return benchSheet({ settings: [at('A'), at('B')] as never, missing: at('B').ferrule ? [] : missing });
    };
    const doc = job({ spec: ends('ORFS', 'ORFS'), ticks: done('fetch-parts'), settings: [...settings, bare] });
    expect(settingsForB(sheetOf(doc), job({ ...doc, spec: ends('ORFS', 'JIC 37 flare') }))).toBeNull();
    const others = job({ ...doc, settings: [...settings, { ...bare, source: 'another sheet' }] });
    expect(settingsForB(sheetOf(others), others)).toBeNull();
    let left = doc;
    const backend = bench(() => sheetOf(left));
    render(Host, { backend, doc, onchange: (next: JobDoc) => (left = next) });
    const named = /Same as A.*Ferrule F 16 · Die set D 30 · Crimp diameter 28.5.mm.*Source a sheet/;
    await fireEvent.click((await screen.findAllByRole('button', { name: named }))[0]!);
    expect(left.settings).toEqual([...settings, { ...settings[0], role: 'B', die_set: 'D 30' }]);
    expect(left.crimps.B).toEqual([]);
    await screen.findByRole('button', { name: /Tick: hose is cut/ });
    expect(settingsForB(sheetOf(left), left)).toBeNull();
  });

  it('does a crimp by a sheet that nobody enters only by a choice that says what it costs', async () => {
    const make = () => benchSheet({ missing: [{ code: 'crimp-diameter', role: 'A' }] });
    const doc = job({ ticks: done('fetch-parts', 'cut') });
    let left = doc;
    render(Host, { backend: bench(make), doc, onchange: (next: JobDoc) => (left = next) });
    await screen.findByRole('button', { name: /Enter: Crimp diameter, end A/ });
    await fireEvent.click(screen.getByRole('checkbox', { name: /Crimp with the supplier/ }));
    expect(left.ticks).not.toHaveProperty('crimp.A');
    expect(left.typing?.of).toBe('make.A.crimp_diameter_mm');
    await fireEvent.click(screen.getByRole('button', { name: 'Back' }));
    await fireEvent.click(screen.getByRole('button', { name: /Done by a sheet, not entered.*no pass/ }));
    expect(left.ticks).toHaveProperty('crimp.A');
    await screen.findByRole('button', { name: /Enter: Crimp diameter, end A/ });
    expect(screen.queryByRole('button', { name: /Done by a sheet/ })).toBeNull();
  });

  it('asks about a figure that can hardly be before it is kept', async () => {
    const spec = { hose: { standard: 'EN 853', type: '2SN', dn: 16 }, ends: [] };
    const draft = { unit: 'mm', typed: { mm: '0.2' } };
    const doc = job({ spec, ticks: done('fetch-parts'), typing: { of: 'make.A.crimp_diameter_mm', draft } });
    const sizes = [{ dn: 16, dimensions: { reinforcement_od_mm: [22.2, 23.8] } }];
    const tables = () => ({ hoses: [{ standard: 'EN 853', type: '2SN', sizes }] }) as never;
    let left = doc;
    render(Host, { backend: bench(undefined, { tables }), doc, onchange: (next: JobDoc) => (left = next) });
    await fireEvent.click(await screen.findByRole('button', { name: /Keep 0.2/ }));
    await screen.findByText(/0.2\d?.mm is less than the 22.2\d?.mm over the wires/);
    expect(left.settings).toEqual([]);
    await fireEvent.click(screen.getByRole('button', { name: /Type it again/ }));
    await fireEvent.click(screen.getByRole('button', { name: /Keep 0.2/ }));
    await fireEvent.click(screen.getByRole('button', { name: /is right: keep it/ }));
    expect(left.settings).toMatchObject([{ role: 'A', crimp_diameter_mm: 0.2 }]);
  });

  it('takes a reading of a cut-off away, and says what the readings want', async () => {
    const sheet = () => benchSheet({ missing: [{ code: 'cutoff', role: 'A' }] });
    const measured = (asked: unknown) => {
      const { readings_mm } = asked as { readings_mm: number[] };
      const apart = readings_mm.includes(838);
      return { cutoff_mm: 41, verdict: 'unsettled' as const, do: apart ? 'cutoff-apart' : 'cutoff-repeat' };
    };
    const spec = { ends: [{ role: 'A' as const, family: 'ORFS', size: '-10' }] };
    const doc = job({ spec, ticks: done('fetch-parts'), cutoffs: { A: [41, 838, 41.2], B: [] } });
    let left = doc;
    const backend = bench(sheet, { 'cutoff.measured': measured });
    render(Host, { backend, doc, onchange: (next: JobDoc) => (left = next) });
    await screen.findByText(/lie more than 1 mm apart/);
    await fireEvent.click(screen.getByRole('button', { name: /Take away reading 2: 838/ }));
    await screen.findByText(/Three readings, the end taken up anew/);
    expect(left.cutoffs.A).toEqual([41, 41.2]);
  });

  it('has no day of calibration before one is entered', async () => {
    const proving = { ...emptyJob().proving, rig: true };
    render(Host, { backend: bench(), doc: job({ ticks: done(...BENCH), proving, crimps: { A: TWELVE, B: [] } }) });
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
      backend: bench(),
      doc: job({ ticks: done(...BENCH), proving, crimps: { A: TWELVE, B: [] } }),
    });
    await fireEvent.click(await screen.findByRole('button', { name: /Tick: guard is shut/ }));
    await waitFor(() => expect(shown.at(-1)).toMatch(/Release all pressure/));
  });

  it('a name that is given at the bench ticks the job, and works with the device from then on', async () => {
    let left: JobDoc | null = null;
    const kept = vi.fn((settings: unknown) => settings as Answer<'settings.write'>);
    const who = { 'people.add': () => ({ person: 'p' }), 'settings.write': kept };
    render(Host, { backend: bench(undefined, who), doc: job(), onchange: (next: JobDoc) => (left = next) });
    await fireEvent.click(await screen.findByRole('button', { name: /say who works/ }));
    await fireEvent.input(screen.getByLabelText('Another name'), { target: { value: 'M. Fitter' } });
    await fireEvent.click(screen.getByRole('button', { name: 'Add the name' }));
    await waitFor(() => expect(kept).toHaveBeenCalledWith(expect.objectContaining({ person: 'p' })));
    expect((left as JobDoc | null)?.person).toBe('p');
  });

  it('says why nothing is made, and leads back to Check', async () => {
    let left: JobDoc | null = null;
    render(Host, { backend: fake(), doc: job(), onchange: (next: JobDoc) => (left = next) });
    await waitFor(() => expect(screen.getByText('NOT MADE')).toBeTruthy());
    await fireEvent.click(screen.getByRole('button', { name: /Back to Check/ }));
    expect((left as JobDoc | null)?.step).toBe('check');
  });
});
