import { expect, it } from 'vitest';
import { dueRow } from '../due.fixture';
import type { DueLine, Hit, MachineRow, PlaceRow, SiteRow, Stay } from '../../backend/types';
import { lives, serviceAges } from './ages';
import { balloons } from './anchors';
import { bySite, nextNumber, placeLines, placeNumber, sortedHits } from './fleet';

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
const due = (code: string, day: string, verdict: DueLine['verdict'], what: DueLine['what'] = 'service'): DueLine =>
  dueRow({ code, at: at('p'), what, since: '2018-01-01', due: day, verdict });
const stay = (code: string, off: string | null = null): Stay => ({
  code,
  at: at('p'),
  hose: null,
  length_mm: null,
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
  last_off: null,
  inspected: null,
  surveyed: null,
  due: null,
});

it('puts machines under their sites, an empty site too, and those without one last', () => {
  const groups = bySite([site('north'), site('south')], [machine('a', null), machine('b', 'north')]);
  expect(groups.map((one) => [one.site?.site ?? null, one.machines.map((m) => m.machine)])).toEqual([
    ['north', ['b']],
    ['south', []],
    [null, ['a']],
  ]);
});

it('begins at the place longest past its limit, then goes by number', () => {
  const ages = serviceAges(
    [due('late', '2024-01-01', 'caution'), due('later', '2022-01-01', 'caution'), due('young', '2030-01-01', 'pass')],
    '2026-11-25',
  );
  const lines = placeLines([row(2, stay('young')), row(5, stay('late')), row(9, stay('later')), row(1)], ages);
  expect(lines.map((line) => line.row.place.number)).toEqual([9, 5, 1, 2]);
  expect(lines.map((line) => line.reason)).toEqual(['past', 'past', null, null]);
});

it('a hose of which only the day it was found is known is no young hose', () => {
  const found = { ...stay('found'), already_there: true };
  const since = (code: string, counted_from: DueLine['counted_from']) =>
    dueRow({ code, at: at('p'), since: '2026-11-01', counted_from, due: '2032-11-01', verdict: 'caution' });
  const ages = serviceAges(
    [
      since('found', 'fitted'),
      since('fitted', 'fitted'),
      since('made', 'assembled'),
      dueRow({ code: 'none', at: at('p') }),
    ],
    '2026-11-25',
  );
  const rows = [
    row(1, { ...stay('made'), already_there: true }),
    row(2, stay('fitted')),
    row(3, found),
    row(4, stay('none')),
  ];
  expect(placeLines(rows, ages).map((line) => [line.row.place.number, line.reason])).toEqual([
    [3, 'age-unknown'],
    [4, 'age-unknown'],
    [1, null],
    [2, null],
  ]);
});

it('takes no age from a hose that came off', () => {
  const ages = serviceAges([due('old', '2022-01-01', 'stop')], '2026-11-25');
  const lines = placeLines([row(4, stay('old', '2025-01-01'))], ages);
  expect(lines[0]?.age).toBeNull();
  expect(lines[0]?.reason).toBeNull();
});

it('a place whose hose failed and was not replaced comes before one that is past its limit, and a job moves no row', () => {
  const ages = serviceAges([due('late', '2024-01-01', 'caution')], '2026-11-25');
  const came = (day: string, cause: string | null) => ({ ...stay('gone', day), off: 'd/9', cause });
  const rows = [
    row(1),
    row(2, stay('late')),
    { ...row(7), last_off: came('2026-11-20', null) },
    { ...row(14), last_off: came('2026-11-24', 'ABR') },
    { ...row(15), last_off: came('2026-11-25', 'BEND') },
    row(16),
  ];
  const lines = placeLines(rows, ages, new Set(['p16']));
  expect(lines.map((line) => [line.row.place.number, line.reason])).toEqual([
    [15, 'failed'],
    [14, 'failed'],
    [7, 'came-off'],
    [2, 'past'],
    [1, null],
    [16, null],
  ]);
  expect(lines.filter((line) => line.job).map((line) => line.row.place.number)).toEqual([16]);
});

it('balloons stand by the numbers of the places, in whatever order these come', () => {
  const names = ['Stick cylinder, piston side', 'Boom cylinder, left', 'Stick cylinder, rod side', 'Stick drain'];
  const places = names.map((name, index) => ({ number: index + 1, name }));
  const stood = balloons('excavator', places);
  expect(stood.map((one) => one.number)).toEqual([1, 2, 3, 4]);
  expect(balloons('excavator', places.toReversed())).toEqual(stood);
});

it('a hose of no known age is neither past its limit nor young', () => {
  const unknown = { ...due('old', '2022-01-01', 'caution'), due: null, since: null };
  const lines = placeLines([row(3, stay('old'))], serviceAges([unknown], '2026-11-25'));
  expect(lines[0]?.reason).toBe('age-unknown');
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
    { what: 'hose', code: 'c', at: null, unsettled: false },
    { what: 'place', at: at('p'), failed: 0 },
    { what: 'machine', machine: 'm', name: 'm', site_name: null, unsettled: false },
  ];
  expect(sortedHits(hits).map((hit) => hit.what)).toEqual(['machine', 'place', 'hose', 'site']);
});

it('a stay that nobody knows the beginning of is a link of no known length', () => {
  const known = { ...stay('known', '2024-01-01'), on_date: '2023-01-01', cause: 'ABR' };
  const unknown = { ...stay('unknown', '2022-06-01'), off: 'd/3' };
  expect(lives([unknown, known], '2026-11-25', (code) => `c ${code}`, 'off')).toEqual([
    { months: null, from: '?', why: 'off', failed: false },
    { months: 12, from: '2023', why: 'c ABR', failed: true },
  ]);
});

it('a place whose hose must not run on comes before all others', () => {
  const rows = [row(1), row(2)];
  const lines = placeLines(rows, new Map(), new Set(), new Set(['p2']));
  expect(lines.map(({ row, reason }) => [row.place.number, reason])).toEqual([
    [2, 'stopped'],
    [1, null],
  ]);
});
