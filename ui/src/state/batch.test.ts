import { beforeEach, expect, it } from 'vitest';
import { Batch, type BatchHose } from './batch.svelte';

const hose = (id: string, count = 1): BatchHose => ({
  id,
  name: `Hose ${id}`,
  make: {
    question: { spec: { ends: [] }, service: { duties: [] }, overrides: [], length_practice: 'din-20066' },
    settings: [],
  },
  count,
});

beforeEach(() => localStorage.clear());

it('holds each hose once, and is there again after the program was killed', () => {
  const batch = new Batch();
  batch.add(hose('a'), hose('b'));
  batch.add(hose('a', 3));
  batch.count('b', 2);
  expect(new Batch().asked.map(({ name, count }) => [name, count])).toEqual([
    ['Hose b', 2],
    ['Hose a', 3],
  ]);
});

it('is emptied and comes back', () => {
  const batch = new Batch();
  batch.add(hose('a'));
  const before = batch.hoses;
  batch.empty();
  expect(new Batch().hoses).toEqual([]);
  batch.restore(before);
  expect(batch.has('a')).toBe(true);
});

it('begins empty where what was kept can not be read', () => {
  localStorage.setItem('hosewright-batch', '{');
  expect(new Batch().hoses).toEqual([]);
});
