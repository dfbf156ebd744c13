import { describe, expect, it } from 'vitest';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import { benchOf } from './bench';
import { benchSheet, judge } from './bench.fixture';
import { putReading } from './fields';
import { crimpStopped, mayTick, nextOf, proofOf } from './next';
import { makeAgain, scrapAt } from './scrap';
import { benchSteps, rowsOf } from './steps';

const now = new Date('2026-11-25T10:00:00Z');
const job = (over: Partial<JobDoc> = {}): JobDoc => ({ ...emptyJob(), step: 'make', ...over });
const done = (...names: string[]) =>
  Object.fromEntries(names.map((name) => [name, { at: now.toISOString(), by: null }]));
const TWELVE = Array.from({ length: 12 }, () => 28.5);
const BENCH = ['fetch-parts', 'cut', 'crimp.A', 'measure-crimp.A', 'measure-length'];
const settings = {
  instruments: { caliper: '', micrometer: '', thread_gauge: '', seat_gauge: '', tape: '' },
  caliper_error_mm: 0.1,
  micrometer_error_mm: 0.01,
  tape_error_mm: 1,
} as never;
const judged = (doc: JobDoc) => {
  const question = { spec: doc.spec, service: doc.service, overrides: [], length_practice: 'din-20066' as const };
  return judge(benchOf(doc, question, settings));
};
const next = (doc: JobDoc, sheet = benchSheet()) => nextOf(sheet, judged(doc), doc);

