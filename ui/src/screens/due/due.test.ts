import { expect, it } from 'vitest';
import type { Due, PolicySet } from '../../backend/types';
import { firstOf, groups, policyOf, worstSite } from './due';

const ON = '2026-11-25';

function due(code: string, day: string | null, site = 's1', what: Due['what'] = 'service'): Due {
  const at = { place: code, number: 1, place_name: 'Lift', machine: 'm', machine_name: 'M', site, site_name: site };
  return {
    code,
    at,
    what,
    since: day,
    counted_from: day ? 'assembled' : 'unknown',
    years: 6,
    limit: 'guide',
    due: day,
    verdict: 'caution',
  };
}

it('a hose of no known age stands by itself, never among the young', () => {
  const found = groups(
    [due('a', null), due('b', ON), due('c', '2026-12-01'), due('d', '2030-01-01')],
    ON,
    'service',
    null,
  );
  expect([found.unknown, found.past, found.within[30]].map((group) => group.map((one) => one.code))).toEqual([
    ['a'],
    ['b'],
    ['c'],
  ]);
});

it('what falls due stands in the month, the quarter or the year that it falls due in, once', () => {
  const days = ['2026-12-25', '2026-12-26', '2027-02-23', '2027-02-24', '2027-11-25', '2027-11-26'];
  const { within } = groups(
    days.map((day) => due(day, day)),
    ON,
    'service',
    null,
  );
  expect(Object.values(within).map((group) => group.map((one) => one.code))).toEqual([
    ['2026-12-25'],
    ['2026-12-26', '2027-02-23'],
    ['2027-02-24', '2027-11-25'],
  ]);
});

it('the first is the one longest past, else the next to come, else one that nobody can date', () => {
  const first = (...list: Due[]) => firstOf(groups(list, ON, 'service', null))?.code;
  expect(first(due('a', null), due('b', '2027-02-01'), due('c', '2026-12-01'))).toBe('c');
  expect(first(due('a', null), due('b', '2020-01-01'), due('c', '2026-12-01'))).toBe('b');
  expect(first(due('a', null))).toBe('a');
});

it('a site shows its own, inspections are apart', () => {
  const list = [due('a', '2020-01-01', 's1'), due('b', '2020-01-01', 's2'), due('c', '2020-01-01', 's2', 'inspection')];
  expect(groups(list, ON, 'service', 's2').past.map((one) => one.code)).toEqual(['b']);
  expect(groups(list, ON, 'inspection', null).past.map((one) => one.code)).toEqual(['c']);
});

it('the site with most past is planned first; with nothing past there is none', () => {
  const past = [due('a', '2020-01-01', 's1'), due('b', '2020-01-01', 's2'), due('c', '2020-01-01', 's2')];
  expect(worstSite(past)).toEqual({ site: 's2', name: 's2', past: 2 });
  expect(worstSite([])).toBeNull();
});

it('finds the policy of one scope alone', () => {
  const fleet: PolicySet = { scope: 'fleet', service_years: 5, storage_years: 2, inspection_years: null, stop: true };
  const site: PolicySet = { ...fleet, scope: { site: 's1' }, inspection_years: 0.5 };
  expect(policyOf([fleet, site], { site: 's1' })).toBe(site);
  expect(policyOf([fleet, site], 'fleet')).toBe(fleet);
  expect(policyOf([fleet, site], { site: 's2' })).toBeNull();
});
