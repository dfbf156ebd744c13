import { expect, test } from 'vitest';
import type { Shared } from '../../backend/types';
import { deviceName, leftOutOf, standingWords } from './members';

test('what does not count is summed over its reasons, device by device', () => {
  const left_out = [
    { device: 'a', name: null, why: 'waits', count: 3 },
    { device: 'a', name: null, why: 'withdrawn', count: 4 },
    { device: 'b', name: null, why: 'role', count: 5 },
  ];
  const shared = { left_out } as unknown as Shared;
  expect(leftOutOf(shared, 'a')).toBe(7);
  expect(leftOutOf(shared, 'c')).toBe(0);
});

test('every standing has words, and a device without a name is called by its id', () => {
  for (const standing of ['open', 'waits', 'reader', 'technician', 'planner', 'founder', 'withdrawn'] as const) {
    expect(standingWords(standing)).not.toContain('members-');
  }
  const device = { device: '0123456789abcdef', name: null, public_key: null, events: 1, latest: '' };
  expect(deviceName(device)).toBe('01234567');
});
