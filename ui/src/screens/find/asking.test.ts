import { describe, expect, it } from 'vitest';
import type { Found, Part } from '../../backend/types';
import { emptyJob } from '../../state/job-doc';
import { keysOf, nextAsked, nextKey, type State } from './asking';
import { keep, picked } from './readings';

function state(next: [Part, string, number, number?][], settled: Partial<Found['settled']> = {}): State {
  return {
    readings: emptyJob().readings,
    cannot: [],
    forms: {},
    found: {
      hose: [],
      ends: [],
      unknown: { hose: 0 },
      settled: { hose: false, A: false, B: false, ...settled },
      enough: { hose: false, A: false, B: false, ...settled },
      odd_ends: false,
      contradictions: [],
      next: next.map(([of, reading, gain_bits, effort = 1]) => ({ of, reading, gain_bits, effort, how: '' })),
    },
  };
}

describe('the reading asked next', () => {
  it('is a look before it is a tool: the kind of end first, the print first', () => {
    const open = state([
      ['A', 'thread_diameter_mm', 4.8],
      ['hose', 'id_mm', 3.7],
    ]);
    expect(nextKey(open, 'A')).toBe('kind');
    expect(nextKey(open, 'hose')).toBe('print');
  });

  it('is the one that tells most for its effort', () => {
    const read = state([
      ['A', 'tube_od_mm', 1.7, 3],
      ['A', 'seal', 1.1, 1],
      ['B', 'seat_included_angle_deg', 3],
    ]);
    keep(read.readings, 'A', 'gender', picked('female'));
    expect(nextKey(read, 'A')).toBe('seal');
  });

  it('is never one that could not be told', () => {
    const read = { ...state([['A', 'seal', 1.1]]), cannot: ['A.gender', 'A.seal'] };
    expect(nextKey(read, 'A')).toBe('thread_diameter_mm');
    const none = { ...state([]), cannot: ['A.gender'] };
    expect(nextKey(none, 'A')).toBe('form');
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

  it('is of the part that a technician takes next where two tell about as much: the thread before the hex', () => {
    const read = state([
      ['B', 'swivel_hex_mm', 0.3],
      ['B', 'pitch_mm', 0.2],
    ]);
    keep(read.readings, 'B', 'gender', picked('female'));
    expect(nextKey(read, 'B')).toBe('pitch_mm');
    const far = state([
      ['B', 'swivel_hex_mm', 0.3],
      ['B', 'pitch_mm', 0.1],
    ]);
    keep(far.readings, 'B', 'gender', picked('female'));
    expect(nextKey(far, 'B')).toBe('swivel_hex_mm');
  });

  it('goes to the machine’s half last, where the end itself can tell no more', () => {
    const done: State = { ...state([]), cannot: ['A.gender', 'A.form'] };
    expect(nextAsked(done, 'A')).toEqual({ half: 'B', key: 'kind' });
    done.cannot = [...done.cannot, 'B.gender', 'B.form', 'hose.print', 'hose.overall_length_mm'];
    expect(nextAsked(done, 'A')).toEqual({ half: 'mate-A', key: 'kind' });
    const settled = { ...done, found: done.found && { ...done.found, settled: { hose: true, A: true, B: false } } };
    expect(nextAsked(settled, 'A')).toEqual({ half: 'mate-B', key: 'kind' });
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

  it('of a hose that is still fitted is of what can be reached: no seat, no tape, nothing on the machine', () => {
    const fitted = state([['A', 'bolt_long_mm', 1]]);
    fitted.readings.reach = 'in-place';
    keep(fitted.readings, 'A', 'gender', picked('female'));
    const off = { ...fitted, readings: { ...fitted.readings, reach: 'off' as const } };
    // Without a reach, and off the machine, the plain order stands in where no gain is given.
    expect(nextKey(fitted, 'A')).toBe('form');
    expect(nextKey(off, 'A')).toBe('seal');

    fitted.cannot = ['A.form', 'B.gender', 'B.form', 'hose.print'];
    expect(nextAsked(fitted, 'A')).toBeNull();
    expect(nextAsked({ ...off, cannot: [...fitted.cannot, 'A.seal'] }, 'hose')).toEqual({
      half: 'hose',
      key: 'overall_length_mm',
    });
  });

  it('of a hose that is not cut is what the use case names, and nothing that needs the cut', () => {
    const uncut = state([['hose', 'cover_od_mm', 1]]);
    uncut.readings.reach = 'off';
    uncut.cannot = ['hose.print', 'hose.cover_od_mm'];
    expect(nextKey(uncut, 'hose')).toBe('overall_length_mm');
    delete uncut.readings.reach;
    expect(nextKey(uncut, 'hose')).toBe('reinforcement');
  });
});
