import { expect, it } from 'vitest';
import type { Answer } from '../../backend';
import type { Finding, Verdict } from '../../backend/types';
import { headOf } from './oil';

type Flowing = Pick<Answer<'oil'>, 'verdict' | 'surge'>;
const flowing = (verdict: Verdict, peak_bar: number | null): Flowing => ({
  verdict,
  surge: {
    peak_bar,
    pressure_rise_bar: 151,
    effective_bulk_modulus_pa: 1,
    wave_speed_m_s: null,
    critical_time_s: null,
  },
});
const part = (verdict: Verdict) => ({ rule: 'pressure', verdict }) as Finding;

it('the head is the gravest of speed and peak', () => {
  expect(headOf(flowing('pass', 336), [])).toEqual({ sign: 'pass', about: 'speed' });
  expect(headOf(flowing('pass', 336), [part('stop')])).toEqual({ sign: 'stop', about: 'peak' });
  expect(headOf(flowing('caution', 336), [part('caution'), part('stop')])).toEqual({ sign: 'stop', about: 'peak' });
  expect(headOf(flowing('caution', 336), [part('caution')])).toEqual({ sign: 'caution', about: 'speed' });
});

it('a rise whose peak nobody can reckon is never a pass', () => {
  expect(headOf(flowing('pass', null), [])).toEqual({ sign: 'caution', about: 'no-peak' });
  expect(headOf({ verdict: 'pass', surge: null }, [])).toEqual({ sign: 'pass', about: 'speed' });
});
