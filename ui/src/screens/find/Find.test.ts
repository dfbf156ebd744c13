import { fireEvent, render, screen, waitFor } from '@testing-library/svelte';
import { beforeEach, describe, expect, it } from 'vitest';
import App from '../../App.svelte';
import type { Backend, CallError, Reply } from '../../backend';
import { fake } from '../../backend/fake';
import type { Found, Readings } from '../../backend/types';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import { Finder } from './finder.svelte';

const empty: Found = {
  hose: [],
  ends: [],
  unknown: { hose: 0 },
  settled: { hose: false, A: false, B: false },
  enough: { hose: false, A: false, B: false },
  odd_ends: false,
  contradictions: [],
  next: [
    { of: 'A', reading: 'thread_diameter_mm', gain_bits: 4, effort: 1, how: '' },
    { of: 'A', reading: 'seal', gain_bits: 1, effort: 1, how: '' },
  ],
};

/** The app with one job open; keeps what it is given to keep. */
function open(
  change: Partial<JobDoc> = {},
  answers: Parameters<typeof fake>[0] = {},
  refuses: (readings: Readings) => CallError | null = () => null,
  answered: Promise<void> = Promise.resolve(),
): { kept: () => JobDoc | undefined; asked: Readings[] } {
  let kept: JobDoc | undefined;
  const asked: Readings[] = [];
  const content = JSON.parse(JSON.stringify({ ...emptyJob(), ...change })) as never;
  const backend = fake({
    'job.list': () => ({ jobs: [{ job: 'j', version: 'v', kept: '', content }] }),
    'job.keep': (input) => {
      kept = (input as { content: JobDoc }).content;
      return { job: 'j' };
    },
    find: (input) => {
      asked.push(input as Readings);
      return empty;
    },
    ...answers,
  });
  const call: Backend['call'] = async (name, input) => {
    if (name === 'find') await answered;
    const error = name === 'find' ? refuses(input as Readings) : null;
    return error ? { ok: false, error } : backend.call(name, input);
  };
  render(App, { backend: { ...backend, call } });
  return { kept: () => kept, asked };
}
const button = (name: RegExp) => screen.findByRole('button', { name });

const female = { ends: [{ role: 'A' as const, gender: 'female' as const }], mates: [] };

