// What was said of the ports and the oil in a job, as its place keeps it, and back into the next job there.
import type { Given } from '../../backend';
import type { DrawnPort, Facing, FieldPose, OilLine, Place, Ports } from '../../backend/types';
import { noOil, noRouting, noStand, type Oil, type Routing, type Stand } from '../../state/job-doc';

/** What a place keeps of the ports; null while nobody said how they face. */
export function portsOf({ facing, closed, open, fixed, ends }: Routing): Given<Ports> | null {
  if (!facing) return null;
  return { facing, closed: poseOf(facing, closed), open: open && poseOf(facing, open), fixed, a: ends.A, b: ends.B };
}

/** The ports as the next job begins with them. The diameter is that of a hose, not of its place. */
export function routingOf({ closed, open, a, b, ...said }: Given<Ports>): Routing {
  const empty = noRouting();
  const end = (one: Given<Ports>['a']) => ({ points: one?.points ?? 'towards', rigid_mm: millimetres(one?.rigid_mm) });
  return {
    ...empty,
    facing: said.facing,
    fixed: said.fixed ?? false,
    closed: standOf(closed),
    open: open ? standOf(open) : null,
    ends: { A: end(a), B: end(b) },
    earlier: true,
  };
}

/** What a place keeps of its oil; null while nothing was said. */
export function oilLineOf(oil: Oil): Given<OilLine> | null {
  return Object.values(oil).some((value) => value !== null) ? { ...oil } : null;
}

/** What a new job at a place begins with. */
export function begunWith(place: Given<Place> | null): { route: Routing; oil: Oil } {
  const known = Object.entries(place?.oil ?? {}).filter(([, value]) => value !== null && value !== undefined);
  return {
    route: place?.ports ? routingOf(place.ports) : noRouting(),
    oil: { ...noOil(), ...(Object.fromEntries(known) as Partial<Oil>) },
  };
}

/** A pose as a question of the routing takes it. */
export function poseOf(facing: Facing, stand: Stand): Given<FieldPose> {
  const { gap_mm, rise_mm, offset_mm, angle_deg, roll_deg, a_looks_deg, b_looks_deg } = stand;
  if (facing !== 'free') return { gap_mm, rise_mm, offset_mm, angle_deg, roll_deg };
  return {
    roll_deg,
    a: { position_mm: [0, 0, 0], direction: looking(a_looks_deg ?? 0) },
    b: { position_mm: [gap_mm ?? 0, rise_mm ?? 0, offset_mm ?? 0], direction: looking(b_looks_deg ?? 0) },
  };
}

function standOf({ a, b, ...pose }: Given<FieldPose>): Stand {
  const [gap, rise, offset] = b?.position_mm ?? [pose.gap_mm, pose.rise_mm, pose.offset_mm];
  return {
    ...noStand(),
    gap_mm: millimetres(gap),
    rise_mm: millimetres(rise),
    offset_mm: millimetres(offset),
    angle_deg: pose.angle_deg ?? null,
    roll_deg: pose.roll_deg ?? null,
    a_looks_deg: a ? degrees(a.direction) : null,
    b_looks_deg: b ? degrees(b.direction) : null,
  };
}

/** What stands on the record is a number; only what a person types is writing. */
const millimetres = (value: unknown): number | null => (typeof value === 'number' ? value : null);

function looking(angle: number): [number, number, number] {
  const turn = (angle * Math.PI) / 180;
  return [Math.cos(turn), Math.sin(turn), 0];
}

function degrees([x, y]: DrawnPort['direction']): number {
  const angle = Math.round((Math.atan2(y, x) * 1800) / Math.PI) / 10;
  return (angle + 360) % 360;
}
