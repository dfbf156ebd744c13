// In words, what was read of a part and what the tables give there. How much it says is the use case's to tell.
import type { Given } from '../../backend';
import type { Readings, Tables } from '../../backend/types';
import { length, number } from '../../words/number';
import { say, sayCode } from '../../words/words';
import { flangeKeys, isKey, roleOf, threadKeys, type Half, type Key } from './keys';
import { draftOf, textOf } from './readings';
import { keyName, optionName, valueText } from './say';
import { band, endRow, halfRow, hoseKind, isEnd, type AnyCandidate } from './tables';

/** One thing that was read, and what the rows of the two give for it; empty where they give nothing. */
export interface Told {
  what: string;
  read: string;
  table: string;
  rival: string;
}

/** The name that `explain` gives all that was read of the machine's half. */
const MATE = 'mate';

/** What a reading that `explain` names is called. */
export const readingName = (readings: Given<Readings>, half: Half, reading: string): string =>
  isKey(reading) ? keyName(reading, genderOf(readings, half)) : (sayCode(`find-key-${reading}`) ?? reading);

/** All that stands behind a reading that `explain` names: of the machine's half it is all that was read there. */
export function told(
  readings: Given<Readings>,
  tables: Tables | null,
  [candidate, rival]: readonly [AnyCandidate, AnyCandidate | null],
  part: Half,
  reading: string,
): Told[] {
  const role = roleOf(part);
  const half: Half = reading === MATE && role !== null ? `mate-${role}` : part;
  const keys = reading === MATE ? [...threadKeys, ...flangeKeys] : isKey(reading) ? [reading] : [];
  return keys
    .filter((key) => draftOf(readings, half, key))
    .map((key) => ({
      what: readingName(readings, half, key),
      read: valueText(key, draftOf(readings, half, key)),
      table: tableText(tables, candidate, half, key),
      rival: rival ? tableText(tables, rival, half, key) : '',
    }));
}

const genderOf = (readings: Given<Readings>, half: Half) => textOf(draftOf(readings, half, 'gender'));

/** What the tables give of a candidate for a reading. */
function tableText(tables: Tables | null, candidate: AnyCandidate, half: Half, key: Key): string {
  const tpi = key === 'pitch_mm' && isEnd(candidate) ? endRow(tables, candidate)?.tpi : null;
  if (tpi) return say('find-tpi', { count: number(tpi, 1) });
  const limits = band(tables, candidate, half, key);
  if (limits) return rangeText(...limits);
  return known(tables, candidate, half, key)
    .map((row) => optionName(key, row))
    .join(', ');
}

function rangeText(low: number | null, high: number | null): string {
  if (low === null) return say('find-why-most', { limit: length(high ?? 0, 2) });
  if (high === null) return say('find-why-least', { limit: length(low, 2) });
  return low === high ? length(low, 2) : `${number(low, 2)}–${length(high, 2)}`;
}

/** What the tables say can be seen of a candidate, as options of the reading; empty where they do not say. */
function known(tables: Tables | null, candidate: AnyCandidate, half: Half, key: Key): string[] {
  if (!isEnd(candidate)) {
    const kind = hoseKind(tables, candidate);
    if (key === 'reinforcement') return kind?.reinforcement ? [kind.reinforcement] : [];
    if (key !== 'layers' || !kind) return [];
    const { layers_min: low, layers_max: high } = kind;
    return Array.from({ length: Math.max(0, high - low + 1) }, (_, index) => String(low + index));
  }
  const row = endRow(tables, candidate);
  const side = row ? halfRow(row, candidate, half) : null;
  const texts = (...values: (string | number | null | undefined)[]) =>
    values.filter((value) => value !== null && value !== undefined).map(String);
  switch (key) {
    case 'gender':
      return texts(side?.gender);
    case 'seal':
      return row?.seals ?? [];
    case 'cone':
      return texts(side?.cone);
    case 'seat_included_angle_deg':
      return texts(row?.seat_included_angle_deg);
    case 'flank_angle_deg':
      return texts(row?.flank_angle_deg);
    case 'taper':
      return row?.thread ? [row.taper ? 'yes' : 'no'] : [];
    default:
      return [];
  }
}
