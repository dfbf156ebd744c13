// What each reading of a part says of one candidate: the table's figure beside what was read.
import type { Given } from '../../backend';
import type { Readings, Tables } from '../../backend/types';
import { length, number } from '../../words/number';
import { say } from '../../words/words';
import { flangeKeys, hoseKeys, isMate, kindOf, roleOf, threadKeys, type Half, type Key } from './keys';
import { rulerReading } from './on-ruler';
import { draftOf, textOf } from './readings';
import { keyName, optionName, partName, valueText } from './say';
import { band, endRow, halfRow, hoseKind, isEnd, type AnyCandidate } from './tables';

/** One reading against one candidate. */
export interface Spoken {
  half: Half;
  key: Key;
  what: string;
  read: string;
  table: string;
  /** For, against, or nothing in the tables to say. */
  speaks: 'for' | 'against' | 'silent';
  /** How far off, where it has a length. */
  off: string;
}

/** Every reading taken of a part and of the machine's half. */
export function spoken(
  readings: Given<Readings>,
  tables: Tables | null,
  candidate: AnyCandidate,
  half: Half,
): Spoken[] {
  const role = roleOf(half);
  const parts: Half[] = role === null ? ['hose'] : [role, `mate-${role}`];
  const keys = role === null ? hoseKeys : [...threadKeys, ...flangeKeys];
  return parts.flatMap((part) =>
    keys
      .filter((key) => key !== 'overall_length_mm' && key !== 'threads_apart' && draftOf(readings, part, key))
      .map((key) => one(readings, tables, candidate, part, key)),
  );
}

function one(readings: Given<Readings>, tables: Tables | null, candidate: AnyCandidate, half: Half, key: Key): Spoken {
  const draft = draftOf(readings, half, key);
  const gender = textOf(draftOf(readings, half, 'gender'));
  const base = {
    half,
    key,
    what: isMate(half) ? `${partName(half)}: ${keyName(key, gender)}` : keyName(key, gender),
    read: valueText(key, draft),
  };
  const limits = band(tables, candidate, half, key);
  const reading = kindOf(key) === 'length' || kindOf(key) === 'gauge' ? rulerReading(readings, half, key) : null;
  if (limits && reading) {
    const [low, high] = limits;
    const away = Math.max((low ?? -Infinity) - reading.value, reading.value - (high ?? Infinity), 0);
    // Worn and burred parts read a little outside; within the reading's own error nothing speaks against it.
    const within = away <= Math.max(2 * reading.error, kindOf(key) === 'gauge' ? reading.value * 0.01 : 0);
    return {
      ...base,
      table: rangeText(low, high),
      speaks: within ? 'for' : 'against',
      off: within ? '' : say('find-why-off', { off: length(away, 2) }),
    };
  }
  const rows = known(tables, candidate, half, key);
  if (rows.length === 0) return { ...base, table: '', speaks: 'silent', off: '' };
  return {
    ...base,
    table: rows.map((row) => optionName(key, row)).join(', '),
    speaks: rows.includes(textOf(draft)) ? 'for' : 'against',
    off: '',
  };
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