describe('finding', () => {
  beforeEach(() => {
    Object.assign(Element.prototype, { scrollIntoView: () => {} });
  });

  it('keeps a reading and asks for the next', async () => {
    const { kept } = open();
    await fireEvent.click(await button(/^Loose nut/));
    expect(await screen.findByText('Thread Ø, inside')).toBeTruthy();
    await waitFor(() => expect(kept()?.readings.ends).toEqual([{ role: 'A', kind: 'nut', gender: 'female' }]));
  });

  it('takes what is seen of A for B where B looks the same, and nothing that was measured', async () => {
    const a = { ...female.ends[0]!, kind: 'nut' as const, seal: 'cone' as const, thread_diameter_mm: '22.1 mm' };
    const finding = { ...emptyJob().finding, part: 'B', asked: 'kind' };
    const { kept } = open({ readings: { ends: [a], mates: [] }, finding });
    await fireEvent.click(await button(/^Looks the same as A/));
    await waitFor(() =>
      expect(kept()?.readings.ends[1]).toEqual({ role: 'B', kind: 'nut', gender: 'female', seal: 'cone' }),
    );
    expect(screen.queryByRole('button', { name: /^Looks the same as A/ })).toBeNull();
  });

  it('asks anew with each key that makes a number, and half a number outlives the program', async () => {
    const { asked, kept } = open({ readings: female, finding: { ...emptyJob().finding, asked: 'thread_diameter_mm' } });
    await fireEvent.click(await screen.findByRole('radio', { name: 'inch' }));
    for (const key of ['1', 'in +']) await fireEvent.click(await screen.findByRole('button', { name: key }));
    await waitFor(() => expect(kept()?.typing?.draft.typed['in']).toBe('1+'));
    expect(asked.map((one) => one.ends[0]?.thread_diameter_mm)).toEqual([undefined, '1 in', undefined]);
  });

  it('reads with the error of the caliper that is set at Van, and keeps it with the readings', async () => {
    const settings = { caliper_error_mm: 0.03, unreadable: [] };
    const { asked, kept } = open({}, { 'settings.read': () => settings });
    await fireEvent.click(await button(/^Loose nut/));
    await waitFor(() => expect(kept()?.readings.caliper_error_mm).toBe(0.03));
    expect(asked.at(-1)?.caliper_error_mm).toBe(0.03);
  });

  it('says nothing of candidates before the first answer is there', async () => {
    const candidate = { family: 'ORFS', size: '-10', standard: '', dash: null, thread: null, gender: null, also: [] };
    const end = {
      role: 'A' as const,
      lookalikes: [],
      unknown: 0,
      changed: 0,
      candidates: [{ ...candidate, probability: 0.9 }],
    };
    let answer: () => void = () => {};
    const answered = new Promise<void>((resolve) => (answer = resolve));
    const finding = { ...emptyJob().finding, asked: 'thread_diameter_mm' };
    const settled = { hose: false, A: true, B: false };
    const found = { ...empty, settled, ends: [end as never] };
    open({ readings: female, finding }, { find: () => found }, () => null, answered);
    expect(await screen.findByText('Thread Ø, inside')).toBeTruthy();
    const tab = await button(/^End A/);
    expect(tab.textContent?.trim()).toBe('A');
    expect(screen.queryByText(/possible|likely|settled/)).toBeNull();
    expect(screen.queryByText(/What kind of end|What seals/)).toBeNull();
    answer();
    await waitFor(() => expect(tab.textContent).toContain('ORFS'));
    expect(await screen.findByText('Settled.')).toBeTruthy();
  });

  it('doubts neither hose nor length that stand already while it asks how an end leaves', async () => {
    const readings = { ...female, overall_length_mm: '1240 mm' };
    const finding = { ...emptyJob().finding, asked: 'form', forms: { B: 'elbow90' } };
    const found = { ...empty, settled: { hose: true, A: false, B: true } };
    open({ readings, finding }, { find: () => found });
    const drawing = await screen.findByRole('img', { name: /How the end leaves/ });
    const texts = () => [...drawing.querySelectorAll('text')].map((it) => it.textContent?.trim());
    await waitFor(() => expect(texts().filter((text) => text === '?')).toHaveLength(1));
    expect(texts()).toContain('1240');
  });

  it('withdraws what was found while a number that can not be stands', async () => {
    const candidate = { family: 'ORFS', size: '-10', standard: '', dash: null, thread: null, gender: null, also: [] };
    const end = {
      role: 'A' as const,
      lookalikes: [],
      unknown: 0,
      changed: 0,
      candidates: [{ ...candidate, probability: 0.9 }],
    };
    open(
      { readings: female, finding: { ...emptyJob().finding, asked: 'swivel_hex_mm' } },
      { find: () => ({ ...empty, ends: [end] }) },
      ({ ends }) =>
        ends[0]?.swivel_hex_mm ? { code: 'input', field: 'x', message: 'x is 1; it must lie between 5 and 500' } : null,
    );
    expect(await screen.findByText('ORFS')).toBeTruthy();
    await fireEvent.click(await button(/^1$/));
    expect(await screen.findByText('No candidates: that number can not be.')).toBeTruthy();
    expect(screen.getByText('ORFS').closest('.withdrawn')).not.toBeNull();
    expect(screen.queryByRole('button', { name: /^Keep/ })).toBeNull();
  });

  it('lets the bits of the use case say what each reading speaks for, against the rival that is picked', async () => {
    const named = (family: string, probability: number) => ({
      ...{ family, size: '-10', standard: '', dash: null, thread: null, gender: null, also: [] },
      probability,
    });
    const end = {
      role: 'A' as const,
      lookalikes: [],
      unknown: 0.1,
      changed: 0,
      candidates: [named('ORFS', 0.7), named('JIC', 0.2)],
    };
    const asked: unknown[] = [];
    open(
      { readings: { ends: [{ role: 'A', gender: 'female', tpi: 14 }], mates: [] } },
      {
        find: () => ({ ...empty, ends: [end] }),
        explain: (input) => {
          const { rival } = input as { rival: number };
          asked.push(input);
          return {
            candidate: 'ORFS -10',
            rival: rival === 1 ? 'JIC -10' : null,
            // Not what anybody would reckon from the tables: what is shown is what was answered.
            readings: [
              { reading: 'gender', bits: -4.28 },
              { reading: 'pitch_mm', bits: 0.01 },
            ],
            together_bits: 1,
            odds_bits: 5,
            must_be_wrong: rival === 1 ? [] : ['gender', 'pitch_mm'],
            candidate_from: { source: 'a trade table', basis: 'memory' },
            rival_from: null,
          };
        },
      },
    );
    await fireEvent.click(await button(/^ORFS/));
    expect(await screen.findByText('4.3 bits for JIC −10')).toBeTruthy();
    expect(screen.getByText('says nothing between the two')).toBeTruthy();
    expect(document.querySelectorAll('.bar .against')).toHaveLength(1);
    expect(document.querySelectorAll('.bar .for')).toHaveLength(2);
    expect(screen.getByText('No single reading would have to be wrong for JIC −10 to be right.')).toBeTruthy();
    expect(screen.getByText('The row of ORFS −10 is recalled: nobody has verified it.')).toBeTruthy();

    await fireEvent.click(await button(/^none of these/));
    expect(
      await screen.findByText(
        'For none of these to be right, these readings would have to be wrong: Which half, Thread gauge.',
      ),
    ).toBeTruthy();
    expect(asked.at(0)).toMatchObject({ of: 'A', candidate: 0, rival: 1, readings: { ends: [{ tpi: 14 }] } });
    expect(asked.at(-1)).toMatchObject({ candidate: 0, rival: 2 });
  });

  it('names a settled part on its tab, says which is next, and ends with the one way to Check', async () => {
    const one = { family: 'ORFS', size: '-10', standard: '', dash: null, thread: null, gender: null, also: [] };
    const of = (role: 'A' | 'B') => ({
      role,
      lookalikes: [],
      unknown: 0,
      changed: 0,
      candidates: [{ ...one, probability: 1 }],
    });
    const read = {
      hose: { layers: 2 },
      ends: [
        { role: 'A' as const, tpi: 16 },
        { role: 'B' as const, tpi: 16 },
      ],
    };
    const { kept } = open(
      {
        readings: { ...read, mates: [], overall_length_mm: '1240 mm' },
        cannot: ['A.gender', 'hose.print'],
        finding: { ...emptyJob().finding, part: 'B', forms: { A: 'straight', B: 'straight' } },
      },
      {
        find: () => ({
          ...empty,
          hose: [{ standard: 'EN 853', type: '2SN', dn: 16, dash: 10, probability: 1, also: [] }],
          ends: [of('A'), of('B')],
          settled: { hose: true, A: true, B: true },
          enough: { hose: true, A: true, B: true },
          next: [],
        }),
      },
    );
    expect(await button(/^End A: settled, ORFS −10/)).toBeTruthy();
    expect(await screen.findByText('End A is settled: ORFS −10. Now the other end.')).toBeTruthy();
    await fireEvent.click((await screen.findAllByRole('button', { name: /^can’t tell/ }))[0] as HTMLElement);
    const ways = await screen.findAllByRole('button', { name: /^Check what may replace it/ });
    expect(ways).toHaveLength(1);
    await fireEvent.click(ways[0] as HTMLElement);
    await waitFor(() => expect(kept()?.step).toBe('check'));
    expect(kept()?.spec.ends.map((end) => end.form)).toEqual(['straight', 'straight']);
  });

  it('asks with how far the hose is apart once that is said, and takes it back', async () => {
    const { kept, asked } = open({ readings: female, finding: { ...emptyJob().finding, asked: 'seal' } });
    const fitted = await button(/^still fitted/);
    expect(fitted.getAttribute('aria-pressed')).toBe('false');
    expect(asked.at(-1)).not.toHaveProperty('reach');
    await fireEvent.click(fitted);
    await waitFor(() => expect(kept()?.readings.reach).toBe('in-place'));
    expect(asked.at(-1)?.reach).toBe('in-place');
    // What was asked may be out of reach now: what the use case names comes instead.
    await waitFor(() => expect(kept()?.finding.asked).toBe('thread_diameter_mm'));
    await fireEvent.click(await button(/^still fitted/));
    await waitFor(() => expect(kept()?.readings).not.toHaveProperty('reach'));
  });

  it('does not ask again what could not be told, and can be asked to', async () => {
    const { kept } = open();
    await fireEvent.click(await button(/^can’t tell/));
    expect(await screen.findByText('Thread Ø')).toBeTruthy();
    await fireEvent.click(await button(/^All readings/));
    await fireEvent.click(await button(/^Remove: What kind of end/));
    await waitFor(() => expect(kept()?.cannot).toEqual([]));
  });
});

it('an answer that comes late never stands over a newer one', async () => {
  const waiting: ((reply: Reply<Found>) => void)[] = [];
  const backend = { ...fake(), call: () => new Promise((answer) => waiting.push(answer as never)) } as Backend;
  const finder = new Finder(backend);
  const reply = (hose: number): Reply<Found> => ({
    ok: true,
    value: { ...empty, unknown: { hose } },
    bytes: new Uint8Array(),
  });
  const older = finder.ask({ ends: [], mates: [] });
  const newer = finder.ask({ ends: [], mates: [], overall_length_mm: 1 });
  waiting[1]?.(reply(0.2));
  waiting[0]?.(reply(0.1));
  await Promise.all([older, newer]);
  expect(finder.found?.unknown.hose).toBe(0.2);
});
