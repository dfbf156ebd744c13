import { fireEvent, render, screen, waitFor } from '@testing-library/svelte';
import { expect, it, vi } from 'vitest';
import { fake } from '../../backend/fake';
import type { Backend, CallError } from '../../backend';
import type { Finding } from '../../backend/types';
import { App } from '../../state/app.svelte';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import CheckIn from './CheckIn.test.svelte';
import { Editing } from './editing.svelte';
import { ratingNotes } from '../tag/taken-on';
import { addAdapter, endOf, putEnd, putHose, ratingFrom } from './fields';
import { cureOf, otherCureOf } from './findings';
import { inOrder, isOpen, nextOf, signOf } from './next';
import { specCells, unratedAdapter } from './shown';

type Some = Pick<Finding, 'case' | 'verdict'> & Partial<Finding>;
const found = (some: Some): Finding =>
  ({
    rule: some.case,
    names: {},
    unit: '',
    source: 'a source',
    basis: 'published',
    why: `why ${some.case}`,
    cure: '',
    prudence: false,
    asked_by: 'line',
    open: /-(missing|unknown|unsettled)$/.test(some.case),
    ...some,
  }) as Finding;
const stop = (code: string, part?: string, rule = code) =>
  found({ case: code, rule, verdict: 'stop', names: part ? { part } : {} });
const pass = found({ case: 'flow-ok', verdict: 'pass' });
const caution = found({ case: 'heat-near', verdict: 'caution' });
const units = () => ({ pressure: 'bar', length: 'mm' }) as const;

it.each([
  ['working-pressure-missing', undefined, 'service.working_pressure_bar'],
  ['hose-missing', undefined, 'hose'],
  ['end-missing', 'A', 'A'],
  ['end-drop-missing', 'B', 'B.drop_mm'],
  ['turn-missing', undefined, 'turn_deg'],
  ['cutoff-missing', 'A', 'A.cutoff_mm'],
  ['bend-limit-unknown', undefined, 'hose.min_bend_radius_mm'],
  ['bend-unverified', undefined, 'hose.min_bend_radius_mm'],
  ['vacuum-unrated', undefined, 'hose.vacuum_kpa_abs'],
  ['vacuum-unverified', undefined, 'hose.vacuum_kpa_abs'],
  ['relief-below-working', undefined, 'service.relief_bar'],
  ['surge-below-working', undefined, 'service.surge_pressure_bar'],
])('the cure of %s opens its field', (code, part, field) => {
  expect(cureOf(stop(code, part))).toMatchObject({ to: 'field', field });
});

it('the cure of a part too weak opens that part, of one without a rating its rating', () => {
  const above = (part: string) => cureOf(stop('pressure-above-rating', part, 'pressure'));
  expect(above('hose')).toMatchObject({ field: 'hose' });
  expect(above('B')).toMatchObject({ field: 'B.rating_bar' });
  const own = found({
    case: 'pressure-above-rating',
    rule: 'pressure',
    verdict: 'stop',
    names: { part: 'B' },
    basis: 'yours',
  });
  expect(cureOf(own)).toMatchObject({ field: 'B' });
  expect(cureOf(stop('pressure-unknown', 'A', 'pressure'))).toMatchObject({ field: 'A.rating_bar' });
  expect(cureOf(stop('pressure-unknown', 'adapter', 'pressure'))).toMatchObject({ field: 'adapters' });
});

it('an end too weak has two ways out, the rating before the end; one that is rated by the person has but one', () => {
  const weak = stop('pressure-above-rating', 'A', 'pressure');
  expect(otherCureOf(weak)).toMatchObject({ field: 'A' });
  expect(nextOf([weak])).toMatchObject({ cure: { field: 'A.rating_bar' }, other: { field: 'A' } });
  expect(otherCureOf({ ...weak, basis: 'yours' })).toBeNull();
  expect(otherCureOf(stop('pressure-above-rating', 'hose', 'pressure'))).toBeNull();
});

it('what the hose may have been is read on or bettered; once it is settled it can only be bettered', () => {
  const rival = stop('original-pressure-above');
  expect(otherCureOf(rival, false)).toMatchObject({ to: 'find', part: 'hose' });
  expect(nextOf([rival], false)).toMatchObject({ cure: { field: 'hose' }, other: { to: 'find' } });
  expect(otherCureOf(rival, true)).toBeNull();
  expect(otherCureOf(stop('printed-pressure-above'), false)).toBeNull();
});

