import type { Answer, Given } from '../backend';
import type {
  EndName,
  EndSettings,
  EventRef,
  Facing,
  HoseRef,
  Override,
  Part,
  PersonId,
  PlaceId,
  PlaceAt,
  Points,
  Readings,
  Role,
  Service,
  Spec,
  TagCode,
  TagProof,
  WhyGivenUp,
} from '../backend/types';
import type { Draft as Typing } from '../components/keypad.svelte';
import type { Stroke } from '../components/SignaturePad.svelte';

export const steps = ['find', 'check', 'make', 'tag', 'fit'] as const;
export type Step = (typeof steps)[number];

/** A sheet that stands beside the check: how the hose bends between its ports, what the oil does in it. */
export type Beside = 'route' | 'oil';

/** A reading's own name: what it is of and its key, such as `A.tpi`, `mate-A.tpi`, `hose.id_mm`. */
export type ReadingName = string;

/** Parts as a person names them. */
export interface Named {
  hose?: HoseRef;
  A?: EndName;
  B?: EndName;
}

/** What finding needs beside the readings. */
export interface Finding {
  /** `hose`, `A`, `B`, or the machine's half: `mate-A`, `mate-B`. */
  part: string;
  /** The key of the reading asked; null lets the one that tells most be asked. */
  asked: string | null;
  /** How each end leaves the hose, as a spec names it. */
  forms: Partial<Record<Role, string>>;
  /** Parts of the spec that the person named; what was found does not write over them. */
  chosen: Part[];
  /** What the person said that those parts were, by his own knowledge and not measured; it outlives another choice in the spec. */
  named?: Named;
  /** The unit that lengths were last typed in; the next one starts in it, whatever came between. */
  unit?: string | null;
}

/** All that a job needs to go on after the phone was put away or the program killed. */
export interface JobDoc {
  step: Step;
  /** Whose job it is: who ticks, reads and signs; null is not said yet. */
  person: PersonId | null;
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
  /** Where one is in finding: the part in hand and the reading asked of it. */
  finding: Finding;
  /** What will be made; filled from what was found, a tag, a place, or by hand. */
  spec: Given<Spec>;
  /** Of a rating of one's own at an end: from which table or supplier it is, as it was said. */
  ratingFrom: Partial<Record<Role, string>>;
  /** Made as the record or tag says it was: flow and route are then not looked at, and said so. */
  sameForSame: boolean;
  service: Given<Service>;
  overrides: Override[];
  /** What was said of the ports the hose runs between. */
  route: Routing;
  /** What of the oil the service does not say. */
  oil: Oil;
  /** The sheet beside the check that is open; null is the check itself. */
  beside: Beside | null;
  /** The person went on to make it from a check without a stop; a stop takes it back. */
  checked: boolean;
  /** How each end goes on, from the person's own supplier. */
  settings: Given<EndSettings>[];
  /** Steps that are done, by their code and end. */
  ticks: Record<string, Tick>;
  /** Crimped diameters over the flats in mm, as they were read; see `CRIMP_DIRECTIONS`. Null was struck. */
  crimps: Record<Role, (number | null)[]>;
  /** Readings that were given up, in that order: they stay on record. */
  givenUp: Record<Role, GivenUp[]>;
  /** What the crimp of each end is read with. */
  crimpedBy: Record<Role, Instrument>;
  /** What was measured of a new end in mm, from its sealing point to its hose stop, again and again. */
  cutoffs: Record<Role, number[]>;
  /** What was measured of the finished hose. */
  finished: Finished;
  /** Why the hose in hand is scrap; null while it is not. */
  scrap: Scrap | null;
  /** Hoses of this job that were scrapped before this one. */
  scraps: Scrap[];
  /** What goes off the stock with the hose in hand; null leaves the stock as it is. */
  stock: OffStock | null;
  /** The maker's name under the papers, as it was drawn; points in parts of the pad. */
  signature: Stroke[];
  proof: TagProof;
  /** How it was proved: what the tag's proof and the record's are made from. */
  proving: Proving;
  /** The day it was assembled; null until its tag is made. */
  assembled: string | null;
  /** The tag's code, once it is made. */
  code: TagCode | null;
  /** What stands in the register already, so that nothing is written twice; `taken`: the limits that were taken on too. */
  written: { made: EventRef | null; taken: boolean; fitted: EventRef | null };
  /** Coming off and going on. */
  fit: Fitting;
  /** Which figure each end is tightened by, as the person chose it from the table. */
  tighten: Partial<Record<Role, string>>;
}

