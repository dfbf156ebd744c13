import { expect, it } from 'vitest';
import { hoursDoubt } from './hours';

const last = { machine: 'm', hours: 6812, date: '2026-11-20' };

it('a reading that no machine can have is asked about before it is kept', () => {
  expect(hoursDoubt(null, 68120, '2026-11-26')).toBeNull();
  expect(hoursDoubt(last, 6812 + 6 * 24, '2026-11-26')).toBeNull();
  expect(hoursDoubt(last, 6812 + 6 * 24 + 1, '2026-11-26')).toBe('jump');
  expect(hoursDoubt(last, 68120, '2026-11-26')).toBe('jump');
  expect(hoursDoubt(last, 6811, '2026-11-26')).toBe('lower');
  expect(hoursDoubt(last, 6811, '2026-11-20')).toBe('same-day');
  expect(hoursDoubt(last, 6812 + 24, '2026-11-20')).toBeNull();
  expect(hoursDoubt(last, 6811, '2026-11-19')).toBeNull();
  expect(hoursDoubt(last, 6813, '2026-11-19')).toBe('earlier');
});
