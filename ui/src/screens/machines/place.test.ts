import { describe, expect, it } from 'vitest';
import type { EventRef, HoseShown, Place, Stay, Versioned, Written } from '../../backend/types';
import { causesText, repeated, stayLine } from './failed';
import { saidBy, settled } from './history';
import { nextOf } from './next';
import { changed, valueOf } from './service';

const at = {
  place: 'p1',
  number: 14,
  place_name: 'Stick cylinder, rod side',
  machine: 'm1',
  machine_name: 'Excavator 3',
  site: null,
  site_name: null,
};
const stay = (over: Partial<Stay> = {}): Stay => ({
  code: 'AAAAA-AAAAA-0',
  at,
  hose: null,
  length_mm: null,
  assembled: null,
  on: 'd/1',
  on_date: '2024-11-12',
  already_there: false,
  on_hours: null,
  off: null,
  off_date: null,
  off_hours: null,
  cause: null,
  note: null,
  ...over,
});
const clock = { day: null, years: null, at_least: false };
const hose = (over: Partial<HoseShown>): HoseShown => ({
  code: 'AAAAA-AAAAA-0',
  status: { state: 'made' },
  assembly: { code: 'AAAAA-AAAAA-0' } as HoseShown['assembly'],
  stays: [],
  inspections: [],
  labelled: false,
  overrides: [],
  photos: [],
  notes: [],
  conflicts: [],
  history: [],
  clocks: { hose_made: clock, assembled: clock, fitted: clock },
  due: [],
  ...over,
});
const cause = (code: string) => ({ ABR: 'abrasion', BEND: 'bent too tight' })[code] ?? code;

describe('what failed at a place', () => {
  it('repeats from the second time on', () => {
    expect(repeated({ times: 1, causes: [{ code: 'ABR', times: 1 }] })).toBe(false);
    expect(repeated({ times: 2, causes: [{ code: 'ABR', times: 2 }] })).toBe(true);
  });

  it('is said by cause and how often', () => {
    const failed = { times: 6, causes: ['ABR', 'BEND', 'AGE'].map((code, at) => ({ code, times: 3 - at })) };
    expect(causesText(failed, cause)).toBe('abrasion 3 times, bent too tight twice, AGE once');
  });

  it('stands in the line of its stay, with what was seen', () => {
    const ended = stay({ off: 'd/2', off_date: '2026-11-25', cause: 'ABR', note: 'worn at the clamp' });
    expect(stayLine(ended, cause)).toBe(
      'fitted 12 Nov 2024, off 25 Nov 2026\u00a0· failed: abrasion\u00a0· worn at the clamp',
    );
  });
});

describe('what is next with a hose', () => {
  it('is its replacement where it still sits, not where it sat', () => {
    const sits = stay({ on: 'd/3', on_date: '2026-01-01' });
    const sat = stay({ off: 'd/2', off_date: '2025-01-01' });
    expect(nextOf(hose({ status: { state: 'fitted' }, stays: [sat, sits] }))).toEqual({ do: 'replace', stay: sits });
  });

  it('is its replacement also where its tag was withdrawn while it sits', () => {
    const status = { state: 'withdrawn', reason: 'lost' } as const;
    expect(nextOf(hose({ status, stays: [stay()] })).do).toBe('replace');
  });

  it('is fitting it when it is made, or came off whole', () => {
    const whole = stay({ off: 'd/2', off_date: '2025-01-01' });
    expect(nextOf(hose({})).do).toBe('fit');
    expect(nextOf(hose({ status: { state: 'taken-off' }, stays: [whole] })).do).toBe('fit');
  });

  it('is never fitting it when it failed, its tag was withdrawn, or nobody knows what it is', () => {
    const failed = stay({ off: 'd/2', off_date: '2025-01-01', cause: 'ABR' });
    expect(nextOf(hose({ status: { state: 'taken-off' }, stays: [failed] })).do).toBe('again');
    expect(nextOf(hose({ status: { state: 'withdrawn', reason: 'lost' } })).do).toBe('nothing');
    expect(nextOf(hose({ assembly: null })).do).toBe('nothing');
    expect(nextOf(hose({ conflicts: ['a/1', 'b/1'] })).do).toBe('nothing');
  });
});

describe('the service of a place', () => {
  const place: Versioned<Place> = {
    version: 'd/7',
    place: 'p1',
    machine: 'm1',
    number: 14,
    name: 'Stick cylinder, rod side',
    line: 'pressure',
    service: { working_pressure_bar: 185, duties: ['antistatic'] } as unknown as Place['service'],
  };

  it('is changed in one value on the version that was seen, and the rest stands', () => {
    const { body, builds_on } = changed(place, 'relief_bar', 204);
    expect(builds_on).toEqual(['d/7']);
    expect(body).toEqual({
      kind: 'place-set',
      place: 'p1',
      machine: 'm1',
      number: 14,
      name: 'Stick cylinder, rod side',
      line: 'pressure',
      service: { working_pressure_bar: 185, duties: ['antistatic'], relief_bar: 204 },
    });
  });

  it('has one line, the place’s own until it is said otherwise', () => {
    expect(valueOf(place, 'line')).toBe('pressure');
    expect(changed(place, 'line', 'return').body).toMatchObject({ line: 'return', service: { line: 'return' } });
    expect(changed(place, 'line', null).body).toMatchObject({ line: null, service: { line: null } });
  });

  it('strikes out duties to none', () => {
    expect(changed(place, 'duties', null).body).toMatchObject({ service: { duties: [] } });
  });
});

describe('what is on record', () => {
  const written = (event: EventRef, body: Written['body']): Written => ({
    event,
    time: '2026-11-25T14:24:16.454Z',
    by: null,
    builds_on: [],
    void: false,
    body,
  });
  const fitted = (event: EventRef, date: string) =>
    written(event, { kind: 'fitted', code: 'AAAAA-AAAAA-0', place: 'p1', date, already_there: false });
  const names = { place: () => 'Excavator 3, 14', cause };

  it('says what an event says', () => {
    expect(saidBy(fitted('a/1', '2026-11-25'), names)).toBe('Fitted 25 Nov 2026: Excavator 3, 14');
  });

  it('is settled by one version that builds on all of its kind', () => {
    const both = [fitted('a/1', '2026-11-24'), fitted('b/1', '2026-11-25')];
    expect(settled(both, 'a/1')).toEqual({ body: both[0]?.body, builds_on: ['a/1', 'b/1'] });
  });

  it('is not settled by one tap where the versions are of different kinds', () => {
    const off = written('b/1', { kind: 'taken-off', code: 'AAAAA-AAAAA-0', place: 'p1', date: '2026-11-25' });
    expect(settled([fitted('a/1', '2026-11-24'), off], 'a/1')).toBeNull();
  });
});