/** What flow and surge are worked out from beside the service; null is not said. */
export interface Oil {
  /** Length of the line, where it is more than the hose. */
  length_mm: number | null;
  elbows_45: number | null;
  elbows_90: number | null;
  iso_vg: number | null;
  /** In how many milliseconds a valve shuts. */
  closing_ms: number | null;
}

/** How the ports of a hose stand, as it can be said with a tape in hand. */
export interface Routing {
  facing: Facing | null;
  /** The machine's closed pose, in which the hose is fitted. */
  closed: Stand;
  /** Its open pose; null while nobody said that a port moves. */
  open: Stand | null;
  /** Neither port moves. */
  fixed: boolean;
  /** Where an elbow points, and the length that can not bend. */
  ends: Record<Role, { points: Points; rigid_mm: number | null }>;
  /** As measured; stands over the table's. */
  hose_od_mm: number | null;
  /** The pose shown, by its number; null is the tightest. */
  pose: number | null;
  /** It was said in an earlier job at the place. */
  earlier: boolean;
}

/** Where B stands, seen from A: right, up, towards the viewer, and how it is swung. Null is not known. */
export interface Stand {
  gap_mm: number | null;
  rise_mm: number | null;
  offset_mm: number | null;
  angle_deg: number | null;
  roll_deg: number | null;
  /** The way each port looks, anticlockwise from the right: where they face each other freely. */
  a_looks_deg: number | null;
  b_looks_deg: number | null;
}

/** A step that is done: when, and by whom. */
export interface Tick {
  at: string;
  /** Null where nobody said who works. */
  by: PersonId | null;
}

/** What of the stock goes into the hose in hand, once it is recorded. */
export interface OffStock {
  used: Required<Answer<'stock.need'>['used'][number]>;
  /** The hose it was said for, by its name: of another one a person says it anew. */
  hose: string;
}

/** The hose as it was cut, and finished as it was measured; null is not yet. */
export interface Finished {
  /** What it was cut to: the sheet's figure, unless the person says otherwise. */
  cut_mm: number | null;
  length_mm: number | null;
  turn_deg: number | null;
}

/** A reading of a crimp in mm that counts no more, what it was read with, and why. */
export interface GivenUp {
  mm: number;
  by: Instrument;
  why: WhyGivenUp;
}

/** What a crimp can be read with; its error stands among the settings. */
export type Instrument = 'caliper' | 'micrometer';

/** How a proof fails. */
export const failures = ['leak', 'end-moved', 'burst'] as const;
export type Failure = (typeof failures)[number];

/** A hose that did not pass: at which step, when, by whom, and how its proof stood. */
export interface Scrap extends Tick {
  /** The step's name in the ticks. */
  step: string;
  /** How its proof failed; null where it did not come to a proof, or nobody said. */
  failed: Failure | null;
  proving: Proving;
  /** Under which code it stands on the record, and since which event; null while it does not. */
  code: TagCode | null;
  written: EventRef | null;
}

/** A proof test as far as it has come. */
export interface Proving {
  /** Whether there is a rig; null is not said yet. */
  rig: boolean | null;
  pressure_bar: number | null;
  hold_s: number | null;
  gauge: string;
  /** When the gauge was calibrated. */
  calibrated: string | null;
}

/** Coming off and going on. */
export interface Fitting {
  date: string | null;
  hours: number | null;
  /** Why the old hose failed, by its code; `NOT_FAILED` where it had not; null is not said yet. */
  cause: string | null;
  note: string;
  /** The place at which its steps were ticked; none before the first was. */
  place?: PlaceId;
  /** The place to which it goes all the same, though another one belongs there. */
  allTheSame?: PlaceId;
}

/** Why the old hose comes off, as it can be said before any job is begun. */
export type Why = Pick<Fitting, 'cause' | 'note'>;

/** The step at which a proof shows whether it holds. */
export const PROVED = 'release-and-look';

