import { describe, expect, it } from 'vitest';
import type { Found, Part } from '../../backend/types';
import { emptyJob } from '../../state/job-doc';
import { keysOf, nextAsked, nextKey, type State } from './asking';
import { keep, picked } from './readings';

function state(next: [Part, string, number][], settled: Partial<Found['settled']> = {}): State {
  return {
    readings: emptyJob().readings,
    cannot: [],
    forms: {},
    found: {
      hose: [],
      ends: [],
      unknown: { hose: 0 },
      settled: { hose: false, A: false, B: false, ...settled },
      next: next.map(([of, reading, gain_bits]) => ({ of, reading, gain_bits, how: '' })),
    },
  };
}

describe('the reading asked next', () => {
  it('is a look before it is a tool: the kind of end first, the print first', () => {
    const open = state([
      ['A', 'thread_diameter_mm', 4.8],
      ['hose', 'id_mm', 3.7],
    ]);
    expect(nextKey(open, 'A')).toBe('gender');
    expect(nextKey(open, 'hose')).toBe('print');
  });

  it('is the one that tells most for its effort', () => {
    const read = state([
      ['A', 'tube_od_mm', 1.7],
      ['A', 'seal', 1.1],
      ['B', 'seat_included_angle_deg', 3],
    ]);
    keep(read.readings, 'A', 'gender', picked('female'));
    expect(nextKey(read, 'A')).toBe('seal');
  });

  it('is never one that could not be told', () => {
    const read = { ...state([['A', 'seal', 1.1]]), cannot: ['A.gender', 'A.seal'] };
    expect(nextKey(read, 'A')).toBe('form');
  });

  it('of a flange is of a flange: no thread, no seat', () => {
    const flange = state([
      ['B', 'thread_diameter_mm', 4],
      ['B', 'bolt_short_mm', 1],
    ]);
    keep(flange.readings, 'B', 'bolt_long_mm', { unit: 'mm', typed: { mm: '52.4' } });
    expect(nextKey(flange, 'B')).toBe('bolt_short_mm');
    expect(keysOf(flange, 'B')).not.toContain('gender');
  });

  it('goes to the machine’s half where the end itself can tell no more', () => {
    const done: State = { ...state([]), cannot: ['A.gender', 'A.form'] };
    expect(nextAsked(done, 'A')).toEqual({ half: 'mate-A', key: 'gender' });
  });

  it('goes on from a settled end to the other, and ends with the tape', () => {
    const settled = state([], { A: true, B: true, hose: true });
    const forms = {
      ...settled,
      forms: { A: 'straight', B: 'straight' },
      cannot: ['A.gender', 'B.gender', 'hose.print'],
    };
    expect(nextAsked(forms, 'A')).toEqual({ half: 'hose', key: 'overall_length_mm' });
    forms.readings.overall_length_mm = '1240 mm';
    expect(nextAsked(forms, 'hose')).toBeNull();
  });
});