describe('what is next on the bench', () => {
  it('asks what is missing before the hose is cut, never after', () => {
    const sheet = benchSheet({ missing: [{ code: 'lubricant', role: 'B' }] });
    const doc = job({ ticks: done('fetch-parts') });
    expect(next(doc, sheet)).toEqual({ do: 'enter', field: { of: 'end', role: 'B', key: 'lubricant' } });
    doc.ticks = done('fetch-parts', 'cut');
    expect(next(doc, sheet)).toMatchObject({ do: 'tick', step: { code: 'crimp' } });
  });

  it('asks for the crimp diameter before that end is crimped, however late', () => {
    const sheet = benchSheet({ missing: [{ code: 'crimp-diameter', role: 'A' }] });
    const doc = job({ ticks: done('fetch-parts', 'cut') });
    expect(next(doc, sheet)).toMatchObject({ do: 'enter', field: { role: 'A', key: 'crimp_diameter_mm' } });
  });

  it('ticks no crimp whose figures are not there, and takes it as done by a sheet only where that is said', () => {
    const crimp = benchSheet().steps.find((step) => step.code === 'crimp')!;
    const doc = job({ ticks: done('fetch-parts', 'cut') });
    for (const code of ['ferrule', 'die-set', 'crimp-diameter', 'crimp-tolerance']) {
      const sheet = benchSheet({ missing: [{ code, role: 'A' }] });
      expect(mayTick(sheet, judged(doc), crimp, doc)).toBe(false);
      expect(next(doc, sheet)).toMatchObject({ do: 'enter', field: { role: 'A' }, step: { code: 'crimp', role: 'A' } });
    }
    const bare = benchSheet({ missing: [{ code: 'crimp-diameter', role: 'A' }] });
    doc.ticks = done('fetch-parts', 'cut', 'crimp.A');
    const rows = rowsOf(benchSteps(bare, doc.proving), doc.ticks, bare);
    expect(rows.find((row) => row.id === 'crimp.A')?.detail).toMatch(/no pass/);
    expect(
      mayTick(
        bare,
        judged(doc),
        bare.steps.find((step) => step.code === 'measure-crimp')!,
        doc,
      ),
    ).toBe(false);
  });

  it('asks for what is still missing of a target, and then whose it is', () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A') });
    const asked = (sheet: Parameters<typeof nextOf>[0]) => nextOf(sheet, judged(doc), doc);
    const tolerance = benchSheet({ missing: [{ code: 'crimp-tolerance', role: 'A' }] });
    expect(asked(tolerance)).toEqual({ do: 'enter', field: { of: 'end', role: 'A', key: 'crimp_tolerance_mm' } });
    const [a, b] = benchSheet().settings;
    const unsaid = benchSheet({ settings: [{ ...a, source: ' ' }, b] });
    doc.crimps.A = [...TWELVE];
    expect(asked(unsaid)).toEqual({ do: 'enter', field: { of: 'end', role: 'A', key: 'source' } });
    const measured = unsaid.steps.find((step) => step.code === 'measure-crimp')!;
    expect(mayTick(unsaid, judged(doc), measured, doc)).toBe(false);
  });

  it('says that an instrument is too coarse before it reads anything', () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A') });
    const before = judged(doc);
    const crimps = before.crimps.map((one) => ({ ...one, do: 'finer-instrument' }));
    expect(nextOf(benchSheet(), { ...before, crimps }, doc)).toMatchObject({ do: 'crimp', role: 'A' });
  });

  it('passes over what can not be typed here, such as a torque', () => {
    const sheet = benchSheet({ missing: [{ code: 'torque', role: 'A' }] });
    expect(next(job({ ticks: done('fetch-parts') }), sheet)).toMatchObject({ do: 'tick', step: { code: 'cut' } });
  });

  it('reads a crimp in four directions at three places before it is ticked', () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A') });
    const measured = benchSheet().steps.find((step) => step.code === 'measure-crimp')!;
    for (let index = 0; index < 12; index += 1) {
      expect(next(doc)).toEqual({ do: 'read-crimp', role: 'A', index });
      expect(mayTick(benchSheet(), judged(doc), measured, doc)).toBe(false);
      doc.crimps.A.push(28.5);
    }
    expect(next(doc)).toMatchObject({ do: 'tick', step: { code: 'measure-crimp' } });
    expect(mayTick(benchSheet(), judged(doc), measured, doc)).toBe(true);
  });

  it('never ticks a crimp while it is judged outside, nor goes on to the tag once it was ticked', () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A') });
    doc.crimps.A = TWELVE.with(1, 28.65);
    const measured = benchSheet().steps.find((step) => step.code === 'measure-crimp')!;
    expect(next(doc)).toMatchObject({ do: 'crimp', role: 'A', crimp: { do: 'press-smaller' } });
    expect(mayTick(benchSheet(), judged(doc), measured, doc)).toBe(false);
    Object.assign(doc, { ticks: done(...BENCH), proving: { ...doc.proving, rig: false }, proof: { state: 'no-rig' } });
    expect(next(doc)).toMatchObject({ do: 'crimp' });
    putReading(doc, 'A', 1, 28.55);
    expect(doc.ticks).not.toHaveProperty('measure-crimp.A');
    expect(next(doc)).toMatchObject({ do: 'tick', step: { code: 'measure-crimp' } });
  });

  it('never goes by what was judged of other readings than those that stand', () => {
    const doc = job({ ticks: done('fetch-parts', 'cut', 'crimp.A'), crimps: { A: [...TWELVE], B: [] } });
    const before = judged(doc);
    doc.crimps.A = TWELVE.with(3, 28.9);
    expect(nextOf(benchSheet(), before, doc)).toEqual({ do: 'wait' });
    expect(crimpStopped(before, doc)).toBeNull();
    expect(crimpStopped(judged(doc), doc)?.role).toBe('A');
  });

  it('measures the finished length, and goes on only with one that passes', () => {
    const doc = job({ ticks: done(...BENCH.slice(0, -1)), crimps: { A: [...TWELVE], B: [] } });
    const step = benchSheet().steps.find(({ code }) => code === 'measure-length')!;
    expect(next(doc)).toEqual({ do: 'measure', key: 'length_mm' });
    expect(mayTick(benchSheet(), judged(doc), step, doc)).toBe(false);
    doc.finished.length_mm = 1262;
    expect(next(doc)).toMatchObject({ do: 'finished', finished: { do: 'too-long' } });
    doc.finished.length_mm = 1242;
    expect(next(doc)).toMatchObject({ do: 'tick', step: { code: 'measure-length' } });
  });

  it('asks whether there is a rig, and shows the steps of that way alone', () => {
    const doc = job({ ticks: done(...BENCH), crimps: { A: [...TWELVE], B: [] } });
    expect(next(doc)).toEqual({ do: 'say-rig' });
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
      crimps: { A: [...TWELVE], B: [] },
      proving: { rig: true, pressure_bar: 412, hold_s: 30, gauge: 'G1', calibrated: null, ...over },
    });
  const proof = (doc: JobDoc) => proofOf(benchSheet(), judged(doc), doc);

  it('stands once it is judged proved and every step is ticked', () => {
    expect(proof(proved())).toEqual({ state: 'proved', pressure_bar: 412 });
    const unticked = proved();
    delete unticked.ticks['release-and-look'];
    expect(proof(unticked)).toEqual({ state: 'not-proved' });
  });

  it.each([
    ['below the proof pressure', { pressure_bar: 411 }, 'pressure_bar'],
    ['shorter than the hold', { hold_s: 29 }, 'hold_s'],
    ['without a gauge', { gauge: '' }, 'gauge'],
  ] as const)('%s proves nothing, and what was written is asked again', (_, over, key) => {
    const doc = proved(over);
    expect(proof(doc)).toEqual({ state: 'not-proved' });
    expect(next(doc)).toEqual({ do: 'write-proof', field: { of: 'proof', key } });
  });

  it('that failed leads to another hose, never to a tag, and is kept', () => {
    const doc = proved();
    scrapAt(doc, 'release-and-look', 'leak', now);
    expect(next(doc)).toEqual({ do: 'make-again' });
    makeAgain(doc);
    expect(doc).toMatchObject({ scrap: null, ticks: {}, crimps: { A: [], B: [] }, code: null });
    expect(doc.scraps).toMatchObject([{ step: 'release-and-look', failed: 'leak', proving: { pressure_bar: 412 } }]);
    expect(next(doc)).toMatchObject({ do: 'tick', step: { code: 'fetch-parts' } });
  });

  it('without a rig is a state of its own', () => {
    const doc = job({ proving: { ...emptyJob().proving, rig: false } });
    expect(proofOf(benchSheet(), null, doc)).toEqual({ state: 'no-rig' });
  });
});