it('a rating of one’s own is kept with where it is from, or not at all, and goes with its end', () => {
  const doc: JobDoc = { ...emptyJob(), spec: { ends: [{ role: 'A', family: 'JIC 37 flare', size: '-10' }] } };
  const editing = new Editing(doc, units);
  editing.edit('A.rating_bar');
  editing.keep(250);
  expect(editing.open).toBe('A.rating_from');
  expect(endOf(doc.spec, 'A')?.rating_bar).toBeUndefined();
  editing.keepFrom('  ');
  expect(endOf(doc.spec, 'A')?.rating_bar).toBeUndefined();
  editing.keepFrom('a supplier, table 12');
  expect([endOf(doc.spec, 'A')?.rating_bar, ratingFrom(doc, 'A'), editing.open]).toEqual([
    250,
    'a supplier, table 12',
    null,
  ]);
  expect(ratingNotes(doc, 'X', units(), []).map(({ body }) => body)).toMatchObject([
    { kind: 'noted', about: { hose: 'X' }, text: expect.stringContaining('a supplier, table 12') },
  ]);
  putEnd(doc, 'A', { family: 'ORFS', size: '-10' });
  expect([ratingFrom(doc, 'A'), doc.ratingFrom.A]).toEqual([null, undefined]);
});

it('what was not entered is told apart from what is doubtful, and a stop stays among the stops', () => {
  const open = found({ case: 'cutoff-missing', verdict: 'caution' });
  const without = found({ case: 'suction-helix-missing', verdict: 'caution', open: false });
  expect([open, caution, without, stop('relief-missing'), pass].filter(isOpen)).toEqual([open]);
});

it('an end not settled is gauged, a pass and what was taken on have no cure', () => {
  expect(cureOf(stop('end-unsettled', 'A'))).toMatchObject({ to: 'find' });
  expect(cureOf(pass)).toBeNull();
  expect(cureOf(found({ case: 'override-taken', verdict: 'caution' }))).toBeNull();
});

it('a limit that is overstepped stands before what is not known, stops before cautions', () => {
  const [cutoff, flow] = [
    found({ case: 'cutoff-missing', verdict: 'caution' }),
    found({ case: 'flow-too-fast', verdict: 'caution' }),
  ];
  const [relief, heat] = [stop('relief-missing'), stop('heat-above')];
  expect(inOrder([cutoff, relief, flow, heat]).grave).toEqual([heat, relief, flow, cutoff]);
});

it('what settles the parts stands first, cautions after stops, passes apart', () => {
  const relief = stop('relief-missing');
  const end = stop('end-unsettled', 'A');
  const { grave, passes } = inOrder([relief, caution, pass, end]);
  expect(grave).toEqual([end, relief, caution]);
  expect(passes).toEqual([pass]);
});

it('doubt about a part is not settled; a limit overstepped beside it stays a stop', () => {
  const end = stop('end-unsettled', 'A');
  expect(signOf('stop', [end, stop('relief-missing')])).toBe('unsettled');
  expect(signOf('stop', [end, stop('pressure-above-rating', 'B', 'pressure')])).toBe('stop');
  expect(signOf('stop', [stop('relief-missing')])).toBe('stop');
  expect(signOf('caution', [caution])).toBe('caution');
});

it('goes on to make only without a stop, and never past a stop that has no cure here', () => {
  expect(nextOf([caution, pass])).toEqual({ to: 'make' });
  expect(nextOf([stop('no-cure-for-this'), pass])).toBeNull();
  expect(nextOf([stop('no-cure-for-this'), stop('relief-missing')])).toMatchObject({
    to: 'cure',
    cure: { field: 'service.relief_bar' },
  });
});

it('asks of an end just named its half, its form, and of a bent one its drop', () => {
  const doc = job();
  const editing = new Editing(doc, units);
  editing.edit('A');
  editing.end('JIC 37 flare', '-10');
  expect(editing.open).toBe('A.gender');
  editing.keep('female');
  expect(editing.open).toBe('A.form');
  editing.keep('elbow45');
  expect(editing.open).toBe('A.drop_mm');
  editing.keep(22);
  expect(editing.open).toBeNull();
  expect(endOf(doc.spec, 'A')).toMatchObject({ gender: 'female', form: 'elbow45', drop_mm: 22 });
});

