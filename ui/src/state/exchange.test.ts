import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Backend } from '../backend';
import { Exchange, PAUSE_MS } from './exchange.svelte';

const photos = { came: 0, went: 0, to_come: 0, to_go: 0, refused: [] };
const went = {
  at: '2026-11-26T08:00:00Z',
  came: 2,
  went: 1,
  sent: 9,
  refused: [],
  waiting_for: [],
  photos,
  cut_off: null,
};

/** A backend that counts, over a device that has or has not chosen a storage. */
function device(chosen: boolean) {
  const asked: string[] = [];
  const backend = {
    call: (name: string) => {
      asked.push(name);
      const value = name === 'share.exchange' ? went : { url: chosen ? 'file:///x' : null, fleet: '7KQ4M' };
      return Promise.resolve({ ok: true, value, bytes: new Uint8Array() });
    },
  } as unknown as Backend;
  return { asked, backend };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('it exchanges at the start, when the signal comes back and every so often', async () => {
  const { asked, backend } = device(true);
  const came = vi.fn();
  const exchange = new Exchange(backend, came);
  const stop = exchange.keep();
  await vi.advanceTimersByTimeAsync(0);
  dispatchEvent(new Event('online'));
  await vi.advanceTimersByTimeAsync(PAUSE_MS);
  expect(asked.filter((name) => name === 'share.exchange')).toHaveLength(3);
  expect(came).toHaveBeenCalledTimes(3);
  expect(exchange.last).toEqual(went);
  stop();
  dispatchEvent(new Event('online'));
  await vi.advanceTimersByTimeAsync(PAUSE_MS);
  expect(asked.filter((name) => name === 'share.exchange')).toHaveLength(3);
});

test('a device that chose no storage asks for nothing', async () => {
  const { asked, backend } = device(false);
  const stop = new Exchange(backend, () => undefined).keep();
  await vi.advanceTimersByTimeAsync(PAUSE_MS);
  expect(asked).not.toContain('share.exchange');
  stop();
});

test('two taps are one exchange', async () => {
  const { asked, backend } = device(true);
  const exchange = new Exchange(backend, () => undefined);
  await Promise.all([exchange.now(), exchange.now()]);
  expect(asked).toEqual(['share.exchange']);
});

test('a picture that came alone has the screens read anew', async () => {
  const value = { ...went, came: 0, photos: { ...photos, came: 1 } };
  const backend = { call: () => Promise.resolve({ ok: true, value, bytes: new Uint8Array() }) } as unknown as Backend;
  const came = vi.fn();
  await new Exchange(backend, came).now();
  expect(came).toHaveBeenCalledOnce();
});
