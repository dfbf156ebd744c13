import { expect, it } from 'vitest';
import type { PolicySet } from '../../backend/types';
import { emptyRule, limitText, ofWords, ruleLine, sameKey, saysNothing, withLimit } from './policy';

const rule = (more: Partial<PolicySet> = {}): PolicySet => ({ ...emptyRule('fleet'), ...more });

it('a rule says what it limits, in years and in hours', () => {
  const one = withLimit(withLimit(rule(), 'service_years', 5), 'service_hours', 8000);
  expect(ruleLine(one)).toBe('Service life 5 y · Service hours 8000 h');
  expect([saysNothing(one), saysNothing(rule())]).toEqual([false, true]);
  expect(ruleLine(rule())).toBe('No limit');
});

it('a limit struck out leaves it to a wider rule', () => {
  expect(saysNothing(withLimit(rule({ storage_years: 2 }), 'storage_years', null))).toBe(true);
});

it('a rule of the same hoses is the same rule, whatever it limits', () => {
  const pressure = rule({ of: { line: 'pressure' }, service_years: 4 });
  expect(sameKey(pressure, rule({ of: { line: 'pressure' } }))).toBe(true);
  expect(sameKey(pressure, rule())).toBe(false);
  expect(sameKey(rule(), rule({ of: {} }))).toBe(true);
  expect(sameKey(rule(), { ...rule(), scope: { site: 's' } })).toBe(false);
});

it('names the hoses that it holds for', () => {
  expect(ofWords({})).toBe('All hoses');
  expect(ofWords({ line: 'suction', demand: 'harsh' })).toBe('Suction · Increased demands');
  expect(limitText('inspection_hours', 500)).toBe('500 h');
});
