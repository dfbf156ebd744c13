import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { feel } from './haptics';

const vibrate = vi.fn();
const still = (matches: boolean) => vi.stubGlobal('matchMedia', () => ({ matches }));

beforeEach(() => {
  vibrate.mockClear();
  Object.defineProperty(navigator, 'vibrate', { value: vibrate, configurable: true });
  still(false);
});
afterEach(() => {
  Reflect.deleteProperty(navigator, 'vibrate');
  vi.unstubAllGlobals();
});

it('a key that was taken, one that was not and a tick feel different', () => {
  feel('taken');
  feel('refused');
  feel('ticked');
  const felt = vibrate.mock.calls.map(([pattern]) => JSON.stringify(pattern));
  expect(new Set(felt).size).toBe(3);
});

it('nothing shakes where little should move', () => {
  still(true);
  feel('taken');
  expect(vibrate).not.toHaveBeenCalled();
});

it('nothing happens on a device that can not shake', () => {
  Reflect.deleteProperty(navigator, 'vibrate');
  expect(() => feel('taken')).not.toThrow();
});
