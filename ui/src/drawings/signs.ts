// Small drawings of what is seen on a hose in place, one a group of signs. The field is 64 by 32; the hose runs across it.
import type { SignGroup } from './SignSymbol.svelte';

interface Line {
  line: 'o' | 'l' | 'h' | 'of' | 'lf' | 'ink' | 'broken';
  d: string;
}

const HOSE: Line = { line: 'o', d: 'M2 8H62M2 24H62' };

export const SIGNS: Record<SignGroup, readonly Line[]> = {
  // Worn through in the middle: the wires are seen.
  cover: [
    HOSE,
    { line: 'l', d: 'M20 8l3 3l-3 3l3 4l-3 3l2 3M46 8l-3 3l3 4l-3 3l3 3l-2 3' },
    { line: 'h', d: 'M24 24l6 -16M29 24l6 -16M34 24l6 -16M24 8l6 16M29 8l6 16M34 8l6 16' },
  ],
  // A kink, and the bulge that stays beside it.
  shape: [{ line: 'o', d: 'M4 30V18Q5 6 18 5H26L31 9L36 4Q48 2 62 6M18 30V22Q19 18 24 18H29L33 14L38 19Q50 23 62 20' }],
  // Ferrule, nut, and the mark that no longer stands at the ferrule.
  end: [
    { line: 'o', d: 'M2 9H30M2 23H30' },
    { line: 'of', d: 'M30 6H46V26H30Z' },
    { line: 'of', d: 'M46 9H52V3H62V29H52V23H46' },
    { line: 'l', d: 'M33 6V26M37 6V26M41 6V26' },
    { line: 'o', d: 'M22 9V23' },
  ],
  // Drops under a hose.
  leak: [
    { line: 'o', d: 'M2 3H62M2 15H62' },
    { line: 'ink', d: 'M20 17q5 6 0 9q-5 -3 0 -9ZM34 19q5 6 0 9q-5 -3 0 -9ZM46 17q4 5 0 8q-4 -3 0 -8Z' },
  ],
  // The line of its print runs round the hose: it was fitted with a twist. A clamp hangs loose.
  routing: [
    HOSE,
    { line: 'l', d: 'M2 21Q10 20 14 11M18 22Q26 20 30 10M34 22Q42 20 46 10' },
    { line: 'lf', d: 'M50 4H58V28H50Z' },
    { line: 'o', d: 'M54 1V4M54 28V31' },
  ],
  // The print is worn off.
  marking: [
    HOSE,
    { line: 'broken', d: 'M10 16H24M40 16H54' },
    { line: 'l', d: 'M29 13a3 3 0 1 1 4 3q-1.5 1 -1.5 2.5M31.5 21v.5' },
  ],
  // Whatever else is seen.
  other: [
    { line: 'broken', d: 'M2 8H62M2 24H62' },
    { line: 'o', d: 'M27 12a5 5 0 1 1 7 5q-2 1 -2 3M32 23v1' },
  ],
};
