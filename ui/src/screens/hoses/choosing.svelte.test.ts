import { flushSync } from 'svelte';
import { expect, it } from 'vitest';
import { Choosing } from './choosing.svelte';

it('a row is chosen and let go, and the keys stay on it', () => {
  const choosing = new Choosing();
  choosing.toggle(3, 'c');
  expect([choosing.has('c'), choosing.at]).toEqual([true, 3]);
  choosing.toggle(3, 'c');
  expect(choosing.codes.size).toBe(0);
});

it('a span runs from where the last choice was made, either way', () => {
  const choosing = new Choosing();
  choosing.go(5, 10);
  expect(choosing.span(7, 10)).toEqual([5, 7]);
  expect(choosing.span(2, 10)).toEqual([2, 5]);
  expect(choosing.span(99, 10)).toEqual([5, 9]);
});

it('an effect that begins at the first row is not asked anew by the keys', () => {
  const choosing = new Choosing();
  let asked = 0;
  const end = $effect.root(() => {
    $effect(() => {
      asked += 1;
      choosing.go(0, 1);
    });
  });
  flushSync();
  choosing.go(4, 10);
  flushSync();
  expect([asked, choosing.at]).toEqual([1, 4]);
  end();
});
