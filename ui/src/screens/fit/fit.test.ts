import { render, screen } from '@testing-library/svelte';
import { describe, expect, it, vi } from 'vitest';
import type { BuildSheet, Finding, OilLine, Place, Ports, Service, TorqueValue, Versioned } from '../../backend/types';
import { emptyJob, NOT_FAILED, noOil, noRouting, noStand, type JobDoc } from '../../state/job-doc';
import { begunWith, oilLineOf, portsOf } from '../parts/place-ports';
import { placeAt } from '../place.fixture';
import { fitEvents, type Change } from './finish';
import Torque from './Torque.svelte';
import { BY_FEEL, BY_MAKER, figureOf, keyOf, tablesOf, tightenedBy, unsaid, withoutFigure } from './tighten';

const change = (over: Partial<Change> = {}): Change => ({
  on: 'NEW',
  off: 'OLD',
  at: placeAt,
  fit: { ...emptyJob().fit, hours: 6812, cause: 'ABR', note: ' cover worn ' },
  place: null,
  allTheSame: [],
  said: { route: noRouting(), oil: noOil() },
  today: '2026-11-25',
  ...over,
});

describe('what stands on the record', () => {
  it('is the old hose off, the new one on and the hours, in that order', () => {
    const { events, fitted } = fitEvents(change());
    expect(events.map((event) => event.body)).toEqual([
      { kind: 'taken-off', code: 'OLD', place: 'p', date: '2026-11-25', hours: 6812, cause: 'ABR', note: 'cover worn' },
      { kind: 'fitted', code: 'NEW', place: 'p', date: '2026-11-25', already_there: false, hours: 6812 },
      { kind: 'hours-read', machine: 'm', hours: 6812, date: '2026-11-25' },
    ]);
    expect(fitted).toBe(1);
  });

  it('is said with the hose where it goes on though another one belongs there', () => {
    const finding = { rule: 'belongs', verdict: 'stop', case: 'belongs-bore', why: 'It is thin.' } as Finding;
    const { events } = fitEvents(change({ off: null, allTheSame: [finding] }));
    expect(events.at(-1)?.body).toMatchObject({ kind: 'noted', about: { hose: 'NEW' } });
    expect(events.at(-1)?.body).toHaveProperty('text', expect.stringContaining('It is thin.'));
  });

  it('names no cause where the old hose had not failed', () => {
    const { events } = fitEvents(change({ fit: { ...emptyJob().fit, cause: NOT_FAILED } }));
    expect(events[0]?.body).not.toHaveProperty('cause');
    expect(events).toHaveLength(2);
  });

  it('takes nothing off an empty place, and keeps the day that was said', () => {
    const { events, fitted } = fitEvents(change({ off: null, fit: { ...emptyJob().fit, date: '2026-11-20' } }));
    expect(events.map((event) => event.body)).toEqual([
      { kind: 'fitted', code: 'NEW', place: 'p', date: '2026-11-20', already_there: false },
    ]);
    expect(fitted).toBe(0);
  });
});

describe('what the place keeps for the next job', () => {
  const place: Versioned<Place> = {
    version: 'd/7',
    place: 'p',
    machine: 'm',
    number: 14,
    name: 'Stick cylinder',
    line: null,
    circuit: null,
    spec: null,
    service: { duties: [] } as unknown as Service,
  };
  const stand = { ...noStand(), gap_mm: 300, rise_mm: 40, a_looks_deg: 90, b_looks_deg: 225.5, offset_mm: 0 };
  const end = { points: 'front' as const, rigid_mm: 62 };
  const route = {
    ...noRouting(),
    facing: 'free' as const,
    closed: stand,
    open: { ...stand, gap_mm: 420 },
    ends: { A: end, B: { ...end, rigid_mm: null } },
  };
  const oil = { ...noOil(), iso_vg: 46, elbows_90: 2 };

  it('is how the ports stand and the oil, as they were said, and the next job begins with them', () => {
    const { events } = fitEvents(change({ place, said: { route, oil } }));
    const kept = events.at(-1);
    expect(kept).toMatchObject({ body: { kind: 'place-set', number: 14, name: 'Stick cylinder' }, builds_on: ['d/7'] });
    // As it comes back from the record: text and back.
    const next = begunWith(JSON.parse(JSON.stringify(kept?.body)) as Place);
    expect(next).toEqual({ route: { ...route, earlier: true }, oil });
    expect(begunWith({ ...place, ports: portsOf(route) as Ports, oil: oilLineOf(oil) as OilLine })).toEqual(next);
  });

  it('is not written where nothing was said, or the place says so already', () => {
    const same = { ...place, ports: portsOf(route) as Ports, oil: oilLineOf(oil) as OilLine };
    expect(fitEvents(change({ place })).events).toHaveLength(3);
    expect(fitEvents(change({ place: same, said: { route, oil } })).events).toHaveLength(3);
  });
});

