// What seals, each drawn its own way in 24 by 18: metal in outline, threads fine, rubber or gasket filled.
import type { Seal } from './section';

interface SealLines {
  metal: string;
  fine?: string;
  soft?: string;
}

/** A ring in section. */
const ring = (x: number, y: number, r = 2): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
const both = (x: number, y: number, r?: number): string => ring(12 - x, y, r) + ring(12 + x, y, r);
/** A hexagon from the side with its male thread under it. */
const MALE = 'M3 1.5H21V6H3ZM7.5 6V17M16.5 6V17';
const CRESTS = 'M7.5 9.5h9M7.5 12h9M7.5 14.5h9';

export const sealLines: Record<Seal, SealLines> = {
  cone: { metal: 'M1 4H5L12 14L19 4H23', fine: 'M8 2L12 8.5L16 2' },
  'o-ring-face': { metal: 'M1 9H4V13H9V9H15V13H20V9H23', soft: both(5.5, 9.6, 2.4) },
  'o-ring-cone': { metal: 'M1 3H4L12 15L20 3H23', soft: both(5.4, 6, 2.2) },
  'o-ring-shoulder': { metal: MALE, fine: CRESTS, soft: both(6.5, 8.2, 1.9) },
  thread: {
    metal: 'M3 1.5H21V5H3ZM6.5 5l2 2l-1.4 1.6l2 2l-1.4 1.6l2 2L8.6 16M17.5 5l-2 2l1.4 1.6l-2 2l1.4 1.6l-2 2L15.4 16',
  },
  'bonded-washer': {
    metal: `${MALE}M2 8.2H5V11.2H2ZM19 8.2H22V11.2H19Z`,
    fine: CRESTS,
    soft: 'M5 7.6h2.2v4.2H5ZM16.8 7.6h2.2v4.2H16.8Z',
  },
  'flat-gasket': { metal: 'M1 13H23', fine: 'M4 5H20', soft: 'M4 7.6h4.5v3.4H4ZM15.5 7.6h4.5v3.4H15.5Z' },
  'inverted-flare': {
    metal: 'M3 1V16H7L12 8L17 16H21V1',
    fine: 'M3 3.5h2.5M3 6h2.5M3 8.5h2.5M21 3.5h-2.5M21 6h-2.5M21 8.5h-2.5',
  },
};
