import { fireEvent, render, screen, waitFor } from '@testing-library/svelte';
import { beforeEach, describe, expect, it } from 'vitest';
import App from '../../App.svelte';
import type { Backend, Reply } from '../../backend';
import { fake } from '../../backend/fake';
import type { Found, Readings } from '../../backend/types';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import { Finder } from './finder.svelte';

const empty: Found = {
  hose: [],
  ends: [],
  unknown: { hose: 0 },
  settled: { hose: false, A: false, B: false },
  next: [
    { of: 'A', reading: 'thread_diameter_mm', gain_bits: 4, how: '' },
    { of: 'A', reading: 'seal', gain_bits: 1, how: '' },
  ],
};

/** The app with one job open; keeps what it is given to keep. */
function open(change: Partial<JobDoc> = {}): { kept: () => JobDoc | undefined; asked: Readings[] } {
  let kept: JobDoc | undefined;
  const asked: Readings[] = [];
  const content = JSON.parse(JSON.stringify({ ...emptyJob(), ...change })) as never;
  render(App, {
    backend: fake({
      'job.list': () => ({ jobs: [{ job: 'j', version: 'v', kept: '', content }] }),
      'job.keep': (input) => {
        kept = (input as { content: JobDoc }).content;
        return { job: 'j' };
      },
      find: (input) => {
        asked.push(input as Readings);
        return empty;
      },
    }),
  });
  return { kept: () => kept, asked };
}
const button = (name: RegExp) => screen.findByRole('button', { name });

describe('finding', () => {
  beforeEach(() => {
    Object.assign(Element.prototype, { scrollIntoView: () => {} });
  });

  it('keeps a reading and asks for the next', async () => {
    const { kept } = open();
    await fireEvent.click(await button(/^Female/));
    await fireEvent.click(await button(/^Keep Female/));
    expect(await screen.findByText('Thread Ø, inside')).toBeTruthy();
    await waitFor(() => expect(kept()?.readings.ends).toEqual([{ role: 'A', gender: 'female' }]));
  });

  it('asks anew with each key that makes a number, and half a number outlives the program', async () => {
    const readings = { ends: [{ role: 'A' as const, gender: 'female' as const }], mates: [] };
    const { asked, kept } = open({ readings, finding: { ...emptyJob().finding, asked: 'thread_diameter_mm' } });
    for (const key of ['1', 'in +']) await fireEvent.click(await screen.findByRole('button', { name: key }));
    await waitFor(() => expect(kept()?.typing?.draft.typed['in']).toBe('1+'));
    expect(asked.map((one) => one.ends[0]?.thread_diameter_mm)).toEqual([undefined, '1 in', undefined]);
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
