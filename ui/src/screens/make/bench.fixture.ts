// A build sheet for tests, as the core answers it for a hose with two elbows, and a bench that judges what was read.
import type { Figure, Role, SheetStep, Step } from '../../backend/types';
import type { BenchQuestion, Made } from './bench';
import type { CrimpJudged, FinishedJudged, Judged } from './next';

const figure = (value: number, unit: string): Figure => ({ value, unit, source: 'a table', basis: 'published' });
const step = (part: Step, code: string, role: Role | null = null, ...cautions: string[]): SheetStep => ({
  step: part,
  code,
  role,
  cautions: cautions.map((caution) => ({ id: caution, caution, why: '', source: '', basis: 'published' })),
});

/** Cut 1155 of 1240, turn 90, proof at 412; what is given stands over it. */
export function benchSheet(over: Partial<Made> = {}): Made {
  return {
    verdict: 'pass',
    cautions: [],
    cleanliness: [],
    parts: [],
    cut: {
      overall_length_mm: 1240,
      cutoff_a_mm: 41,
      cutoff_b_mm: 44,
      cut_length_mm: 1155,
      aim: figure(2, 'mm'),
      out_of_square: figure(1.6, 'mm'),
      length_tolerance_mm: [-4, 12],
      length_source: null,
      kerf_mm: null,
      off_reel_mm: null,
    },
    turn: { turn_deg: 90, tolerance: figure(5, 'deg') },
    settings: [
      { role: 'A', crimp_diameter_mm: 28.5, crimp_tolerance_mm: 0.1, source: 'a supplier' },
      { role: 'B', crimp_diameter_mm: 28.5, crimp_tolerance_mm: 0.1, source: 'a supplier' },
    ],
    missing: [],
    filled: [],
    steps: [
      step('before', 'lock-out'),
      step('make', 'fetch-parts'),
      step('make', 'cut', null, 'Wear glasses and gloves against wire ends.'),
      step('make', 'crimp', 'A', 'Keep fingers out of the dies while the press moves.'),
      step('make', 'measure-crimp', 'A'),
      step('make', 'measure-length'),
      step('prove', 'close-guard'),
      step('prove', 'release-and-look'),
      step('prove', 'no-rig'),
      step('tag', 'mark-ferrule'),
      step('fit', 'tighten'),
      step('fit', 'log-hours'),
    ],
    proof: {
      working_pressure_bar: 206,
      proof_pressure_bar: 412,
      ratio: figure(2, ''),
      hold_from: figure(30, 's'),
      hold_to: figure(60, 's'),
    },
    tighten: [
      { role: 'A', values: [] },
      { role: 'B', values: [] },
    ],
    catalogue: 'tables',
    program: 'p',
    ...over,
  };
}

/** All readings of a crimp. */
const ALL = 12;

/** A crimp as it is judged: those above 28.6 lie outside, and all twelve are to be read. */
export function crimpJudged(role: Role, readings: readonly (number | null)[]): CrimpJudged {
  const read = readings.flatMap((mm, index) => (mm === null ? [] : [{ index, mm }]));
  const outside = read.filter(({ mm }) => mm > 28.6);
  const struck = readings.indexOf(null);
  const next = struck < 0 ? readings.length : struck;
  const done = outside.length > 0 ? 'press-smaller' : next < ALL ? 'read-on' : 'tick';
  return {
    role,
    verdict: outside.length > 0 ? 'stop' : done === 'tick' ? 'pass' : 'unsettled',
    do: done,
    codes: [done],
    readings: read.map((one) => ({ ...one, lies: one.mm > 28.6 ? 'high' : 'inside' })),
    places: [],
    count: read.length,
    wanted: ALL,
    next: next < ALL ? next : null,
    mean_mm: read.length ? 28.5 : null,
    min_mm: read.length ? 28.4 : null,
    max_mm: read.length ? 28.6 : null,
    spread_mm: null,
    oval_mm: null,
    taper_mm: null,
    deviation_mm: null,
    limits: { low_mm: 28.4, high_mm: 28.6, accept_low_mm: 28.42, accept_high_mm: 28.58 },
    instrument: null,
    source: 'a standard',
    basis: 'published',
  };
}

/** A finished length that is 1236 to 1252. */
function lengthJudged(value: number | null | undefined): FinishedJudged {
  const long = value != null && value > 1252;
  return {
    code: 'length',
    verdict: value == null ? 'unsettled' : long ? 'stop' : 'pass',
    do: value == null ? 'measure' : long ? 'too-long' : 'tick',
    value: value ?? null,
    low: 1236,
    high: 1252,
    accept_low: null,
    accept_high: null,
    unit: 'mm',
    source: 'a standard',
    basis: 'published',
  };
}

/** What is still asked of a proof at 412 bar for 30 s. */
function proofDo({ rig, pressure_bar, hold_s, gauge, failed }: NonNullable<BenchQuestion['bench']['proof']>): string {
  if (failed) return 'proof-failed';
  if (rig === false) return 'proof-no-rig';
  if (rig == null) return 'say-rig';
  if (pressure_bar == null) return 'write-pressure';
  if (hold_s == null) return 'write-hold';
  if (!gauge) return 'write-gauge';
  if (pressure_bar < 412) return 'proof-low';
  return hold_s < 30 ? 'proof-short' : 'proof-ok';
}

/** The bench as it is judged. */
export function judge({ bench: { crimps, finished, proof } }: BenchQuestion): Judged {
  const asked = proofDo(proof ?? {});
  return {
    crimps: (crimps ?? []).map(({ role, readings_mm }) => crimpJudged(role ?? 'A', readings_mm ?? [])),
    finished: [lengthJudged(finished?.length_mm)],
    proof: {
      state: asked === 'proof-ok' ? 'proved' : asked === 'proof-no-rig' ? 'no-rig' : proof?.failed ? 'failed' : 'open',
      do: asked,
      cautions: [],
      pressure_bar: 412,
      hold_from_s: 30,
      hold_to_s: 60,
    },
    tag: true,
    why_not: [],
  } as unknown as Judged;
}