it('a choice can be set back to not known', () => {
  const doc = job();
  putEnd(doc, 'A', { family: 'ORFS', size: '-10', gender: 'male' });
  const editing = new Editing(doc, units);
  editing.edit('A.gender');
  editing.keep(null);
  expect(endOf(doc.spec, 'A')?.gender).toBeNull();
  editing.edit('A');
  editing.keep(null);
  expect(endOf(doc.spec, 'A')).toBeUndefined();
});

it('goes on with half a number after the job was put away, and forgets it once it is kept', () => {
  const doc = job();
  const before = new Editing(doc, units);
  before.edit('service.relief_bar');
  before.keypad?.press('2');
  before.typed();
  const after = new Editing(doc, units);
  expect(after.open).toBe('service.relief_bar');
  expect(after.keypad?.typed).toBe('2');
  after.keep(20);
  expect(doc.service.relief_bar).toBe(20);
  expect(doc.typing).toBeNull();
});

it('the adapter without a rating is rated first', () => {
  const doc = job();
  expect(unratedAdapter(doc)).toBe('adapters');
  addAdapter(doc, 'elbow at the valve');
  expect(unratedAdapter(doc)).toBe('adapters.0.rating_bar');
});

it('the supplier’s figures stand at their hose and go with it', () => {
  const doc = job();
  expect(specCells(doc, units()).map((cell) => cell.id)).not.toContain('hose.vacuum_kpa_abs');
  const hose = { standard: 'EN 854', type: '3TE', dn: 32 };
  putHose(doc, { ...hose });
  const editing = new Editing(doc, units);
  editing.edit('hose.vacuum_kpa_abs');
  editing.keep(20);
  editing.edit('hose.min_bend_radius_mm');
  editing.keep(250);
  expect(doc.spec.hose).toMatchObject({ vacuum_kpa_abs: 20, min_bend_radius_mm: 250 });
  const cells = specCells(doc, units());
  expect(cells.find((cell) => cell.id === 'hose.vacuum_kpa_abs')?.value).toBe('20\u00a0kPa abs');
  expect(doc.service.vacuum_kpa_abs).toBeUndefined();
  putHose(doc, { ...hose });
  expect(doc.spec.hose).toHaveProperty('vacuum_kpa_abs', 20);
  putHose(doc, { ...hose, dn: 38 });
  expect(doc.spec.hose).not.toHaveProperty('vacuum_kpa_abs');
});

function job(): JobDoc {
  return { ...emptyJob(), step: 'check' };
}

/** The screen over a job whose check answers with these findings. */
async function open(findings: Finding[]): Promise<JobDoc> {
  const backend = fake({
    check: () => ({ verdict: findings[0]?.verdict ?? 'pass', findings, alternatives: [] }),
  });
  const app = new App(backend);
  const doc = job();
  render(CheckIn, { app, doc });
  await waitFor(() => expect(screen.getByRole('status')).toBeTruthy());
  return doc;
}

it('says the verdict, and the cure in the row opens the field', async () => {
  await open([found({ ...stop('relief-missing'), cure: 'Enter the relief setting.' }), pass]);
  expect(screen.getByRole('status').textContent).toMatch(/STOP\s+why relief-missing/);
  expect(screen.queryByRole('button', { name: 'Make it' })).toBeNull();
  await fireEvent.click(screen.getByRole('button', { name: 'Enter the relief setting.' }));
  expect(await screen.findByRole('heading', { name: 'relief' })).toBeTruthy();
});

it('pressures that contradict each other stand with both figures and lead to the one behind', async () => {
  const crossed = (code: string, value: number) =>
    found({ ...stop(code, undefined, 'pressure-contradiction'), value, limit: 210, unit: 'bar', cure: `mend ${code}` });
  await open([crossed('relief-below-working', 180), crossed('surge-below-working', 190)]);
  for (const [name, value] of [
    ['Relief setting', '180'],
    ['Surge', '190'],
  ] as const) {
    const row = screen.getByText(name).closest('li');
    expect(row?.textContent).toContain(value);
    expect(row?.textContent).toMatch(/min 210\u00a0bar/);
  }
  await fireEvent.click(screen.getByRole('button', { name: 'mend surge-below-working' }));
  expect(await screen.findByRole('heading', { name: 'surge' })).toBeTruthy();
});

