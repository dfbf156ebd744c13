import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { keepAwake } from './awake';

let held = 0;
const request = vi.fn(async () => {
  held += 1;
  return { release: async () => void (held -= 1) };
});
const settled = () => new Promise((done) => setTimeout(done));
const seen = () => document.dispatchEvent(new Event('visibilitychange'));

beforeEach(() => {
  held = 0;
  request.mockClear();
  Object.defineProperty(navigator, 'wakeLock', { value: { request }, configurable: true });
});
afterEach(() => void Reflect.deleteProperty(navigator, 'wakeLock'));

it('the screen is held until it is left', async () => {
  const leave = keepAwake();
  await settled();
  expect(held).toBe(1);
  leave();
  await settled();
  expect(held).toBe(0);
});

it('what is left before the device answered is not held', async () => {
  keepAwake()();
  await settled();
  expect([request.mock.calls.length, held]).toEqual([1, 0]);
});

it('it is asked for again when the program is seen again, and no more once it was left', async () => {
  const leave = keepAwake();
  await settled();
  seen();
  await settled();
  expect(request).toHaveBeenCalledTimes(2);
  leave();
  seen();
  await settled();
  expect(request).toHaveBeenCalledTimes(2);
});

it('a device that refuses, or has no such thing, is left as it is', async () => {
  request.mockRejectedValueOnce(new Error('battery'));
  const leave = keepAwake();
  await settled();
  expect(leave).not.toThrow();
  Reflect.deleteProperty(navigator, 'wakeLock');
  expect(keepAwake()).not.toThrow();
});
