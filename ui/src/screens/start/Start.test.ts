import { fireEvent, render, screen, waitFor } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import { fake } from '../../backend/fake';
import { App } from '../../state/app.svelte';
import { emptyJob } from '../../state/job-doc';
import StartIn from './StartIn.test.svelte';

/** The start over a register with one job not done. */
async function start(): Promise<{ app: App; closed: string[] }> {
  const closed: string[] = [];
  const content = JSON.parse(
    JSON.stringify({ ...emptyJob(), step: 'make', at: { machine_name: 'Excavator 3', place_name: 'Stick, rod side' } }),
  ) as never;
  const backend = fake({
    'job.list': () => ({
      jobs: closed.length > 0 ? [] : [{ job: 'j1', version: 'v', kept: '2026-11-25T10:00:00Z', content }],
    }),
    'job.keep': (input) => {
      closed.splice(closed.indexOf((input as { job: string }).job), 1);
      return { job: 'j1' };
    },
    'job.close': (input) => {
      closed.push((input as { job: string }).job);
      return { job: 'j1' };
    },
  });
  const app = new App(backend);
  await app.refresh();
  render(StartIn, { app });
  return { app, closed };
}

it('lists a job not done by its machine and step, and goes on with it', async () => {
  const { app } = await start();
  const row = screen.getByRole('button', { name: /^Excavator 3.*Stick, rod side.*Make/s });
  await fireEvent.click(row);
  await waitFor(() => expect(app.job.doc?.step).toBe('make'));
});

it('gives a job up at once, and takes it back from the same row', async () => {
  const { app, closed } = await start();
  await fireEvent.click(screen.getByRole('button', { name: 'Give up the job: Excavator 3' }));
  await waitFor(() => expect(closed).toEqual(['j1']));
  expect(app.drafts).toEqual([]);
  await fireEvent.click(await screen.findByRole('button', { name: 'Take it back: the job Excavator 3' }));
  await waitFor(() => expect(closed).toEqual([]));
  expect(await screen.findByRole('button', { name: /^Excavator 3.*Stick, rod side.*Make/s })).toBeTruthy();
  expect(app.drafts.map(({ job }) => job)).toEqual(['j1']);
});

it('starts with the print where the print is read, with an end where it is measured', async () => {
  const { app } = await start();
  await fireEvent.click(screen.getByRole('button', { name: /^Read the print/ }));
  await waitFor(() => expect(app.job.doc?.finding).toMatchObject({ part: 'hose', asked: 'print' }));
  await fireEvent.click(screen.getByRole('button', { name: /^Measure/ }));
  await waitFor(() => expect(app.job.doc?.finding).toMatchObject({ part: 'A', asked: null }));
});
