// Readings of a job: kept, changed and taken back, and the question that they make.
import type { Given } from '../../backend';
import type { Readings } from '../../backend/types';
import { Keypad, type Draft, type Quantity } from '../../components/keypad.svelte';
import {
  flangeKeys,
  halves,
  hoseKeys,
  isMate,
  kindOf,
  roleOf,
  threadKeys,
  writtenAs,
  type Half,
  type Key,
} from './keys';

type Kept = Given<Readings>;
/** A reading as it stands in the question: whatever JSON the use case takes. */
type Plain = Record<string, unknown>;

const PLAIN = '';

/** The draft of a thing picked or of letters: one text, no unit. */
export const picked = (text: string): Draft => ({ unit: PLAIN, typed: { [PLAIN]: text } });

/** The text of a draft under its own unit. */
export const textOf = (draft: Draft | null): string => draft?.typed[draft.unit] ?? '';

const padKind = (key: Key): Quantity => (kindOf(key) === 'length' ? 'length' : 'plain');

/** A keypad that goes on where the draft was left; without one it starts in that unit. What was kept is typed anew. */
export const padFor = (key: Key, draft: Draft | null, unit = '', kept = false): Keypad =>
  new Keypad(padKind(key), draft ?? { unit, typed: {} }, kept);

/** Whether a draft stands as a reading: `1+` does not yet. */
export function isWhole(key: Key, draft: Draft | null): boolean {
  if (!draft) return false;
  const kind = kindOf(key);
  if (kind === 'length' || kind === 'number') return (padFor(key, draft).value ?? 0) > 0;
  return textOf(draft).trim() !== '';
}

/** The millimetres of a length; null for anything else and for half a number. */
export function mmOf(key: Key, draft: Draft | null): number | null {
  return draft && kindOf(key) === 'length' ? padFor(key, draft).value : null;
}

function listOf(readings: Kept, half: Half): Plain[] {
  return (isMate(half) ? readings.mates : readings.ends) as Plain[];
}

/** Where the readings of a part stand; null where none was taken. */
function placeOf(readings: Kept, half: Half, key: Key): Plain | null {
  if (key === 'overall_length_mm') return readings as unknown as Plain;
  const role = roleOf(half);
  if (role === null) return (readings.hose as Plain | null | undefined) ?? null;
  return listOf(readings, half).find((one) => one['role'] === role) ?? null;
}

function openPlace(readings: Kept, half: Half, key: Key): Plain {
  const role = roleOf(half);
  if (!placeOf(readings, half, key)) {
    if (role === null) readings.hose = {};
    else listOf(readings, half).push({ role });
  }
  return placeOf(readings, half, key) ?? {};
}

/** Keeps a reading as it was typed. Half a number is not kept. */
export function keep(readings: Kept, half: Half, key: Key, draft: Draft): void {
  if (!isWhole(key, draft)) return;
  const place = openPlace(readings, half, key);
  if (kindOf(key) === 'gauge') {
    delete place['tpi'];
    delete place['pitch_mm'];
    if (draft.unit === 'in') place['tpi'] = Number(textOf(draft));
    else place['pitch_mm'] = `${textOf(draft)} mm`;
    return;
  }
  place[key] = valueOf(key, draft);
}

function valueOf(key: Key, draft: Draft): unknown {
  const kind = kindOf(key);
  if (kind === 'length') return padFor(key, draft).written;
  if (kind === 'number') return padFor(key, draft).value;
  const text = textOf(draft).trim();
  const as = writtenAs(key);
  return as === 'number' ? Number(text) : as === 'boolean' ? text === 'yes' : text;
}

/** Takes a reading back. A part with none left is as if it had never been looked at. */
export function erase(readings: Kept, half: Half, key: Key): void {
  const place = placeOf(readings, half, key);
  if (!place) return;
  delete place[key];
  if (kindOf(key) === 'gauge') delete place['tpi'];
  if (key === 'overall_length_mm' || takenKeys(place).length > 0) return;
  if (half === 'hose') delete readings.hose;
  else {
    const list = listOf(readings, half);
    list.splice(list.indexOf(place), 1);
  }
}

const takenKeys = (place: Plain): string[] =>
  Object.keys(place).filter((key) => key !== 'role' && place[key] !== null && place[key] !== undefined);

/** The kind of an end says which half it is: one tap is one reading. */
const told = (place: Plain, key: string): boolean => key === 'gender' && (place['kind'] ?? null) !== null;

/** How many readings of a part are kept. */
export function countOf(readings: Kept, half: Half): number {
  const place = placeOf(readings, half, half === 'hose' ? 'print' : 'gender');
  const length = half === 'hose' && (readings.overall_length_mm ?? null) !== null ? 1 : 0;
  return (place ? takenKeys(place).filter((key) => !told(place, key)).length : 0) + length;
}

/** A kept reading as a draft, to show it and to change it; null where it was not taken. */
export function draftOf(readings: Kept, half: Half, key: Key): Draft | null {
  const place = placeOf(readings, half, key);
  if (!place) return null;
  if (kindOf(key) === 'gauge') {
    if (typeof place['tpi'] === 'number') return { unit: 'in', typed: { in: String(place['tpi']) } };
    const mm = bare(place['pitch_mm']);
    return mm === null ? null : { unit: 'mm', typed: { mm: mm.replace(/ ?mm$/, '') } };
  }
  const value = place[key];
  if (value === null || value === undefined) return null;
  if (typeof value === 'boolean') return picked(value ? 'yes' : 'no');
  const text = bare(value);
  if (text === null) return null;
  if (kindOf(key) !== 'length') return picked(text);
  const [, number = text, unit = 'mm'] = /^(.*?)\s*(in|mm)?$/.exec(text) ?? [];
  return { unit, typed: { [unit]: number.trim().replace(/\s+/, '+') } };
}

/** The value of a reading without its error, as text. */
function bare(value: unknown): string | null {
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return value;
  if (typeof value === 'object' && value !== null && 'value' in value) return bare(value.value);
  return null;
}

/** Something typed for a reading that is not kept yet. */
export interface Typing {
  half: Half;
  key: Key;
  draft: Draft;
}

/**
 * The question for what is kept and, where it stands as a reading, what is being typed: candidates follow
 * each key. Plain data, so that it can be sent and compared.
 */
export function question(readings: Kept, typing: Typing | null): Kept {
  const asked = JSON.parse(JSON.stringify(readings)) as Kept;
  if (typing && typing.key !== 'form' && isWhole(typing.key, typing.draft)) {
    keep(asked, typing.half, typing.key, typing.draft);
  }
  return asked;
}

/** Whether the end is a flange by its looks, or was measured as one: it has a reading that only a flange has. */
export function isFlange(readings: Kept, half: Half): boolean {
  const place = half === 'hose' ? null : placeOf(readings, half, 'gender');
  if (textOf(draftOf(readings, half, 'kind')) === 'flange') return true;
  return !!place && takenKeys(place).some((key) => key.startsWith('bolt_') || key.startsWith('head_'));
}

/**
 * The unit that lengths are read in: that of a length kept before. Without one millimetres, in which an
 * inch fraction can not be typed by mistake.
 */
export function unitOf(readings: Kept): string {
  const keys = [...hoseKeys, ...threadKeys, ...flangeKeys].filter((key) => kindOf(key) === 'length');
  for (const half of halves) {
    for (const key of keys) {
      const draft = draftOf(readings, half, key);
      if (draft) return draft.unit;
    }
  }
  return 'mm';
}
