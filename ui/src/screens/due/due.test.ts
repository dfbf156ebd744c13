import { expect, it } from 'vitest';
import { dueRow, guide } from '../due.fixture';
import { groups, worstSite } from './due';
import { countsText, guideSources, hoursWhyNot, riskText, ruleText } from './why';

const ON = '2026-11-25';
const due = (code: string, day: string | null) => dueRow({ code, since: day, due: day });

it('a hose of no known age stands by itself, never among the young', () => {
  const found = groups([due('a', null), due('b', ON), due('c', '2026-12-01'), due('d', '2030-01-01')], ON);
  expect([found.unknown, found.past, found.within[30]].map((group) => group.map((one) => one.code))).toEqual([
    ['a'],
    ['b'],
    ['c'],
  ]);
});

it('what must not run on stands by itself before all else, whatever its day', () => {
  const stop = dueRow({ ...due('s', '2026-11-20'), verdict: 'stop' });
  const found = groups([stop, due('b', '2020-01-01')], ON);
  expect([found.stopped, found.past].map((group) => group.map((one) => one.code))).toEqual([['s'], ['b']]);
});

it('what falls due stands in the month, the quarter or the year that it falls due in, once', () => {
  const days = ['2026-12-25', '2026-12-26', '2027-02-23', '2027-02-24', '2027-11-25', '2027-11-26'];
  const { within } = groups(
    days.map((day) => due(day, day)),
    ON,
  );
  expect(Object.values(within).map((group) => group.map((one) => one.code))).toEqual([
    ['2026-12-25'],
    ['2026-12-26', '2027-02-23'],
    ['2027-02-24', '2027-11-25'],
  ]);
});

it('the site with most stopped is planned first, then with most past; with nothing past, or at no site, there is none', () => {
  const sites = [
    { site: null, name: null, past: 9, stopped: 9 },
    { site: 's1', name: 'Yard', past: 1, stopped: 0 },
    { site: 's2', name: 'Quarry', past: 2, stopped: 0 },
  ];
  expect(worstSite(sites)).toEqual({ site: 's2', name: 'Quarry', past: 2, stopped: 0 });
  expect(worstSite([...sites, { site: 's3', name: 'Pit', past: 1, stopped: 1 }])?.name).toBe('Pit');
  expect(worstSite([])).toBeNull();
  expect(worstSite([{ site: 's1', name: 'Yard', past: 0, stopped: 0 }])).toBeNull();
});

it('a row says which clock counts, and by whose limit', () => {
  const year = dueRow({ since: '2019-11-25', due: '2025-11-25' });
  expect([countsText(year, ON), ruleText(year)]).toEqual(['7 y from assembly', 'guide 6 y']);

  const rule = { ...guide, whose: 'yours' as const, stop: true };
  const hours = { limit: 8000, run: 8200, read_on: ON, per_day: 5.2, due: ON, why_not: null, rule };
  const run = dueRow({ by: 'hours', hours, rule });
  expect(countsText(run, ON)).toBe('8200 h of 8000 h since fitting, at 5.2 h a day of its own');
  expect(ruleText(run)).toBe('crossed: stop');
  expect(ruleText(dueRow({ rule }))).toBe('yours 6 y, a stop');

  const seen = { sign: 'CRACK-FINE', name: 'fine cracks', grade: 'caution' as const, seen_on: '2026-11-03' };
  const found = dueRow({ what: 'finding', by: 'finding', seen, years: null, rule: null });
  expect([countsText(found, ON), ruleText(found)]).toEqual(['fine cracks, seen 3 Nov 2026', null]);
});

it('what the guides rest on is told once for all rows, and never for a rule of the owner’s', () => {
  const rule = { ...guide, whose: 'yours' as const, source: 'owner' };
  expect(guideSources([dueRow({}), dueRow({}), dueRow({ rule })])).toEqual(['DIN 20066']);
});

it('hours that can not count are never left out in silence', () => {
  const hours = {
    limit: 8000,
    run: null,
    read_on: null,
    per_day: null,
    due: null,
    why_not: 'no-reading' as const,
    rule: guide,
  };
  expect(hoursWhyNot(dueRow({ hours }))).toBe('hours do not count: none read yet');
  expect(hoursWhyNot(dueRow({}))).toBeNull();
});

it('risk says the chance, what a failure does and why', () => {
  const risk = {
    chance: 0.123,
    from: 'life' as const,
    consequence: 5,
    why: ['someone-beside' as const],
    product: 0.615,
  };
  expect(riskText(dueRow({ risk }))).toEqual({
    figure: '12 % × 5',
    consequence: 'consequence 5 of 5: someone beside it',
  });
  expect(riskText(dueRow({ risk: { ...risk, from: 'age' } }))?.figure, 'no chance').toBe('12 % used × 5');
  expect(riskText(dueRow({}))).toBeNull();
});
