// What can be read of a hose and its ends, and how each reading is typed.
import type { ReadingName } from '../../state/job-doc';

/** What is read: the hose, one of its ends, or the machine's half of that end. */
export const halves = ['hose', 'A', 'B', 'mate-A', 'mate-B'] as const;
export type Half = (typeof halves)[number];

/** How a reading comes in: a length, a bare number, letters, a gauge leaf, or one of a few things seen. */
export type Kind = 'length' | 'number' | 'letters' | 'gauge' | 'choice';

interface KeyFacts {
  kind: Kind;
  /** What it can be, for a choice. */
  options?: readonly string[];
  /** The options are numbers, or yes and no, to the use cases. */
  as?: 'number' | 'boolean';
}

const HOSE_KEYS = {
  print: { kind: 'letters' },
  reinforcement: {
    kind: 'choice',
    options: [
      'wire-braid',
      'wire-spiral',
      'textile-braid',
      'thermoplastic-textile',
      'ptfe-steel-braid',
      'suction-helix',
    ],
  },
  layers: { kind: 'choice', options: ['1', '2', '4', '6'], as: 'number' },
  id_mm: { kind: 'length' },
  cover_od_mm: { kind: 'length' },
  reinforcement_od_mm: { kind: 'length' },
  cover: { kind: 'choice', options: ['plain', 'non-conductive', 'flame-resistant', 'antistatic'] },
  overall_length_mm: { kind: 'length' },
} as const satisfies Record<string, KeyFacts>;

const END_KEYS = {
  kind: {
    kind: 'choice',
    options: ['nut', 'male', 'stud', 'socket', 'flange', 'tube', 'banjo', 'coupling', 'staple', 'test-point'],
  },
  gender: { kind: 'choice', options: ['female', 'male'] },
  seal: {
    kind: 'choice',
    options: [
      'cone',
      'o-ring-face',
      'o-ring-cone',
      'o-ring-shoulder',
      'thread',
      'bonded-washer',
      'flat-gasket',
      'inverted-flare',
    ],
  },
  thread_diameter_mm: { kind: 'length' },
  pitch_mm: { kind: 'gauge' },
  taper: { kind: 'choice', options: ['no', 'yes'], as: 'boolean' },
  seat_included_angle_deg: { kind: 'choice', options: ['24', '60', '74', '90'], as: 'number' },
  cone: { kind: 'choice', options: ['concave', 'convex', 'flat'] },
  shoulder: { kind: 'choice', options: ['chamfered', 'flat'] },
  flank_angle_deg: { kind: 'choice', options: ['60', '55'], as: 'number' },
  swivel_hex_mm: { kind: 'length' },
  tube_od_mm: { kind: 'length' },
  male_bore_mm: { kind: 'length' },
  second_thread_diameter_mm: { kind: 'length' },
  threads_apart: { kind: 'number' },
  form: { kind: 'choice' },
} as const satisfies Record<string, KeyFacts>;

const FLANGE_KEYS = {
  bolt_long_mm: { kind: 'length' },
  bolt_short_mm: { kind: 'length' },
  head_od_mm: { kind: 'length' },
  head_thickness_mm: { kind: 'length' },
} as const satisfies Record<string, KeyFacts>;

export type HoseKey = keyof typeof HOSE_KEYS;
export type EndKey = keyof typeof END_KEYS | keyof typeof FLANGE_KEYS;
export type Key = HoseKey | EndKey;

const FACTS: Record<Key, KeyFacts> = { ...HOSE_KEYS, ...END_KEYS, ...FLANGE_KEYS };
const names = <T extends object>(keys: T) => Object.keys(keys) as (keyof T)[];

export const hoseKeys: readonly HoseKey[] = names(HOSE_KEYS);
export const threadKeys: readonly EndKey[] = names(END_KEYS);
export const flangeKeys: readonly EndKey[] = names(FLANGE_KEYS);

export const kindOf = (key: Key): Kind => FACTS[key].kind;
export const optionsOf = (key: Key): readonly string[] => FACTS[key].options ?? [];
export const writtenAs = (key: Key): 'text' | 'number' | 'boolean' => FACTS[key].as ?? 'text';
export const isKey = (key: string): key is Key => key in FACTS;
export const isFlangeKey = (key: Key): boolean => key in FLANGE_KEYS;

/** Leaves of a real thread gauge. */
export const leaves = {
  in: ['8', '9', '10', '11', '11.5', '12', '14', '16', '18', '19', '20', '24', '27', '28'],
  mm: ['1', '1.25', '1.5', '1.75', '2', '3'],
} as const;

/** The half that a kind of end is by itself; null of those that come in both, or have no thread. */
export function genderOf(kind: string): 'male' | 'female' | null {
  if (kind === 'male' || kind === 'stud') return 'male';
  return kind === 'nut' || kind === 'socket' ? 'female' : null;
}

export const isMate = (half: Half): boolean => half.startsWith('mate-');

/** The end that a half belongs to; null for the hose. */
export function roleOf(half: Half): 'A' | 'B' | null {
  return half === 'hose' ? null : half.endsWith('A') ? 'A' : 'B';
}

/** The parts in the order they are read: what lies on the bench first, then the ports on the machine. */
export const partOrder: readonly Half[] = ['A', 'B', 'hose', 'mate-A', 'mate-B'];

export const nameOf = (half: Half, key: Key): ReadingName => `${half}.${key}`;

/** Takes a reading's name apart; null where it is none. */
export function parseName(name: ReadingName): { half: Half; key: Key } | null {
  const [half = '', key = ''] = name.split('.');
  return (halves as readonly string[]).includes(half) && isKey(key) ? { half: half as Half, key } : null;
}
