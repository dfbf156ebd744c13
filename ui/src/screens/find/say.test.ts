import { expect, it } from 'vitest';
import { refusal } from './say';

const problem = {
  code: 'input' as const,
  field: 'ends[0].swivel_hex_mm',
  message: 'ends[0].swivel_hex_mm is 1524; it must lie between 0.1 and 500',
};

it('says in the unit typed why a number can not be', () => {
  const said = (unit: string, typed: string) => refusal(problem, 'swivel_hex_mm', { unit, typed: { [unit]: typed } });
  expect(said('in', '60')).toMatch(/60\sin\b.*0\.004\sin and 19\.7\sin/);
  expect(said('in', '60')).not.toContain('mm');
  expect(said('mm', '1524')).toMatch(/1524\smm\b.*0\.1\smm and 500\smm/);
});

it('tells a refusal of another kind by the reading’s name', () => {
  const twice = { ...problem, message: 'ends[0].swivel_hex_mm is wrong' };
  expect(refusal(twice, 'swivel_hex_mm', { unit: 'in', typed: { in: '60' } })).toBe('Hex of the nut is wrong');
});
