import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { Scale } from './scale.svelte';

beforeEach(() => vi.stubGlobal('matchMedia', () => ({ matches: false })));
afterEach(() => {
  localStorage.clear();
  vi.unstubAllGlobals();
});

it('is what such a screen usually has until it is set with a card, and then stays', () => {
  const scale = new Scale();
  expect(scale.kept).toBeNull();
  expect(scale.pxPerMm).toBeCloseTo(3.78, 2);
  scale.set(5.9);
  expect(new Scale().pxPerMm).toBe(5.9);
});

it('is not taken from what no screen has', () => {
  for (const kept of ['', '0', 'wide', '400', '-6']) {
    localStorage.setItem('hosewright-px-per-mm', kept);
    expect(new Scale().kept, kept).toBeNull();
  }
});
