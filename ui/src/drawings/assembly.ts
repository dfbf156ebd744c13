// How an assembly's ends lie on the page. The hose runs along x; A is at the left with its elbow up, B at the
// right where the turn puts it. Proportions are plain: nothing here is to scale and nothing is dimensioned from it.
import type { Point } from './geometry';
import { add, elbowDirection, elbowLine, onPage, prism, ring, times, type Prism, type Vec } from './projection';

/** What closes an end. */
export type Head = 'nut' | 'male' | 'flange' | 'banjo' | 'standpipe';

/** An end of an assembly, as far as it is known. */
export interface AssemblyEnd {
  /** `straight`, `elbow45`, `elbow90`, `compact90` and the like, as the spec writes it; null is not known. */
  form: string | null;
  head: Head;
  /** An end that is not settled is drawn broken with a question mark. */
  settled: boolean;
}

/** An end laid out on the page, relative to where its ferrule ends on the hose's line; y down. */
export interface LaidEnd {
  /** Both edges of the tube, from the ferrule to the head. */
  tube: [Point[], Point[]];
  /** Where the tube meets the head, seen when the head points away. */
  collar: Point[];
  /** Prisms of the head, far ones first. */
  parts: Prism[];
  /** Rings seen in the face, such as the bore. */
  rings: Point[][];
  /** Short lines across: threads. */
  threads: [Point, Point][];
  /** Whether the head is nearer to the viewer than the tube. */
  near: boolean;
  /** The sealing point. */
  seal: Point;
  /** The middle of the head. */
  middle: Point;
  /** Highest and lowest y of it all. */
  span: [number, number];
}

const TUBE = 9;
const STRAIGHT = 12;
const BEND = 30;
const COMPACT = 20;
const LEG = 6;
const NUT = { radius: 20, length: 28 };

/** How far a form bends, in degrees: `elbow67.5` gives 67.5, anything else is straight. */
export function bendOf(form: string | null): number {
  const match = /^(?:elbow|compact|block)(\d+(?:\.\d+)?)$/.exec(form ?? '');
  return match ? Number(match[1]) : 0;
}

/** Lays out an end. `outward` is -1 for A, 1 for B; `turnDeg` is 0 for A. */
export function layEnd(end: AssemblyEnd, outward: 1 | -1, turnDeg: number): LaidEnd {
  const bend = bendOf(end.form);
  const radius = end.form?.startsWith('elbow') ? BEND : COMPACT;
  const start: Vec = [outward * STRAIGHT, 0, 0];
  const line: Vec[] = [[0, 0, 0], ...(bend > 0 ? elbowLine(start, outward, bend, turnDeg, radius) : [start])];
  const axis = elbowDirection(outward, bend, turnDeg);
  const corner = line.at(-1) ?? start;
  const head = add(corner, times(axis, bend > 0 ? LEG : 0));
  line.push(head);
  const laid = headParts(end.head, head, axis, turnDeg);
  const tube = edges(line.map(onPage), TUBE);
  const ys = [...tube.flat(), ...laid.parts.flatMap((part) => part.outline), ...laid.rings.flat()].map(([, y]) => y);
  return {
    ...laid,
    tube,
    collar: ring(head, axis, TUBE, 24).map(onPage),
    near: axis[2] >= -0.05,
    seal: onPage(laid.sealAt),
    middle: onPage(times(add(head, laid.sealAt), 0.5)),
    span: [Math.min(...ys), Math.max(...ys)],
  };
}

function headParts(
  head: Head,
  at: Vec,
  axis: Vec,
  turnDeg: number,
): Pick<LaidEnd, 'parts' | 'rings' | 'threads'> & { sealAt: Vec } {
  const along = (mm: number) => add(at, times(axis, mm));
  const faced = (front: Vec, radii: number[]) =>
    axis[2] > 0.05 ? radii.map((r) => ring(front, axis, r, 36).map(onPage)) : [];
  switch (head) {
    case 'nut': {
      const front = along(NUT.length);
      return {
        parts: [prism(at, front, NUT.radius, 6)],
        rings: faced(front, [16.5, 13.5, 8]),
        threads: [],
        sealAt: front,
      };
    }
    case 'male': {
      const [hex, front] = [along(13), along(37)];
      const steps = Math.abs(axis[2]) > 0.7 ? [] : [17, 21, 25, 29, 33];
      const across = elbowAcross(axis);
      return {
        parts: [prism(at, hex, NUT.radius, 6), prism(hex, front, 15, 36)],
        rings: faced(front, [8]),
        threads: steps.map((step) => [
          onPage(add(along(step), times(across, 14))),
          onPage(add(along(step), times(across, -14))),
        ]),
        sealAt: front,
      };
    }
    case 'flange': {
      const front = along(20);
      return {
        parts: [prism(at, along(12), 12, 36), prism(along(12), front, 25, 36)],
        rings: faced(front, [15, 9]),
        threads: [],
        sealAt: front,
      };
    }
    case 'standpipe': {
      const front = along(40);
      return { parts: [prism(at, front, TUBE, 36)], rings: faced(front, [6]), threads: [], sealAt: front };
    }
    case 'banjo': {
      // The eye lies across the hose; its bolt runs where the turn points.
      const bolt: Vec = [0, Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
      const eye = along(20);
      const [low, high] = [add(eye, times(bolt, -10)), add(eye, times(bolt, 10))];
      return {
        parts: [prism(low, high, 21, 36)],
        rings: bolt[2] > 0.05 ? [ring(high, bolt, 12, 36).map(onPage)] : [],
        threads: [],
        sealAt: eye,
      };
    }
  }
}

/** The direction across an axis, in the page. */
function elbowAcross(axis: Vec): Vec {
  const far = Math.hypot(axis[0], axis[1]) || 1;
  return [-axis[1] / far, axis[0] / far, 0];
}

/** Both edges of a tube along a line on the page. */
function edges(line: readonly Point[], radius: number): [Point[], Point[]] {
  const kept = line.filter((point, index) => {
    const before = line[index - 1];
    return !before || Math.hypot(point[0] - before[0], point[1] - before[1]) > 0.5;
  });
  const side = (sign: 1 | -1): Point[] =>
    kept.map((point, index) => {
      const [before, after] = [kept[Math.max(0, index - 1)] ?? point, kept[index + 1] ?? point];
      const far = Math.hypot(after[0] - before[0], after[1] - before[1]) || 1;
      const [nx, ny] = [-(after[1] - before[1]) / far, (after[0] - before[0]) / far];
      return [point[0] + sign * radius * nx, point[1] + sign * radius * ny];
    });
  return [side(1), side(-1)];
}
