import { beforeEach, expect, it } from 'vitest';
import { Batch, type Wanted } from './batch.svelte';

const hose = (id: string, count = 1): Wanted => ({ id, name: `Hose ${id}`, count });

beforeEach(() => localStorage.clear());

it('holds each hose once, and is there again after the program was killed', () => {
  const batch = new Batch();
  batch.add(hose('a'), hose('b'));
  batch.add(hose('a', 3));
  batch.count('b', 2);
  expect(new Batch().wanted).toEqual([hose('b', 2), hose('a', 3)]);
});

it('keeps nothing of how a hose is made: its job or place is asked anew', () => {
  localStorage.setItem('hosewright-batch', JSON.stringify([{ ...hose('a'), make: { question: {} } }]));
  expect(new Batch().wanted).toEqual([hose('a')]);
});

it('is emptied and comes back', () => {
  const batch = new Batch();
  batch.add(hose('a'));
  const before = batch.wanted;
  batch.empty();
  expect(new Batch().wanted).toEqual([]);
  batch.restore(before);
  expect(batch.has('a')).toBe(true);
});

it('begins empty where what was kept can not be read', () => {
  localStorage.setItem('hosewright-batch', '{');
  expect(new Batch().wanted).toEqual([]);
});
