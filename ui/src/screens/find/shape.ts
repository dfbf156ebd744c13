// What the drawings show of a part: what was read is solid, the likeliest row lends the rest.
import type { Given } from '../../backend';
import type { Readings, Reinforcement, Tables } from '../../backend/types';
import type { Head } from '../../drawings/assembly';
import type { EndShape, Seal } from '../../drawings/section';
import type { Thread } from '../../drawings/thread';
import { MM_PER_INCH } from '../../words/number';
import type { Half, Key } from './keys';
import { draftOf, isFlange, mmOf, textOf } from './readings';
import { band, endRow, flangeRow, isEnd, seatOf, type AnyCandidate, type Band } from './tables';

type Kept = Given<Readings>;

/** Depth of a basic 60 degree profile on the diameter, for each mm of pitch (ISO 68-1). */
const DEPTH = 1.0825;
/** Where no pitch was gauged: drawn in plain proportion. */
const PITCH_SHARE = 0.08;
/** A candidate this likely lends the drawing what was not read. */
const LENDS = 0.2;

const mm = (readings: Kept, half: Half, key: Key): number | null => mmOf(key, draftOf(readings, half, key));
const picked = (readings: Kept, half: Half, key: Key): string => textOf(draftOf(readings, half, key));
function middle(limits: Band | null): number | null {
  const sides = [...(limits ?? [])].filter((side) => side !== null);
  return sides.length > 0 ? sides.reduce((sum, side) => sum + side, 0) / sides.length : null;
}

function pitchOf(readings: Kept, half: Half): number | null {
  const draft = draftOf(readings, half, 'pitch_mm');
  const value = Number(textOf(draft));
  return !draft || !(value > 0) ? null : draft.unit === 'in' ? MM_PER_INCH / value : value;
}

function threadOf(readings: Kept, half: Half, male: boolean): Thread | null {
  const diameter = mm(readings, half, 'thread_diameter_mm');
  if (diameter === null) return null;
  const pitchMm = pitchOf(readings, half) ?? diameter * PITCH_SHARE;
  return {
    majorMm: male ? diameter : diameter + DEPTH * pitchMm,
    minorMm: male ? diameter - DEPTH * pitchMm : diameter,
    pitchMm,
    flankDeg: picked(readings, half, 'flank_angle_deg') === '55' ? 55 : 60,
    taper: picked(readings, half, 'taper') === 'yes',
  };
}

/** Seals that need a cone. */
const CONED: readonly string[] = ['cone', 'o-ring-cone', 'inverted-flare'];

/** An end as far as it is read. */
export function endShape(readings: Kept, half: Half, tables: Tables | null, likeliest: AnyCandidate | null): EndShape {
  const male = picked(readings, half, 'gender') === 'male';
  const lender = likeliest && isEnd(likeliest) && likeliest.probability >= LENDS ? likeliest : null;
  const lent = lender ? seatOf(tables, lender, half) : null;
  const seal = picked(readings, half, 'seal');
  const angle = picked(readings, half, 'seat_included_angle_deg');
  const cone = picked(readings, half, 'cone');
  const coned = cone !== 'flat' && (seal === '' ? angle !== '' || cone !== '' || lent !== null : CONED.includes(seal));
  return {
    gender: male ? 'male' : 'female',
    thread: threadOf(readings, half, male),
    seat: coned
      ? {
          angleDeg: Number(angle) || (lent?.angleDeg ?? 60),
          cone: (cone || (lent?.cone ?? (male ? 'convex' : 'concave'))) as 'convex' | 'concave',
        }
      : null,
    seals: seal ? [seal as Seal] : lender ? (endRow(tables, lender)?.seals ?? []) : [],
    hexMm: mm(readings, half, 'swivel_hex_mm'),
    boreMm: mm(readings, half, 'male_bore_mm') ?? mm(readings, half, 'tube_od_mm'),
  };
}

/** What closes an end of an assembly: some forms say it, else the kind of end that was read. */
export function headOf(readings: Kept, half: Half, form: string | null): Head {
  if (form === 'standpipe' || form === 'banjo') return form;
  if (isFlange(readings, half)) return 'flange';
  return picked(readings, half, 'gender') === 'male' ? 'male' : 'nut';
}

/** Whether the seat was read, not lent. */
export const seatIsRead = (readings: Kept, half: Half): boolean =>
  draftOf(readings, half, 'seat_included_angle_deg') !== null ||
  (draftOf(readings, half, 'seal') !== null && !CONED.includes(picked(readings, half, 'seal')));

/** A hose in plain proportion: what the drawing starts from. */
const PLAIN_HOSE = { bore: 12.7, wall: 2.6, cover: 2 };

export interface HoseShape {
  idMm: number;
  reinforcementOdMm: number;
  coverOdMm: number;
  reinforcement: Reinforcement | null;
  layers: number;
}

/** The hose as far as it is read; each diameter stands clear of the one inside it. */
export function hoseShape(readings: Kept, tables: Tables | null, likeliest: AnyCandidate | null): HoseShape {
  const lender = likeliest && !isEnd(likeliest) && likeliest.probability >= LENDS ? likeliest : null;
  const lent = (key: Key) => (lender ? middle(band(tables, lender, 'hose', key)) : null);
  const of = (key: Key) => mm(readings, 'hose', key) ?? lent(key);
  const cover = of('cover_od_mm');
  const reinforcement = of('reinforcement_od_mm');
  const idMm = of('id_mm') ?? (reinforcement ?? cover ?? PLAIN_HOSE.bore * 1.7) / 1.7;
  const over = Math.max(reinforcement ?? idMm + 2 * PLAIN_HOSE.wall, idMm * 1.15);
  return {
    idMm,
    reinforcementOdMm: over,
    coverOdMm: Math.max(cover ?? over + 2 * PLAIN_HOSE.cover, over * 1.04),
    reinforcement: (picked(readings, 'hose', 'reinforcement') || null) as Reinforcement | null,
    layers: Number(picked(readings, 'hose', 'layers')) || 1,
  };
}

export interface FlangeShape {
  boltLongMm: number;
  boltShortMm: number;
  headOdMm: number;
  headThicknessMm: number;
  boreMm: number;
}

/** A flange in plain proportion, by its head. */
const PLAIN_FLANGE = { headOd: 44.5, long: 1.18, short: 0.59, thick: 0.18, bore: 0.57 };

/** The flange as far as it is read. */
export function flangeShape(
  readings: Kept,
  half: Half,
  tables: Tables | null,
  likeliest: AnyCandidate | null,
): FlangeShape {
  const row = likeliest && isEnd(likeliest) ? flangeRow(tables, likeliest) : null;
  const of = (key: Key) =>
    mm(readings, half, key) ?? (row && likeliest ? middle(band(tables, likeliest, half, key)) : null);
  const [long, short] = [of('bolt_long_mm'), of('bolt_short_mm')];
  const headOdMm =
    of('head_od_mm') ?? (long ? long / PLAIN_FLANGE.long : short ? short / PLAIN_FLANGE.short : PLAIN_FLANGE.headOd);
  return {
    headOdMm,
    boltLongMm: long ?? headOdMm * PLAIN_FLANGE.long,
    boltShortMm: short ?? headOdMm * PLAIN_FLANGE.short,
    headThicknessMm: of('head_thickness_mm') ?? headOdMm * PLAIN_FLANGE.thick,
    boreMm: headOdMm * PLAIN_FLANGE.bore,
  };
}
