import type { Given } from '../backend';
import type {
  EndSettings,
  EventRef,
  Override,
  PlaceAt,
  Readings,
  Service,
  Spec,
  TagCode,
  TagProof,
} from '../backend/types';
import type { Draft as Typing } from '../components/keypad.svelte';

export const steps = ['find', 'check', 'make', 'tag', 'fit'] as const;
export type Step = (typeof steps)[number];

/** A reading's own name: what it is of and its key, such as `A.tpi`, `mate-A.tpi`, `hose.id_mm`. */
export type ReadingName = string;

/** All that a job needs to go on after the phone was put away or the program killed. */
export interface JobDoc {
  step: Step;
  /** The place it is for; null where the hose is in the hand alone. */
  at: PlaceAt | null;
  /** The hose that sits at the place and comes off. */
  replaces: TagCode | null;
  /** What was read, in the trade's writing as it was typed. */
  readings: Given<Readings>;
  /** Readings that were answered with "can't tell". */
  cannot: ReadingName[];
  /** Half a number, under the reading or field it is for. */
  typing: { of: string; draft: Typing } | null;
  /** What will be made; filled from what was found, a tag, a place, or by hand. */
  spec: Given<Spec>;
  /** Made as the record or tag says it was: flow and route are then not looked at, and said so. */
  sameForSame: boolean;
  service: Given<Service>;
  overrides: Override[];
  /** How each end goes on, from the person's own supplier. */
  settings: Given<EndSettings>[];
  /** Steps that are done, by their code and end: when. */
  ticks: Record<string, string>;
  proof: TagProof;
  /** The tag's code, once it is made. */
  code: TagCode | null;
  /** What stands in the register already, so that nothing is written twice. */
  written: { made: EventRef | null; fitted: EventRef | null };
  /** Coming off and going on. */
  fit: { date: string | null; hours: number | null; cause: string | null; note: string };
}

/** A job with nothing in it. */
export function emptyJob(): JobDoc {
  return {
    step: 'find',
    at: null,
    replaces: null,
    readings: { ends: [], mates: [] },
    cannot: [],
    typing: null,
    spec: { ends: [] },
    sameForSame: false,
    service: { duties: [] },
    overrides: [],
    settings: [],
    ticks: {},
    proof: { state: 'not-proved' },
    code: null,
    written: { made: null, fitted: null },
    fit: { date: null, hours: null, cause: null, note: '' },
  };
}
