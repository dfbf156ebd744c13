import { expect, it } from 'vitest';
import { dayIn } from './batch';

it('counts days on the calendar, over months, years and leap days', () => {
  expect(dayIn('2026-11-26', 0)).toBe('2026-11-26');
  expect(dayIn('2026-11-26', 90)).toBe('2027-02-24');
  expect(dayIn('2028-02-28', 1)).toBe('2028-02-29');
});
