// Half sections of an end: radii and heights in mm, y from the mating face into the part. What no table
// gives (nut length, stem wall) is drawn in plain proportion and never dimensioned.
import type { Point } from './geometry';
import { coneDepth, threadLine, type Seat, type Thread } from './thread';

/** What seals, by the catalogue's names. */
export type Seal =
  | 'cone'
  | 'o-ring-face'
  | 'o-ring-shoulder'
  | 'o-ring-cone'
  | 'bonded-washer'
  | 'thread'
  | 'inverted-flare'
  | 'flat-gasket';

/** An end as far as it is known. What is null is drawn broken. */
export interface EndShape {
  gender: 'male' | 'female';
  thread: Thread | null;
  /** The seat of this half; null where there is none or it is not known. */
  seat: Seat | null;
  /** What seals; the first is drawn. Empty while it is not known. */
  seals: readonly Seal[];
  hexMm: number | null;
  boreMm: number | null;
}

/** A ring of rubber in section. */
export interface Ring {
  at: Point;
  radius: number;
}

/** Right half of an end in section. */
export interface Section {
  /** Nut of a female; none for a male. */
  nut: Point[] | null;
  /** Stem of a female, or the whole body of a male. */
  body: Point[];
  /** The sealing surface, from its outer edge to its inner. */
  seat: [Point, Point];
  /** Where the jaws touch the crests: the third thread. */
  contactY: number;
  /** First and last y of the thread. */
  threadY: [number, number];
  rings: Ring[];
  /** Edges behind the section, from side to side: y and radius. */
  edges: [y: number, radius: number][];
  /** Middle of the hexagon. */
  hexY: number;
  hexRadius: number;
  boreRadius: number;
  length: number;
}

/** A thread to draw while none is known: plain proportions, drawn broken, never dimensioned. */
export const ASSUMED_THREAD: Thread = { majorMm: 22, minorMm: 20, pitchMm: 1.8, flankDeg: 60 };

/** The half section of an end. */
export function section(shape: EndShape): Section {
  return shape.gender === 'female' ? femaleSection(shape) : maleSection(shape);
}

function femaleSection(shape: EndShape): Section {
  const thread = shape.thread ?? ASSUMED_THREAD;
  const { majorMm, minorMm, pitchMm: pitch } = thread;
  const hexRadius = (shape.hexMm ?? majorMm * 1.16) / 2;
  const length = hexRadius * 1.72;
  const head = minorMm / 2 - minorMm * 0.02;
  const bore = Math.min((shape.boreMm ?? minorMm * 0.6) / 2, head * 0.8);
  const tube = Math.min(bore + Math.max(1, minorMm * 0.07), head * 0.9);
  const first = pitch * 0.5;
  const last = length * 0.56;
  const lip = last + pitch * 1.2;
  const neck = tube + minorMm * 0.015;
  const relief = majorMm / 2 + pitch * 0.1;
  const edge = hexRadius * 0.08;
  const nut: Point[] = [
    [relief + pitch * 0.2, 0],
    ...threadLine(thread, first, last),
    [relief, last],
    [relief, lip - pitch * 0.3],
    [relief - pitch * 0.3, lip],
    [head * 0.98, lip],
    [neck, lip + (head * 0.98 - neck)],
    [neck, length],
    [hexRadius - edge, length],
    [hexRadius, length - edge],
    [hexRadius, edge],
    [hexRadius - edge, 0],
  ];
  const top = length * 0.4;
  const tail = length * 1.28;
  const outer: Point[] = [
    [head, lip],
    [tube, lip + (head - tube)],
    [tube, tail],
    [bore, tail],
  ];
  const { line, seat, rings, low } = stemSeat(shape, head, bore, top, lip - pitch * 0.2);
  return {
    nut,
    body: [...line, ...outer, [bore, low]],
    seat,
    contactY: first + pitch * 2.15,
    threadY: [first, last],
    rings,
    edges: [
      [0, relief + pitch * 0.2],
      [seat[0][1], seat[0][0]],
      [seat[1][1], seat[1][0]],
    ],
    hexY: length * 0.82,
    hexRadius,
    boreRadius: bore,
    length: tail,
  };
}

