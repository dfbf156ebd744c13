import { describe, expect, it } from 'vitest';
import { fake } from '../../backend/fake';
import type { FieldQuestion } from '../../backend/types';
import { emptyJob, noRouting, noStand, type Routing } from '../../state/job-doc';
import { Routed } from './asking.svelte';
import { asked, isRouteField, putRouteNumber, routeNumber, wanted } from './ports';
import { course } from './stage';
import { routeLabel, routeWritten } from './words';

const routing = (over: Partial<Routing>): Routing => ({ ...noRouting(), ...over });
const stand = (over: Partial<ReturnType<typeof noStand>>) => ({ ...noStand(), ...over });
const units = { pressure: 'bar', length: 'mm' } as const;

describe('what is asked of the ports', () => {
  it.each([
    [routing({}), 'facing'],
    [routing({ facing: 'u' }), { field: 'closed.gap_mm' }],
    [routing({ facing: 'offset', closed: stand({ gap_mm: 300 }) }), { field: 'closed.rise_mm' }],
    [routing({ facing: 'free', closed: stand({ gap_mm: 1, rise_mm: 2 }) }), { field: 'closed.a_looks_deg' }],
    [routing({ facing: 'u', closed: stand({ gap_mm: 300 }) }), 'travel'],
    [routing({ facing: 'u', closed: stand({ gap_mm: 300 }), fixed: true }), null],
    [routing({ facing: 'u', closed: stand({ gap_mm: 300 }), open: stand({ gap_mm: 300 }) }), 'open'],
    [routing({ facing: 'u', closed: stand({ gap_mm: 300 }), open: stand({ gap_mm: 300, rise_mm: 9 }) }), null],
  ])('one thing after the other, %#', (route, want) => expect(wanted(route)).toEqual(want));

  it('nothing is routed while a figure is missing without which nothing can be drawn', () => {
    const of = (route: Routing) => asked({ ...emptyJob(), route });
    expect(of(routing({ facing: 'right-angle', closed: stand({ gap_mm: 300 }) }))).toBeNull();
    const said = of(routing({ facing: 'u', closed: stand({ gap_mm: 300 }) }));
    expect(said).toMatchObject({ facing: 'u', closed: { gap_mm: 300 } });
    // Whether a port moves is not known, and that is what is said.
    expect([said?.open, said?.fixed]).toEqual([undefined, false]);
  });

  it('ports that face any other way go as places and directions', () => {
    const closed = stand({ gap_mm: 300, rise_mm: -50, offset_mm: 20, a_looks_deg: 90, b_looks_deg: 180 });
    const said = asked({ ...emptyJob(), route: routing({ facing: 'free', closed, fixed: true }) });
    expect(said?.closed.gap_mm).toBeUndefined();
    expect(said?.closed.b?.position_mm).toEqual([300, -50, 20]);
    expect(said?.closed.a?.direction[1]).toBeCloseTo(1, 9);
    expect(said?.closed.b?.direction[0]).toBeCloseTo(-1, 9);
  });

  it('every number has its place, its name and its way', () => {
    const route = routing({ facing: 'u', open: noStand() });
    for (const field of ['closed.gap_mm', 'open.roll_deg', 'A.rigid_mm', 'hose_od_mm'] as const) {
      expect(isRouteField(field)).toBe(true);
      putRouteNumber(route, field, -12);
      expect(routeNumber(route, field)).toBe(-12);
      expect(routeLabel(field, true)).not.toMatch(/routing-/);
    }
    expect(isRouteField('closed.colour')).toBe(false);
    putRouteNumber(route, 'closed.rise_mm', -40);
    expect(routeWritten(route, 'closed.rise_mm', units)).toBe('40\u00a0mm lower');
    expect(routeWritten(route, 'closed.offset_mm', units)).toBeNull();
  });
});

it('an elbow is drawn round its corner, from the ferrule to the sealing face', () => {
  const bent = course([
    [0, 0, 0],
    [0, 40, 0],
    [80, 40, 0],
  ]);
  expect(bent[0]).toEqual([80, 40, 0]);
  expect(bent.at(-1)).toEqual([0, 0, 0]);
  expect(bent.some(([x, y]) => Math.hypot(x, y - 40) < 5)).toBe(false);
});

describe('asking', () => {
  const question = (gap_mm: number) => ({ facing: 'u', closed: { gap_mm } }) as FieldQuestion;
  function slow() {
    const calls: [gap: number | null | undefined, shape: boolean][] = [];
    const backend = fake({
      'route.field': (input) => {
        const given = input as FieldQuestion;
        calls.push([given.closed.gap_mm, given.shape_only ?? false]);
        return { verdict: 'pass', worst_pose: given.closed.gap_mm ?? 0 };
      },
    });
    return { calls, routed: new Routed(backend, () => Promise.resolve()) };
  }

  it('shows the shape first, then the whole', async () => {
    const { calls, routed } = slow();
    await routed.ask(question(300));
    expect(calls).toEqual([
      [300, true],
      [300, false],
    ]);
    expect(routed.state).toBe('whole');
  });

  it('an end that is dragged on is asked for where it is, and the whole once it rests', async () => {
    const { calls, routed } = slow();
    const done = routed.ask(question(300));
    void routed.ask(question(305));
    void routed.ask(question(310));
    expect(routed.state).toBe('old');
    await done;
    expect(calls).toEqual([
      [300, true],
      [310, true],
      [310, false],
    ]);
    expect(routed.answer?.worst_pose).toBe(310);
  });

  it('what was taken back shows nothing', async () => {
    const { routed } = slow();
    const done = routed.ask(question(300));
    void routed.ask(null);
    await done;
    expect(routed.answer).toBeNull();
  });
});
