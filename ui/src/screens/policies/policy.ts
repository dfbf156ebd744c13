// The owner's limits of age: one rule as it is changed, and what stands on it in words.
import type { Answer } from '../../backend';
import type { Demand, PolicyOf, PolicySet, Scope } from '../../backend/types';
import { number } from '../../words/number';
import { lineWords } from '../../words/spec';
import { say } from '../../words/words';

export type Guide = Answer<'policy.list'>['rules'][number];
export type Owners = Answer<'policy.list'>['policies'][number];

/** The limits of a rule, in the order that they are asked. */
export const LIMITS = [
  'service_years',
  'service_hours',
  'storage_years',
  'inspection_years',
  'inspection_hours',
] as const;
export type LimitKey = (typeof LIMITS)[number];

/** A rule that says nothing yet. */
export const emptyRule = (scope: Scope, of: PolicyOf = {}): PolicySet => ({ scope, of, stop: false });

/** The rule with one limit changed; null leaves that to a wider rule. */
export function withLimit(rule: PolicySet, key: LimitKey, value: number | null): PolicySet {
  const { [key]: _before, ...rest } = rule;
  return value === null ? rest : { ...rest, [key]: value };
}

/** Whether it says anything at all. */
export const saysNothing = (rule: PolicySet): boolean => LIMITS.every((key) => (rule[key] ?? null) === null);

/** Both hold for the same hoses: one then stands for the other. */
export function sameKey(one: PolicySet, other: PolicySet): boolean {
  const key = ({ scope, of }: PolicySet) => JSON.stringify([scope, of?.line ?? null, of?.demand ?? null]);
  return key(one) === key(other);
}

/** A limit as it is written: `6 y`, `2000 h`. */
export function limitText(key: LimitKey, value: number): string {
  return key.endsWith('_hours')
    ? say('policies-hours', { hours: number(value, 0) })
    : say('due-years', { years: number(value, 1) });
}

/** What a rule asks, in one line. */
export function ruleLine(rule: PolicySet): string {
  const said = LIMITS.flatMap((key) => {
    const value = rule[key] ?? null;
    return value === null ? [] : [`${say(`policies-limit-${dashed(key)}`)} ${limitText(key, value)}`];
  });
  return said.length > 0 ? said.join(' · ') : say('policies-says-nothing');
}

/** A key as an id writes it. */
export const dashed = <K extends LimitKey>(key: K) =>
  key.replace('_', '-') as
    'service-years' | 'service-hours' | 'storage-years' | 'inspection-years' | 'inspection-hours';

export const demandWords = (demand: Demand): string => say(`demand-${demand}`);

/** Which hoses of its scope it holds for. */
export function ofWords({ line, demand }: PolicyOf = {}): string {
  const parts = [line ? lineWords(line) : null, demand ? demandWords(demand) : null];
  return parts.filter((part) => part).join(' · ') || say('policies-all-hoses');
}
