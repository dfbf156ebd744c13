import { expect, it } from 'vitest';
import { answered, firstOpen, nothingRead, readings, surveyed, tally, type Looked, type Stop } from './walk';

const ON = '2026-11-26';
const stop = (place: string, code: string | null = null, last: Partial<Stop['last']> | null = null) =>
  ({ place, code, last }) as Stop;
const looked = (over: Partial<Looked>): Looked => ({
  stop: stop('p', 'c'),
  date: ON,
  found: 'not-opened',
  findings: [],
  read: nothingRead(),
  words: '',
  ...over,
});

it('what was read in place goes in as find takes it, and nothing read is none', () => {
  expect(readings(nothingRead())).toBeNull();
  expect(readings({ print: ' EN 853 2S. ', cover_od_mm: 26, hex_a_mm: null, hex_b_mm: 27 })).toEqual({
    hose: { print: 'EN 853 2S.', cover_od_mm: 26 },
    ends: [{ role: 'B', swivel_hex_mm: 27 }],
    mates: [],
    reach: 'in-place',
  });
  expect(readings({ ...nothingRead(), hex_a_mm: 32 })).toMatchObject({ ends: [{ role: 'A', swivel_hex_mm: 32 }] });
});

it('a hose on record is looked over and inspected in one, all or none', () => {
  const findings = [{ sign: 'ABR', grade: 'caution' as const }];
  expect(surveyed(looked({ findings })).map(({ body }) => body)).toMatchObject([
    { kind: 'surveyed', place: 'p', state: 'not-opened', code: 'c' },
    { kind: 'inspected', code: 'c', date: ON, findings },
  ]);
});

it('nothing is said of a hose that nobody saw', () => {
  for (const found of ['not-reached', 'no-hose'] as const) {
    const events = surveyed(looked({ found, read: { ...nothingRead(), print: 'x' } }));
    expect(events.map(({ body }) => body)).toEqual([{ kind: 'surveyed', place: 'p', date: ON, state: found }]);
    expect(events).toHaveLength(1);
  }
});

it('goes on when there is an answer: of a hose on record, what was seen on it', () => {
  expect(answered({ code: 'c' }, null, null)).toBe(false);
  expect(answered({ code: 'c' }, 'not-opened', null)).toBe(false);
  expect(answered({ code: 'c' }, 'not-opened', [])).toBe(true);
  expect(answered({ code: null }, 'not-opened', null)).toBe(true);
  expect(answered({ code: 'c' }, 'not-reached', null)).toBe(true);
});

it('goes on where it was left that day, and counts what was found', () => {
  const stops = [
    stop('1', 'c', { date: ON, state: 'not-opened' }),
    stop('2', null, { date: ON, state: 'not-reached' }),
    stop('3', null, { date: '2025-01-01', state: 'no-hose' }),
    stop('4'),
  ];
  expect(firstOpen(stops, ON)).toBe(2);
  expect(tally(stops, ON)).toEqual({ 'not-opened': 1, 'not-reached': 1, 'no-hose': 0, left: 2 });
  expect(firstOpen(stops.slice(0, 2), ON)).toBe(0);
});