it.each([
  ['bar', '0\u00a0bar'],
  ['psi', '0\u00a0psi'],
] as const)('a refused nought names its field in %s, and Go opens it', async (pressure_unit, written) => {
  const refused = { code: 'input', field: 'service.relief_bar', message: 'service.relief_bar is 0; …' };
  const backend: Backend = {
    ...fake(),
    call: () => Promise.resolve({ ok: false, error: refused as CallError }),
  };
  const app = new App(backend);
  app.settings.now.pressure_unit = pressure_unit;
  render(CheckIn, { app, doc: { ...job(), service: { relief_bar: 0, duties: [] } } });
  const said = `relief is ${written}. Give a figure above 0, or leave it not known.`;
  await waitFor(() => expect(screen.getByRole('status').textContent).toContain(said));
  await fireEvent.click(screen.getByRole('button', { name: 'Put it right' }));
  expect(await screen.findByRole('heading', { name: 'relief' })).toBeTruthy();
});

const fast = found({
  case: 'flow-too-fast',
  rule: 'flow-speed',
  verdict: 'caution',
  prudence: true,
  cure: 'Choose a larger bore, or take it on with your name and reason.',
});

it('a limit of prudence is taken on with one clear button in its row, and who and why stand there', async () => {
  const backend = fake({
    check: (asked) => ({
      verdict: 'caution',
      alternatives: [],
      findings: (asked as { overrides: JobDoc['overrides'] }).overrides
        .map(({ by, reason }) =>
          found({ ...fast, case: 'override-taken', why: `${by}: ${reason}`, cure: 'Nothing to do.' }),
        )
        .concat(fast)
        .slice(0, 1),
    }),
  });
  render(CheckIn, { app: new App(backend), doc: job() });
  await fireEvent.click(await screen.findByRole('button', { name: 'Take it on, with a name and a reason' }));
  expect(screen.queryByRole('button', { name: fast.cure })).toBeNull();
  await fireEvent.input(screen.getByLabelText('Name'), { target: { value: 'A. Person' } });
  await fireEvent.input(screen.getByLabelText('Reason'), { target: { value: 'short line' } });
  await fireEvent.click(screen.getByRole('button', { name: 'Take it on, with a name and a reason' }));
  await waitFor(() => expect(screen.getByText(/^A. Person: short line/, { selector: 'p.cure' })).toBeTruthy());
});

it('where no other hose may be made, all hoses are offered', async () => {
  const other = { standard: 'EN 853', type: '2SN', dn: 16, verdict: 'stop' as const, reasons: [] };
  const backend = fake({
    check: () => ({ verdict: 'stop', findings: [stop('heat-above')], alternatives: [other] }),
  });
  const spec = { hose: { standard: 'EN 853', type: '1SN', dn: 12 }, ends: [] };
  render(CheckIn, { app: new App(backend), doc: { ...job(), spec } });
  await fireEvent.click((await screen.findAllByRole('button', { name: 'Choose another hose' }))[0]!);
  expect(screen.getByRole('heading', { name: 'hose' })).toBeTruthy();
});

it('another hose is chosen from those put through the check, and a stray tap is undone', async () => {
  const shown = vi.fn();
  Element.prototype.scrollIntoView = shown;
  const other = { standard: 'EN 853', type: '2SN', dn: 16, verdict: 'pass' as const, reasons: [] };
  const backend = fake({
    check: () => ({ verdict: 'stop', findings: [stop('heat-above')], alternatives: [other] }),
  });
  const spec = { hose: { standard: 'EN 853', type: '1SN', dn: 12 }, ends: [] };
  render(CheckIn, { app: new App(backend), doc: { ...job(), spec, sameForSame: true } });
  await fireEvent.click((await screen.findAllByRole('button', { name: 'Choose another hose' }))[0]!);
  expect(shown).toHaveBeenCalledTimes(1);
  await fireEvent.click(screen.getByRole('button', { name: /PASS EN 853 2SN/ }));
  expect(screen.getByText(/EN 853 2SN.* instead of EN 853 1SN/)).toBeTruthy();
  expect(screen.queryByText(/^Same for same/)).toBeNull();
  await fireEvent.click(screen.getByRole('button', { name: 'Take it back' }));
  expect(screen.getByText(/^Same for same/)).toBeTruthy();
  expect(screen.queryByText(/instead of/)).toBeNull();
});
