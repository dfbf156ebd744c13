import { expect, it } from 'vitest';
import type { Due, Hit, MachineRow, PlaceRow, SiteRow, Stay } from '../../backend/types';
import { serviceAges } from './ages';
import { bySite, firstPlace, nextNumber, pastLimit, placeLines, placeNumber, sortedHits } from './fleet';

const site = (id: string): SiteRow => ({ site: id, version: 'd/1', name: id, machines: 0, hoses: 0 });
const machine = (id: string, at: string | null): MachineRow => ({
  machine: id,
  version: 'd/1',
  name: id,
  sort: 'loader',
  site: at,
  site_name: at,
  places: 0,
  hoses: 0,
});
const at = (place: string, on = 'm') => ({
  place,
  number: 1,
  place_name: null,
  machine: on,
  machine_name: null,
  site: null,
  site_name: null,
});
const due = (code: string, day: string, verdict: Due['verdict'], what: Due['what'] = 'service'): Due => ({
  code,
  at: at('p'),
  what,
  since: '2018-01-01',
  counted_from: 'assembled',
  years: 6,
  limit: 'guide',
  due: day,
  verdict,
});
const stay = (code: string, off: string | null = null): Stay => ({
  code,
  at: at('p'),
  assembled: null,
  on: null,
  on_date: null,
  already_there: false,
  on_hours: null,
  off: null,
  off_date: off,
  off_hours: null,
  cause: null,
  note: null,
});
const row = (number: number, ...hoses: Stay[]): PlaceRow => ({
  place: {
    place: `p${number}`,
    machine: 'm',
    number,
    name: `n${number}`,
    service: { duties: [] },
    version: 'd/1',
  } as unknown as PlaceRow['place'],
  hoses,
});

it('puts machines under their sites, an empty site too, and those without one last', () => {
  const groups = bySite([site('north'), site('south')], [machine('a', null), machine('b', 'north')]);
  expect(groups.map((one) => [one.site?.site ?? null, one.machines.map((m) => m.machine)])).toEqual([
    ['north', ['b']],
    ['south', []],
    [null, ['a']],
  ]);
});

it('counts hoses past their limit of service, and no inspection', () => {
  const list = [
    due('a', '2024-01-01', 'caution'),
    due('b', '2024-01-01', 'stop'),
    due('c', '2030-01-01', 'pass'),
    due('a', '2020-01-01', 'caution', 'inspection'),
  ];
  expect(pastLimit(list).get('m')).toBe(2);
});

it('begins at the place longest past its limit, then goes by number', () => {
  const ages = serviceAges(
    [due('late', '2024-01-01', 'caution'), due('later', '2022-01-01', 'caution'), due('young', '2030-01-01', 'pass')],
    '2026-11-25',
  );
  const lines = placeLines([row(2, stay('young')), row(5, stay('late')), row(9, stay('later')), row(1)], ages);
  expect(lines.map((line) => line.row.place.number)).toEqual([9, 5, 1, 2]);
  expect(firstPlace(lines)?.past).toBe(true);
});

it('takes no age from a hose that came off', () => {
  const ages = serviceAges([due('old', '2022-01-01', 'stop')], '2026-11-25');
  const lines = placeLines([row(4, stay('old', '2025-01-01'))], ages);
  expect(lines[0]?.age).toBeNull();
  expect(firstPlace(lines)?.past).toBe(false);
});

it('has no first place where there is none', () => {
  expect(firstPlace([])).toBeNull();
});

it('names the next free number and takes whole numbers only', () => {
  expect(nextNumber([])).toBe(1);
  expect(nextNumber([row(3), row(12)])).toBe(13);
  expect(['14', ' 7 ', '0', '1.5', '-2', 'x', '', '1000'].map(placeNumber)).toEqual([
    14,
    7,
    null,
    null,
    null,
    null,
    null,
    null,
  ]);
});

it('shows a machine before its places and hoses', () => {
  const hits: Hit[] = [
    { what: 'site', site: 's', name: 's' },
    { what: 'hose', code: 'c', at: null },
    { what: 'place', at: at('p') },
    { what: 'machine', machine: 'm', name: 'm', site_name: null },
  ];
  expect(sortedHits(hits).map((hit) => hit.what)).toEqual(['machine', 'place', 'hose', 'site']);
});