/** The sealing end of a female's stem, from its bore outwards and down to the shoulder. */
function stemSeat(
  { seat, seals }: EndShape,
  head: number,
  bore: number,
  top: number,
  shoulder: number,
): { line: Point[]; seat: [Point, Point]; rings: Ring[]; low: number } {
  const rim = head * 0.06;
  if (seat?.cone === 'concave') {
    const low = top + coneDepth(head - rim, bore, seat.angleDeg);
    const surface: [Point, Point] = [
      [head - rim, top],
      [bore, low],
    ];
    return { line: [surface[1], surface[0], [head, top + rim]], seat: surface, rings: [], low };
  }
  if (seat) {
    // A slender cone runs as far as the stem has room for it.
    const slope = Math.tan((seat.angleDeg * Math.PI) / 360);
    const nose = Math.max(bore + (head - bore) * 0.25, head - (shoulder - top) * slope);
    const depth = coneDepth(head, nose, seat.angleDeg);
    const surface: [Point, Point] = [
      [head, top + depth],
      [nose, top],
    ];
    const middle: Point = [(head + nose) / 2, top + depth / 2];
    const rings = seals[0] === 'o-ring-cone' ? [{ at: middle, radius: head * 0.09 }] : [];
    return { line: [[bore, top], surface[1], surface[0]], seat: surface, rings, low: top };
  }
  const surface: [Point, Point] = [
    [head - rim, top],
    [bore, top],
  ];
  return { line: [surface[1], surface[0], [head, top + rim]], seat: surface, rings: [], low: top };
}

function maleSection(shape: EndShape): Section {
  const thread = shape.thread ?? ASSUMED_THREAD;
  const { majorMm, minorMm, pitchMm: pitch } = thread;
  const hexRadius = (shape.hexMm ?? majorMm * 1.18) / 2;
  const root = minorMm / 2;
  const bore = Math.min((shape.boreMm ?? minorMm * 0.58) / 2, root * 0.78);
  const { nose, seat, low } = noseSeat(shape, root, bore);
  const first = Math.max(pitch * 0.4, ...nose.map(([, y]) => y + pitch * 0.3));
  const last = first + Math.max(pitch * 6, majorMm * 0.6);
  const base = last + pitch;
  const hexHeight = hexRadius * 0.6;
  const edge = hexRadius * 0.07;
  const wide = (y: number): number => (thread.taper ? (y - first) / 32 : 0);
  const tube = bore + Math.max(1, minorMm * 0.09);
  const length = base + hexHeight * 1.6;
  const rings: Ring[] = [];
  if (shape.seals[0] === 'o-ring-face') rings.push({ at: [(bore + root) / 2, root * 0.04], radius: root * 0.09 });
  if (shape.seals[0] === 'o-ring-cone') {
    rings.push({ at: [(seat[0][0] + seat[1][0]) / 2, (seat[0][1] + seat[1][1]) / 2], radius: root * 0.09 });
  }
  if (shape.seals[0] === 'o-ring-shoulder' || shape.seals[0] === 'bonded-washer') {
    rings.push({ at: [root + root * 0.1, base - root * 0.1], radius: root * 0.1 });
  }
  const body: Point[] = [
    ...nose,
    ...threadLine(thread, first, last),
    [root + wide(last), last],
    [root + wide(last), base],
    [hexRadius - edge, base],
    [hexRadius, base + edge],
    [hexRadius, base + hexHeight - edge],
    [hexRadius - edge, base + hexHeight],
    [tube, base + hexHeight],
    [tube, length],
    [bore, length],
    [bore, low],
  ];
  return {
    nut: null,
    body,
    seat,
    contactY: first + pitch * 2.85,
    threadY: [first, last],
    rings,
    edges: [
      [0, nose[0]?.[0] ?? root],
      [seat[1][1], seat[1][0]],
    ],
    hexY: base + hexHeight / 2,
    hexRadius,
    boreRadius: bore,
    length,
  };
}

/** The sealing end of a male, from its bore outwards to where the thread starts. */
function noseSeat(
  { seat }: EndShape,
  root: number,
  bore: number,
): { nose: Point[]; seat: [Point, Point]; low: number } {
  if (seat?.cone === 'concave') {
    const mouth = bore + (root - bore) * 0.7;
    const low = coneDepth(mouth, bore, seat.angleDeg);
    const surface: [Point, Point] = [
      [mouth, 0],
      [bore, low],
    ];
    return { nose: [surface[1], surface[0], [root * 0.97, 0]], seat: surface, low };
  }
  if (seat) {
    const tip = bore + (root - bore) * 0.15;
    const depth = coneDepth(root * 0.97, tip, seat.angleDeg);
    const surface: [Point, Point] = [
      [root * 0.97, depth],
      [tip, 0],
    ];
    return { nose: [[bore, 0], surface[1], surface[0]], seat: surface, low: 0 };
  }
  const surface: [Point, Point] = [
    [root * 0.97, 0],
    [bore, 0],
  ];
  return { nose: [surface[1], surface[0]], seat: surface, low: 0 };
}
