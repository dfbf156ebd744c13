// How the ports of a hose stand, as the job keeps it and as the routing is asked.
import type { Given } from '../../backend';
import type { Facing, FieldQuestion } from '../../backend/types';
import type { Quantity } from '../../components/keypad.svelte';
import type { JobDoc, Routing, Stand } from '../../state/job-doc';
import type { WordId } from '../../words/ids';
import { poseOf } from '../parts/place-ports';

export const facings = ['u', 'facing', 'offset', 'right-angle', 'away', 'free'] as const satisfies readonly Facing[];
export type PoseName = 'closed' | 'open';
export type StandField = keyof Stand;
/** A number of the sheet: of a pose, of an end, of the hose. */
export type RouteField = `${PoseName}.${StandField}` | 'A.rigid_mm' | 'B.rigid_mm' | 'hose_od_mm';

interface About {
  label: WordId;
  how: WordId;
  quantity: Quantity;
  unit?: string;
  /** What stands for plus and minus; without them the number has one way only. */
  ways?: readonly [plus: WordId, minus: WordId];
}

const STAND: Record<StandField, About> = {
  gap_mm: {
    label: 'routing-gap',
    how: 'routing-gap-how',
    quantity: 'length',
    ways: ['routing-right', 'routing-left'],
  },
  rise_mm: {
    label: 'routing-rise',
    how: 'routing-rise-how',
    quantity: 'length',
    ways: ['routing-above', 'routing-below'],
  },
  offset_mm: {
    label: 'routing-offset',
    how: 'routing-offset-how',
    quantity: 'length',
    ways: ['routing-near', 'routing-far'],
  },
  angle_deg: {
    label: 'routing-angle',
    how: 'routing-angle-how',
    quantity: 'plain',
    unit: '°',
    ways: ['routing-left-round', 'routing-right-round'],
  },
  roll_deg: {
    label: 'routing-roll',
    how: 'routing-roll-how',
    quantity: 'plain',
    unit: '°',
    ways: ['routing-right-round', 'routing-left-round'],
  },
  a_looks_deg: { label: 'routing-a-looks', how: 'routing-looks-how', quantity: 'plain', unit: '°' },
  b_looks_deg: { label: 'routing-b-looks', how: 'routing-looks-how', quantity: 'plain', unit: '°' },
};
const RIGID: About = { label: 'routing-rigid', how: 'routing-rigid-how', quantity: 'length' };
const DIAMETER: About = { label: 'routing-od', how: 'routing-od-how', quantity: 'length' };

/** Quarter turns of the way a port looks. */
export const LOOKS: readonly (readonly [degrees: number, word: WordId])[] = [
  [0, 'routing-looks-right'],
  [90, 'routing-looks-up'],
  [180, 'routing-looks-left'],
  [270, 'routing-looks-down'],
];

function parts(field: RouteField): [PoseName, StandField] | null {
  const [pose, name] = field.split('.');
  return pose === 'closed' || pose === 'open' ? [pose, name as StandField] : null;
}

export const standFieldOf = (field: RouteField): StandField | null => parts(field)?.[1] ?? null;

export function aboutRoute(field: RouteField): About {
  const name = standFieldOf(field);
  if (name) return STAND[name];
  return field === 'hose_od_mm' ? DIAMETER : RIGID;
}

export function isRouteField(name: string): name is RouteField {
  const [of, what = ''] = name.split('.');
  return (
    name === 'hose_od_mm' ||
    ((of === 'closed' || of === 'open') && what in STAND) ||
    ((of === 'A' || of === 'B') && what === 'rigid_mm')
  );
}

export function routeNumber(routing: Routing, field: RouteField): number | null {
  const of = parts(field);
  if (of) return routing[of[0]]?.[of[1]] ?? null;
  return field === 'hose_od_mm' ? routing.hose_od_mm : routing.ends[field === 'A.rigid_mm' ? 'A' : 'B'].rigid_mm;
}

export function putRouteNumber(routing: Routing, field: RouteField, value: number | null): void {
  const of = parts(field);
  const stand = of && routing[of[0]];
  if (of && stand) stand[of[1]] = value;
  else if (field === 'hose_od_mm') routing.hose_od_mm = value;
  else if (!of) routing.ends[field === 'A.rigid_mm' ? 'A' : 'B'].rigid_mm = value;
}

/** What can be said of a pose: first what nothing can be drawn without. */
export function standFields(facing: Facing): { needed: StandField[]; more: StandField[] } {
  switch (facing) {
    case 'free':
      return { needed: ['gap_mm', 'rise_mm', 'a_looks_deg', 'b_looks_deg'], more: ['offset_mm', 'roll_deg'] };
    case 'right-angle':
    case 'offset':
      return { needed: ['gap_mm', 'rise_mm'], more: ['offset_mm', 'angle_deg', 'roll_deg'] };
    default:
      return { needed: ['gap_mm'], more: ['rise_mm', 'offset_mm', 'angle_deg', 'roll_deg'] };
  }
}

/** What is asked next of the ports; null where all is said. */
export type Wanted = { field: RouteField } | 'facing' | 'travel' | 'open' | null;

export function wanted(routing: Routing): Wanted {
  const { facing, closed, open, fixed } = routing;
  if (!facing) return 'facing';
  const { needed, more } = standFields(facing);
  const missing = needed.find((name) => closed[name] === null);
  if (missing) return { field: `closed.${missing}` };
  if (!open) return fixed ? null : 'travel';
  const lacking = needed.find((name) => open[name] === null);
  if (lacking) return { field: `open.${lacking}` };
  return [...needed, ...more].every((name) => open[name] === closed[name]) ? 'open' : null;
}

/** The question of the routing; null while something is missing without which nothing can be drawn. */
export function asked(doc: Pick<JobDoc, 'spec' | 'route'>): Given<FieldQuestion> | null {
  const { facing, closed, open, fixed, ends, hose_od_mm } = doc.route;
  const want = wanted(doc.route);
  if (!facing || want === 'facing' || (want !== null && typeof want === 'object')) return null;
  const moves = open !== null && want !== 'open';
  return {
    spec: doc.spec,
    facing,
    closed: poseOf(facing, closed),
    ...(moves && { open: poseOf(facing, open) }),
    fixed,
    shape_only: false,
    a: ends.A,
    b: ends.B,
    hose_od_mm,
  };
}