/** The answer that the old hose had not failed. */
export const NOT_FAILED = 'none';

export function noStand(): Stand {
  return {
    gap_mm: null,
    rise_mm: null,
    offset_mm: null,
    angle_deg: null,
    roll_deg: null,
    a_looks_deg: null,
    b_looks_deg: null,
  };
}

export const noOil = (): Oil => ({
  length_mm: null,
  elbows_45: null,
  elbows_90: null,
  iso_vg: null,
  closing_ms: null,
});

export const noWhy = (): Why => ({ cause: null, note: '' });

/** Ports of which nothing is said yet. */
export function noRouting(): Routing {
  const end = () => ({ points: 'towards' as const, rigid_mm: null });
  return {
    facing: null,
    closed: noStand(),
    open: null,
    fixed: false,
    ends: { A: end(), B: end() },
    hose_od_mm: null,
    pose: null,
    earlier: false,
  };
}

/** A proof test that has not begun. */
export function noProof(): Proving {
  return { rig: null, pressure_bar: null, hold_s: null, gauge: '', calibrated: null };
}

/** A finished hose of which nothing was measured yet. */
export function noFinish(): Finished {
  return { cut_mm: null, length_mm: null, turn_deg: null };
}

/** A job with nothing in it. */
export function emptyJob(): JobDoc {
  return {
    step: 'find',
    person: null,
    at: null,
    replaces: null,
    readings: { ends: [], mates: [] },
    cannot: [],
    typing: null,
    finding: { part: 'A', asked: null, forms: {}, chosen: [] },
    spec: { ends: [] },
    sameForSame: false,
    service: { duties: [] },
    overrides: [],
    ratingFrom: {},
    route: noRouting(),
    oil: noOil(),
    beside: null,
    checked: false,
    settings: [],
    ticks: {},
    crimps: { A: [], B: [] },
    givenUp: { A: [], B: [] },
    crimpedBy: { A: 'caliper', B: 'caliper' },
    cutoffs: { A: [], B: [] },
    finished: noFinish(),
    scrap: null,
    scraps: [],
    stock: null,
    signature: [],
    proof: { state: 'not-proved' },
    proving: noProof(),
    assembled: null,
    code: null,
    written: { made: null, taken: false, fitted: null },
    fit: { date: null, hours: null, ...noWhy() },
    tighten: {},
  };
}

/**
 * A job as it may have been kept: ticks were once the time alone, a proof that leaked stood beside its figures, and what
 * was taken on went on record with the hose.
 */
type Kept = Omit<Partial<JobDoc>, 'ticks' | 'proving' | 'written'> & {
  ticks?: Record<string, Tick | string>;
  written?: Omit<JobDoc['written'], 'taken'> & Partial<JobDoc['written']>;
  proving?: Proving & { failed?: boolean };
};

/** A kept job as it goes on: what it had no room for yet is empty. */
export function resumed({ ticks = {}, proving, written = emptyJob().written, ...kept }: Kept): JobDoc {
  const asTick = (tick: Tick | string): Tick => (typeof tick === 'string' ? { at: tick, by: null } : tick);
  const { failed = false, ...proved }: Proving & { failed?: boolean } = proving ?? noProof();
  const last = Object.values(ticks).map(asTick).at(-1)?.at ?? new Date(0).toISOString();
  return {
    ...emptyJob(),
    ...(failed && {
      scrap: { step: PROVED, at: last, by: null, failed: null, proving: proved, code: null, written: null },
    }),
    ...kept,
    ticks: Object.fromEntries(Object.entries(ticks).map(([name, tick]) => [name, asTick(tick)])),
    proving: proved,
    written: { ...written, taken: written.taken ?? written.made !== null },
  };
}

/** Which steps of a job are done; having stepped past one does not make it so. */
export function doneSteps({ spec, checked, written, proof, ticks }: JobDoc): ReadonlySet<Step> {
  const made = written.made !== null;
  const done: Record<Step, boolean> = {
    find: Boolean(spec.hose) && spec.ends.length === 2,
    check: checked || made,
    make: made || proof.state === 'proved' || (proof.state === 'no-rig' && 'no-rig' in ticks),
    tag: made,
    fit: written.fitted !== null,
  };
  return new Set(steps.filter((step) => done[step]));
}
