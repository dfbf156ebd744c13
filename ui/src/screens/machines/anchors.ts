// Where a place's balloon points on its machine. The register keeps a name, not a spot, so the spot is
// read from the trade's words in the name; a place whose name says nothing of it has no balloon.
import { FIELD, type MachineKind } from '../../drawings/machines';
import type { MachinePlace } from '../../drawings/MachineSilhouette.svelte';

type Part = 'boom' | 'stick' | 'tool' | 'grapple' | 'swing' | 'travel' | 'pump' | 'steering' | 'mast' | 'ram';

/** First match wins: the stick's cylinder before any cylinder. English, German, Spanish. */
const words: [Part, RegExp][] = [
  ['stick', /stick|dipper|\barm\b|stiel|balanc[ií]n/i],
  ['boom', /boom|lift|crane|ausleger|hub|pluma/i],
  ['grapple', /grapple|saw|greifer|pinza/i],
  ['tool', /bucket|tilt|tool|blade|löffel|kipp|cuchar/i],
  ['mast', /mast|feed|rotation|lafette|m[aá]stil/i],
  ['ram', /\bram\b|press cyl|platen|kolben|prensa/i],
  ['swing', /swing|slew|schwenk|giro/i],
  ['travel', /travel|drive|track|wheel|fahr|traslaci/i],
  ['steering', /steer|lenk|direcci/i],
  ['pump', /pump|tank|return|pilot|valve|filter|suction|cooler|pumpe|vorsteuer|bomba/i],
];

/** Spots in the drawing's own field; a part that a kind does not have is left out. */
const spots: Record<MachineKind, Partial<Record<Part, readonly [x: number, y: number]>>> = {
  excavator: {
    boom: [160, 76],
    stick: [236, 25],
    tool: [292, 76],
    grapple: [300, 130],
    swing: [88, 113],
    travel: [60, 130],
    pump: [72, 92],
  },
  loader: {
    boom: [198, 95],
    tool: [210, 60],
    stick: [230, 92],
    steering: [120, 104],
    travel: [78, 112],
    pump: [82, 100],
    grapple: [286, 116],
  },
  forwarder: {
    boom: [154, 60],
    stick: [188, 24],
    tool: [224, 23],
    grapple: [262, 46],
    swing: [143, 90],
    steering: [131, 103],
    travel: [102, 123],
    pump: [104, 80],
  },
  crane: {
    boom: [190, 64],
    stick: [236, 20],
    tool: [290, 34],
    grapple: [326, 60],
    swing: [166, 56],
    pump: [112, 110],
    travel: [90, 132],
  },
  press: { ram: [158, 30], boom: [158, 30], stick: [158, 60], tool: [158, 79], pump: [278, 118], swing: [288, 80] },
  drill: {
    boom: [230, 80],
    stick: [226, 94],
    mast: [252, 40],
    tool: [252, 66],
    grapple: [269, 130],
    swing: [158, 113],
    travel: [120, 130],
    pump: [140, 92],
  },
  harvester: {
    boom: [192, 70],
    stick: [206, 37],
    tool: [250, 37],
    grapple: [278, 92],
    swing: [170, 100],
    steering: [110, 104],
    travel: [156, 124],
    pump: [74, 94],
  },
  tractor: {
    boom: [210, 60],
    stick: [240, 67],
    tool: [278, 96],
    grapple: [284, 108],
    swing: [54, 92],
    steering: [180, 104],
    travel: [92, 106],
    pump: [190, 84],
  },
  'truck-mounted': {
    boom: [229, 62],
    stick: [198, 19],
    tool: [110, 31],
    grapple: [70, 52],
    swing: [240, 96],
    travel: [126, 124],
    pump: [230, 116],
  },
  other: { boom: [267, 66], ram: [267, 66], pump: [106, 70], swing: [198, 113], travel: [70, 70] },
};

/** Most balloons that stand clear of one another on a phone. */
const MOST = 12;
/** Two places of one part stand that far apart along the ground, in the drawing's field. */
const APART = 7;

/**
 * The balloons of a machine, by the places' numbers alone: each stands where it stood at the last visit, whatever came
 * off or was begun since.
 */
export function balloons(kind: MachineKind, places: readonly { number: number; name: string }[]): MachinePlace[] {
  const used = new Map<Part, number>();
  const byNumber = places.toSorted((one, other) => one.number - other.number);
  const found = byNumber.flatMap(({ number, name }) => {
    const part = words.find(([, pattern]) => pattern.test(name))?.[0];
    const spot = part && spots[kind][part];
    if (!spot) return [];
    const before = used.get(part) ?? 0;
    used.set(part, before + 1);
    const shift = Math.ceil(before / 2) * (before % 2 ? APART : -APART);
    return [{ number, x: (spot[0] + shift) / FIELD.width, y: spot[1] / FIELD.height }];
  });
  return found.slice(0, MOST);
}

/** The drawing for a machine's kind; a kind that is not drawn stands as the plain one. */
export function drawnKind(sort: string): MachineKind {
  return sort in spots ? (sort as MachineKind) : 'other';
}
