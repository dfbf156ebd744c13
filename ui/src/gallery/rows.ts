// Catalogue rows to draw from: the dimensions are those of the tables; the hoses and machines are made up.
import type { EndShape } from '../drawings/section';
import type { Candidate } from '../components/ruler';

export const jic10: EndShape = {
  gender: 'female',
  thread: { majorMm: 22.22, minorMm: 20.26, pitchMm: 1.814, flankDeg: 60 },
  seat: { angleDeg: 74, cone: 'concave' },
  seals: ['cone'],
  hexMm: 25.4,
  boreMm: 12,
};
export const jic10male: EndShape = { ...jic10, gender: 'male', seat: { angleDeg: 74, cone: 'convex' } };
export const orfs10male: EndShape = {
  gender: 'male',
  thread: { majorMm: 25.4, minorMm: 23.44, pitchMm: 1.814, flankDeg: 60 },
  seat: null,
  seals: ['o-ring-face'],
  hexMm: 30,
  boreMm: 12.5,
};
export const metric15L: EndShape = {
  gender: 'female',
  thread: { majorMm: 22, minorMm: 20.38, pitchMm: 1.5, flankDeg: 60 },
  seat: { angleDeg: 24, cone: 'convex' },
  seals: ['o-ring-cone'],
  hexMm: 27,
  boreMm: 11,
};
export const bspp58: EndShape = {
  gender: 'female',
  thread: { majorMm: 22.91, minorMm: 20.59, pitchMm: 1.814, flankDeg: 55 },
  seat: { angleDeg: 60, cone: 'convex' },
  seals: ['cone'],
  hexMm: 27,
  boreMm: 12,
};
export const npt12: EndShape = {
  gender: 'male',
  thread: { majorMm: 20.9, minorMm: 18.3, pitchMm: 1.814, flankDeg: 60, taper: true },
  seat: null,
  seals: ['thread'],
  hexMm: 22,
  boreMm: 11,
};
export const orb10: EndShape = {
  gender: 'male',
  thread: { majorMm: 22.22, minorMm: 20.26, pitchMm: 1.814, flankDeg: 60 },
  seat: null,
  seals: ['o-ring-shoulder'],
  hexMm: 25.4,
  boreMm: 12,
};
export const unknownEnd: EndShape = {
  gender: 'female',
  thread: null,
  seat: null,
  seals: [],
  hexMm: null,
  boreMm: null,
};
export const jic4: EndShape = {
  gender: 'female',
  thread: { majorMm: 11.11, minorMm: 9.73, pitchMm: 1.27, flankDeg: 60 },
  seat: { angleDeg: 74, cone: 'concave' },
  seals: ['cone'],
  hexMm: 14.3,
  boreMm: 4.4,
};
export const jic20: EndShape = {
  gender: 'female',
  thread: { majorMm: 41.28, minorMm: 38.98, pitchMm: 2.117, flankDeg: 60 },
  seat: { angleDeg: 74, cone: 'concave' },
  seals: ['cone'],
  hexMm: 50.8,
  boreMm: 26,
};

export const candidates: Candidate[] = [
  {
    id: 'sae',
    name: 'SAE 45 flare',
    size: '−10',
    seat: { angleDeg: 90, cone: 'concave' },
    band: [20.26, 20.66],
    probability: 0.11,
  },
  {
    id: 'jic',
    name: 'JIC 37 flare',
    size: '−10',
    seat: { angleDeg: 74, cone: 'concave' },
    band: [20.26, 20.66],
    probability: 0.6,
  },
  {
    id: 'bspp',
    name: 'BSPP 60 cone',
    size: '5/8',
    seat: { angleDeg: 60, cone: 'convex' },
    band: [20.59, 21.13],
    probability: 0.22,
  },
  {
    id: 'jis',
    name: 'JIS parallel pipe 30 seat',
    size: '5/8',
    seat: { angleDeg: 60, cone: 'concave' },
    band: [20.59, 21.13],
    probability: 0.06,
  },
];
