import { expect, it } from 'vitest';
import type { Reply } from '../../backend';
import { PAGE, Pages, type Page } from './pages.svelte';

const answer = <T>(value: T): Reply<T> => ({ ok: true, value, bytes: new Uint8Array() });

/** A list of so many numbers, and which of its pages were asked for. */
function list(total: number) {
  const asked: number[] = [];
  const fetch = (offset: number, limit: number): Promise<Reply<Page<number>>> => {
    asked.push(offset / limit);
    const rows = Array.from({ length: Math.max(0, Math.min(limit, total - offset)) }, (_, at) => offset + at);
    return Promise.resolve(answer({ total, rows }));
  };
  return { asked, fetch };
}

const settled = () => new Promise((done) => setTimeout(done));

it('reads what is in sight and nothing else', async () => {
  const { asked, fetch } = list(100_000);
  const pages = new Pages<number>();
  await pages.ask(fetch);
  expect([pages.total, pages.row(0), pages.row(50_000)]).toEqual([100_000, 0, undefined]);
  pages.want(50_000, 50_040);
  pages.want(50_000, 50_040);
  await settled();
  expect(pages.row(50_039)).toBe(50_039);
  expect(asked).toEqual([0, 50_000 / PAGE]);
});

it('lets go of what is long out of sight and reads it again', async () => {
  const { asked, fetch } = list(100_000);
  const pages = new Pages<number>();
  await pages.ask(fetch);
  for (let page = 1; page <= 60; page += 1) {
    pages.want(page * PAGE, page * PAGE + 1);
    await settled();
  }
  expect(pages.row(0)).toBeUndefined();
  pages.want(0, 1);
  await settled();
  expect([pages.row(0), asked.length]).toEqual([0, 62]);
});

it('an answer to an older question is not shown', async () => {
  const pages = new Pages<number>();
  let late: (reply: Reply<Page<number>>) => void = () => {};
  const first = pages.ask(() => new Promise((done) => (late = done)));
  await pages.ask(list(3).fetch);
  late(answer({ total: 9, rows: [9] }));
  await first;
  expect([pages.total, pages.row(0)]).toEqual([3, 0]);
});

it('says why there is none', async () => {
  const pages = new Pages<number>();
  await pages.ask(() => Promise.resolve({ ok: false, error: { code: 'file', field: '', message: 'no disk' } }));
  expect([pages.total, pages.problem?.message]).toEqual([null, 'no disk']);
});