describe('the step of tightening', () => {
  it('shows no figure before one is taken, then that of each end, large; of no end it is silent', () => {
    const steel: TorqueValue = {
      method: 'torque',
      min: 81,
      max: 89,
      unit: 'Nm',
      condition: 'steel, dry',
      source: 'a manual',
      basis: 'published',
      note: '',
    };
    const tighten = [
      { role: 'A' as const, values: [steel] },
      { role: 'B' as const, values: [] },
    ];
    const onchoose = vi.fn();
    const view = render(Torque, { tighten, doc: emptyJob(), onchoose });
    expect(screen.getByRole('button', { name: /End A \?/ })).toBeTruthy();
    view.unmount();
    render(Torque, { tighten, doc: { ...emptyJob(), tighten: { A: keyOf(steel) } }, onchoose });
    expect(screen.getByRole('button', { name: /End A 81 to 89.Nm steel, dry a manual · published/ })).toBeTruthy();
    expect(screen.getByRole('button', { name: /End B \? no figure in the tables/ })).toBeTruthy();

    const sheet = { tighten } as unknown as BuildSheet;
    const took = (said: JobDoc['tighten']) => ({ ...emptyJob(), tighten: said });
    expect(tightenedBy(sheet, took({ A: keyOf(steel) }))).toBe('A: 81 to 89\u00a0Nm · B: no figure · not measured');
    expect(unsaid(sheet, took({ A: keyOf(steel) }))).toEqual(['B']);
    expect(tightenedBy(sheet, took({ A: keyOf(steel), B: BY_MAKER }))).toBe(
      'A: 81 to 89\u00a0Nm · B: maker’s figure · not measured',
    );
    expect(unsaid(sheet, took({ A: keyOf(steel), B: BY_MAKER }))).toEqual([]);
    const felt = took({ A: keyOf(steel), B: BY_FEEL });
    expect([unsaid(sheet, felt), withoutFigure(sheet, felt)], 'said, and still without a figure').toEqual([[], ['B']]);
    expect(tightenedBy(sheet, felt)).toBe('A: 81 to 89\u00a0Nm · B: no figure · not measured');
    expect(unsaid(sheet, took({ A: 'a figure that the tables have no more' })), 'a figure that is gone').toContain('A');
  });
});

it('figures of an end stand under their tables', () => {
  const value = (min: number, source: string) => ({ min, max: min, source, basis: 'published' }) as TorqueValue;
  const [newer, flats, older] = [value(81, 'a manual'), value(1.5, 'a manual'), value(62, 'an older manual')];
  const tables = tablesOf({ role: 'A', values: [newer, older, flats] });
  expect(tables.map(({ values }) => values)).toEqual([[newer, flats], [older]]);
  expect(tables.map(({ from }) => from)).toEqual(['a manual · published', 'an older manual · published']);
});

describe('how tight', () => {
  const value = (over: Partial<TorqueValue>): TorqueValue => ({
    method: 'torque',
    min: 81,
    max: 89,
    unit: 'Nm',
    condition: 'steel',
    source: 'a manual',
    basis: 'published',
    note: '',
    ...over,
  });
  it.each([
    [{}, '81 to 89\u00a0Nm'],
    [{ min: 62, max: 62 }, '62\u00a0Nm'],
    [{ min: null, max: 76 }, '76\u00a0Nm'],
    [{ method: 'flats-from-finger-tight', min: 0.5, max: 0.8, unit: 'flats of 60 deg' }, '0.5 to 0.8 flats'],
    [{ method: 'flats-from-finger-tight', min: 1, max: 1, unit: 'flats of 60 deg' }, '1 flat'],
    [{ method: 'angle', min: 30, max: 40, unit: 'deg' }, '30 to 40°'],
  ] as [Partial<TorqueValue>, string][])('is written as the method has it: %o', (over, text) => {
    expect(figureOf(value(over))).toBe(text);
  });
});
