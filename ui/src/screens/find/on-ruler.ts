// The reading that stands on the ruler: the one asked, or where that has no number the last that has.
import type { Given } from '../../backend';
import type { Readings } from '../../backend/types';
import { MM_PER_INCH } from '../../words/number';
import { kindOf, type Half, type Key } from './keys';
import { draftOf, padFor, textOf } from './readings';

type Kept = Given<Readings>;

/** In the order of what they say of a part. */
const TELLING: readonly Key[] = [
  'thread_diameter_mm',
  'bolt_long_mm',
  'head_od_mm',
  'pitch_mm',
  'reinforcement_od_mm',
  'id_mm',
  'cover_od_mm',
];

const isMeasured = (key: Key): boolean =>
  (kindOf(key) === 'length' && key !== 'overall_length_mm') || kindOf(key) === 'gauge';

/** Which reading the candidates are drawn against; null where none has a number. */
export function rulerKey(readings: Kept, half: Half, asked: Key | null): Key | null {
  if (asked && isMeasured(asked)) return asked;
  return TELLING.find((key) => draftOf(readings, half, key) !== null) ?? null;
}

/** The reading in mm with its own error: half a step of a fraction, or that of the caliper, which the question names. */
export function rulerReading(readings: Kept, half: Half, key: Key): { value: number; error: number } | null {
  const draft = draftOf(readings, half, key);
  if (!draft) return null;
  if (kindOf(key) === 'gauge') {
    const value = Number(textOf(draft));
    return value > 0 ? { value: draft.unit === 'in' ? MM_PER_INCH / value : value, error: 0 } : null;
  }
  const pad = padFor(key, draft);
  return pad.value === null ? null : { value: pad.value, error: pad.error ?? readings.caliper_error_mm ?? 0 };
}
