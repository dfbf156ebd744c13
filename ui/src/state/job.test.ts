import { expect, it, vi } from 'vitest';
import type { Backend } from '../backend';
import { Job } from './job.svelte';

/** A backend that notes the order in which calls are done; a kept job takes its time. */
function slow(refuse = 0): { backend: Backend; done: string[] } {
  const done: string[] = [];
  let refusals = refuse;
  const call = async (name: string) => {
    if (name === 'job.keep') await new Promise((resolve) => setTimeout(resolve, 5));
    if (refusals-- > 0) return { ok: false, error: { code: 'file', field: '', message: 'in use' } };
    done.push(name);
    return { ok: true, value: { job: 'j' }, bytes: new Uint8Array() };
  };
  return { backend: { call, save: call } as unknown as Backend, done };
}

it('a job that is done is closed after whatever was still being kept of it', async () => {
  const { backend, done } = slow();
  const job = new Job(backend);
  await job.begin();
  job.keep('{"step":"find"}');
  job.keep('{"step":"fit"}');
  await job.close();
  expect(done).toEqual(['job.keep', 'job.keep', 'job.close']);
  expect(job.doc).toBeNull();
});

it('a job put aside is kept with its last change', async () => {
  const { backend, done } = slow();
  const job = new Job(backend);
  await job.begin({ step: 'make' });
  await job.aside();
  expect(done).toEqual(['job.keep']);
});

it('what was refused is tried again', async () => {
  vi.useFakeTimers();
  const { backend, done } = slow(1);
  const job = new Job(backend);
  await job.begin();
  job.keep('{"step":"find"}');
  await vi.advanceTimersByTimeAsync(10);
  expect([job.kept, job.problem?.message, done]).toEqual([false, 'in use', []]);
  await vi.advanceTimersByTimeAsync(3000);
  expect([job.kept, job.problem, done]).toEqual([true, null, ['job.keep']]);
  vi.useRealTimers();
});
