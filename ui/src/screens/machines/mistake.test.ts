import { expect, it } from 'vitest';
import type { DueLine, HoseInspection, Stay, Verdict } from '../../backend/types';
import { placeAt } from '../place.fixture';
import { endedFor, mistakable, unfit } from './mistake';

const stay = (code: string, over: Partial<Stay>): Stay => ({
  code,
  at: placeAt,
  hose: null,
  length_mm: null,
  assembled: null,
  on: null,
  on_date: null,
  already_there: false,
  on_hours: null,
  off: null,
  off_date: null,
  off_hours: null,
  cause: null,
  note: null,
  ...over,
});
const earlier = stay('EARLIER', { on: 'van/2', off: 'van/5' });
const old = stay('OLD', { on: 'van/6', off: 'van/9' });
const fitted = stay('NEW', { on: 'van/10' });

it('strikes the fitting and the coming off that was written with it, with the reason', () => {
  const ended = endedFor([earlier, old, fitted], 'van/10');
  expect(ended?.code).toBe('OLD');
  expect(unfit('van/10', ended, 'wrong hose')).toEqual([
    { body: { kind: 'voided', reason: 'wrong hose' }, builds_on: ['van/10'] },
    { body: { kind: 'voided', reason: 'wrong hose' }, builds_on: ['van/9'] },
  ]);
});

it('leaves off what came off on its own, or was written by another device', () => {
  expect(endedFor([earlier, fitted], 'van/10')).toBeNull();
  expect(endedFor([stay('OLD', { off: 'shop/9' }), fitted], 'van/10')).toBeNull();
  expect(endedFor([fitted], 'van/1')).toBeNull();
  expect(unfit('van/10', null, 'wrong hose')).toHaveLength(1);
});

it('offers to strike out the latest inspection and each that stops, the latest first', () => {
  const seen = (version: string, date: string, ...grades: Verdict[]): HoseInspection => ({
    version,
    date,
    findings: grades.map((grade) => ({ sign: 'LEAK', grade })),
    opened: false,
  });
  const all = [
    seen('van/1', '2026-01-02', 'stop'),
    seen('van/2', '2026-03-02'),
    seen('van/3', '2026-02-02', 'caution'),
  ];
  const stop = { verdict: 'stop', seen: { sign: 'LEAK', seen_on: '2026-01-02' } } as DueLine;
  expect(mistakable(all, [stop]).map(({ version }) => version)).toEqual(['van/2', 'van/1']);
});
