// Which reading is asked next. The use case says what each reading is expected to tell and what it costs;
// here the kind of end and the print come first, and what a technician takes next breaks near ties.
import type { Given } from '../../backend';
import type { Found, Readings } from '../../backend/types';
import type { Finding, ReadingName } from '../../state/job-doc';
import {
  flangeKeys,
  hoseKeys,
  isFlangeKey,
  isKey,
  isMate,
  nameOf,
  partOrder,
  roleOf,
  threadKeys,
  type Half,
  type Key,
} from './keys';
import { draftOf, isFlange } from './readings';

/** What the choice of the next reading looks at. */
export interface State {
  readings: Given<Readings>;
  cannot: readonly ReadingName[];
  forms: Finding['forms'];
  found: Found | null;
}

export interface Asked {
  half: Half;
  key: Key;
}

/** Taken, or answered with "can't tell". */
export function isAnswered(state: State, half: Half, key: Key): boolean {
  if (state.cannot.includes(nameOf(half, key))) return true;
  const role = roleOf(half);
  if (key === 'form') return role !== null && state.forms[role] !== undefined;
  return draftOf(state.readings, half, key) !== null;
}

/** Whether a part needs no more readings. A mate is settled with its end. */
export function isSettled(found: Found | null, half: Half): boolean {
  return found?.settled[roleOf(half) ?? 'hose'] ?? false;
}

/** Whether what is still possible of a part asks the same of a new hose. */
const isEnough = (found: Found | null, half: Half): boolean => found?.enough[roleOf(half) ?? 'hose'] ?? false;

/** The readings that can be asked of a part, in the order they are listed. */
export function keysOf(state: State, half: Half): readonly Key[] {
  if (half === 'hose') return hoseKeys;
  if (isFlange(state.readings, half)) return isMate(half) ? flangeKeys : [...flangeKeys, 'form'];
  return isMate(half) ? threadKeys.filter((key) => key !== 'form') : threadKeys;
}

/** Without a gain to go by: on the machine's half, and where the best readings of a part can not be told. */
const PLAIN_ORDER: readonly Key[] = ['seal', 'thread_diameter_mm', 'pitch_mm', 'seat_included_angle_deg', 'cone'];
const HOSE_ORDER: readonly Key[] = ['reinforcement', 'layers', 'cover_od_mm', 'id_mm', 'reinforcement_od_mm'];

/** Whether a part lies open: an end once the hose is off the machine, the hose once it is cut. Unsaid, all does. */
function isOpen({ readings }: State, half: Half): boolean {
  const reach = readings.reach ?? 'cut';
  return half === 'hose' ? reach === 'cut' : reach !== 'in-place';
}

/**
 * The first plain reading that is not answered. Of a part of which no reading tells anything none is, nor of one
 * that does not lie open: of that the use case alone says what can be reached.
 */
function plain(state: State, half: Half): Key | null {
  const part = roleOf(half) ?? 'hose';
  if (!isOpen(state, half)) return null;
  if (!isMate(half) && !state.found?.next.some(({ of }) => of === part)) return null;
  const order = half === 'hose' ? HOSE_ORDER : isFlange(state.readings, half) ? flangeKeys : PLAIN_ORDER;
  return order.find((key) => !isAnswered(state, half, key)) ?? null;
}

/**
 * A reading with this share of the best one's worth is as good; of such the first that is listed is asked,
 * so that a thread is measured and gauged before anybody is sent to its hex.
 */
const AS_GOOD = 0.5;

/** The reading that tells about most for its effort, of those not answered. */
function mostTelling(state: State, half: Half): Key | null {
  const allowed = keysOf(state, half);
  const threaded = draftOf(state.readings, half, 'gender') !== null;
  const part = roleOf(half) ?? 'hose';
  const worths = new Map<Key, number>();
  for (const { of, reading, gain_bits, effort } of state.found?.next ?? []) {
    if (of !== part || !isKey(reading) || isAnswered(state, half, reading)) continue;
    if (isFlangeKey(reading) ? threaded : !allowed.includes(reading)) continue;
    worths.set(reading, gain_bits / effort);
  }
  const best = Math.max(...worths.values());
  const keys: readonly Key[] =
    half === 'hose' || isFlange(state.readings, half) ? allowed : [...allowed, ...flangeKeys];
  return keys.find((key) => worths.has(key) && (worths.get(key) ?? 0) >= best * AS_GOOD) ?? null;
}

/** What to ask of a part; null where nothing more is worth asking. */
export function nextKey(state: State, half: Half): Key | null {
  const open = (key: Key) => !isAnswered(state, half, key);
  const flange = isFlange(state.readings, half);
  if (half === 'hose') {
    // The print is one look and may say everything.
    if (open('print')) return 'print';
    if (!isEnough(state.found, half)) {
      const key = mostTelling(state, half) ?? plain(state, half);
      if (key) return key;
    }
    // The tape needs the sealing points, and they lie in the machine while the hose is fitted.
    return open('overall_length_mm') && state.readings.reach !== 'in-place' ? 'overall_length_mm' : null;
  }
  // Where the jaws go depends on it.
  if (!flange && open('gender')) {
    if (open('kind')) return 'kind';
    // Most kinds say which half they are; a glance that tells no kind tells where the thread is.
    if (draftOf(state.readings, half, 'kind') === null) return 'gender';
  }
  if (!flange && draftOf(state.readings, half, 'second_thread_diameter_mm') && open('threads_apart')) {
    return 'threads_apart';
  }
  if (!isSettled(state.found, half)) {
    const key = mostTelling(state, half) ?? plain(state, half);
    if (key) return key;
  }
  return !isMate(half) && open('form') ? 'form' : null;
}

/**
 * What to ask when the reading in hand is done: the rest of the same part, then the parts that are still
 * open, each after the one before it. The machine's half is asked last, where its own end can tell no more, and
 * only once the hose is off it.
 */
export function nextAsked(state: State, from: Half): Asked | null {
  const start = partOrder.indexOf(from);
  const rotated = [...partOrder.slice(start), ...partOrder.slice(0, start)];
  for (const half of rotated) {
    if (isMate(half) && (isSettled(state.found, half) || !isOpen(state, half) || nextKey(state, endOf(half)))) continue;
    const key = nextKey(state, half);
    if (key) return { half, key };
  }
  return null;
}

const endOf = (mate: Half): Half => roleOf(mate) ?? 'hose';
