// What is done next on the bench. Whether a crimp, a length or a proof will do is judged by `bench.judge`.
import type { Answer } from '../../backend';
import type { BuildSheet, Role, SheetStep } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { fieldFor, FINISHED_STEPS, finishedKeys, valueOf, type Field, type FinishedKey } from './fields';
import { gapAt, isBySheet, sourceGap } from './needs';
import { benchSteps, currentOf, nameOf, PROVING } from './steps';

export type Judged = Answer<'bench.judge'>;
export type CrimpJudged = Judged['crimps'][number];
export type FinishedJudged = Judged['finished'][number];

export type Next =
  /** `step` is in hand and waits for it; it may be done by a sheet whose figures nobody enters. */
  | { do: 'enter'; field: Field; step?: SheetStep }
  | { do: 'crimp'; role: Role; crimp: CrimpJudged }
  | { do: 'read-crimp'; role: Role; index: number }
  | { do: 'measure'; key: FinishedKey }
  | { do: 'finished'; key: FinishedKey; finished: FinishedJudged }
  | { do: 'tick'; step: SheetStep; then: SheetStep | null }
  | { do: 'say-rig' }
  | { do: 'write-proof'; field: Field }
  | { do: 'make-again' }
  | { do: 'tag' }
  | { do: 'wait' };

/** The step that is ticked once its readings stand, all of them inside. */
const MEASURED = 'measure-crimp';

/** Steps at which a hose may turn out to be scrap. */
const CHECKS: ReadonlySet<string> = new Set([
  ...['mark-not-moved', 'bore-gauge', 'nuts-free', ...Object.values(FINISHED_STEPS)],
  ...PROVING,
]);

/** What is asked of the proof by the code of what it still needs. */
const PROOF_FIELDS: Record<string, Field> = {
  'write-pressure': { of: 'proof', key: 'pressure_bar' },
  'proof-low': { of: 'proof', key: 'pressure_bar' },
  'write-hold': { of: 'proof', key: 'hold_s' },
  'proof-short': { of: 'proof', key: 'hold_s' },
  'write-gauge': { of: 'proof', key: 'gauge' },
};

/** What was judged of that end's crimp; null before it was read, and while the readings that stand are being judged. */
export function crimpOfEnd(judged: Judged | null, doc: Pick<JobDoc, 'crimps'>, role: Role): CrimpJudged | null {
  const crimp = judged?.crimps.find((one) => one.role === role);
  const read = doc.crimps[role].flatMap((mm, index) => (mm === null ? [] : [`${index}:${mm}`]));
  const same = crimp?.readings.map(({ index, mm }) => `${index}:${mm}`).join() === read.join();
  return crimp && same && read.length > 0 ? crimp : null;
}

/** The first crimp that was judged and will not do; such a hose is neither ticked on, tagged nor fitted. */
export function crimpStopped(judged: Judged | null, doc: Pick<JobDoc, 'crimps'>): CrimpJudged | null {
  const crimps = (['A', 'B'] as const).map((role) => crimpOfEnd(judged, doc, role));
  return crimps.find((crimp) => crimp?.verdict === 'stop') ?? null;
}

/** What was judged of the finished length or turn. */
export function finishedOf(judged: Judged | null, key: FinishedKey): FinishedJudged | null {
  const code = key === 'length_mm' ? 'length' : 'turn';
  return judged?.finished.find((one) => one.code === code) ?? null;
}

/** Whether that step is one at which the hose may not pass. */
export function mayFail(step: SheetStep): boolean {
  return CHECKS.has(step.code);
}

/** What the assembly's proof is, as far as it was judged and its steps are ticked. */
export function proofOf(sheet: BuildSheet, judged: Judged | null, doc: JobDoc): JobDoc['proof'] {
  if (doc.proving.rig === false) return { state: 'no-rig' };
  const done = benchSteps(sheet, doc.proving).every((step) => step.step !== 'prove' || nameOf(step) in doc.ticks);
  const { pressure_bar } = doc.proving;
  return judged?.proof.state === 'proved' && done && pressure_bar !== null
    ? { state: 'proved', pressure_bar }
    : { state: 'not-proved' };
}

/** The one next thing. What is missing is got before the cut, later only where the step in hand needs it. */
export function nextOf(sheet: BuildSheet, judged: Judged | null, doc: JobDoc): Next {
  if (doc.scrap) return { do: 'make-again' };
  const stopped = crimpStopped(judged, doc);
  if (stopped) return { do: 'crimp', role: stopped.role ?? 'A', crimp: stopped };
  const steps = benchSteps(sheet, doc.proving);
  const step = currentOf(steps, doc.ticks);
  const field = gapOf(sheet, step, !('cut' in doc.ticks));
  // What was entered just now is missed by a sheet that is on its way out.
  if (field && step?.code !== 'fetch-parts')
    return valueOf(doc, field) ? { do: 'wait' } : { do: 'enter', field, ...waiting(sheet, step, field) };
  if (!step) return proofNext(judged, doc);
  if (step.code === MEASURED && step.role) return crimpNext(judged, doc, step, step.role, steps);
  const key = finishedKeys.find((one) => FINISHED_STEPS[one] === step.code);
  if (key) return finishedNext(judged, doc, step, key, steps);
  return tickOf(step, steps);
}

/** What is to be entered now: all before the cut, then cut-offs and what the step in hand needs; whose a target is, always. */
function gapOf(sheet: BuildSheet, step: SheetStep | null, before: boolean): Field | null {
  const gap = sheet.missing.find((one) => fieldFor(one) !== null && (before || one.code === 'cutoff'));
  if (gap) return fieldFor(gap);
  return (step && !before ? gapAt(sheet, step) : null) ?? sourceGap(sheet, 'A') ?? sourceGap(sheet, 'B');
}

/** The step in hand where it is what waits for that field, and may be done without. */
function waiting(sheet: BuildSheet, step: SheetStep | null, field: Field): { step?: SheetStep } {
  const waits = step && isBySheet(sheet, step) && field.of === 'end' && field.key !== 'cutoff_mm';
  return waits ? { step } : {};
}

function tickOf(step: SheetStep, steps: readonly SheetStep[]): Next {
  return { do: 'tick', step, then: steps[steps.indexOf(step) + 1] ?? null };
}

function crimpNext(judged: Judged | null, doc: JobDoc, step: SheetStep, role: Role, steps: SheetStep[]): Next {
  if (!doc.crimps[role].some((one) => one !== null)) {
    // A caliper that is too coarse is said before it reads anything; once it is changed, what was judged is on its way out.
    const unread = judged?.crimps.find((one) => one.role === role && one.count === 0);
    if (unread?.do === 'finer-instrument' && doc.crimpedBy[role] === 'caliper')
      return { do: 'crimp', role, crimp: unread };
    return { do: 'read-crimp', role, index: 0 };
  }
  const crimp = crimpOfEnd(judged, doc, role);
  // A target that was entered just now is not in what was judged before.
  if (!crimp || crimp.do === 'enter-target') return { do: 'wait' };
  if (crimp.verdict === 'pass') return tickOf(step, steps);
  if (crimp.do === 'read-on' && crimp.next !== null) return { do: 'read-crimp', role, index: crimp.next };
  return { do: 'crimp', role, crimp };
}

function finishedNext(judged: Judged | null, doc: JobDoc, step: SheetStep, key: FinishedKey, steps: SheetStep[]): Next {
  if (doc.finished[key] === null) return { do: 'measure', key };
  const finished = finishedOf(judged, key);
  if (!finished || finished.value !== doc.finished[key]) return { do: 'wait' };
  return finished.verdict === 'pass' ? tickOf(step, steps) : { do: 'finished', key, finished };
}

function proofNext(judged: Judged | null, doc: JobDoc): Next {
  if (doc.proving.rig === null) return { do: 'say-rig' };
  if (doc.proof.state !== 'not-proved') return { do: 'tag' };
  const field = judged && PROOF_FIELDS[judged.proof.do];
  return field ? { do: 'write-proof', field } : { do: 'wait' };
}

/**
 * Whether a step may be ticked, whatever the order: once the figures it is done by are there, and one that is measured only
 * once what was measured passes.
 */
export function mayTick(sheet: BuildSheet, judged: Judged | null, step: SheetStep, doc: JobDoc): boolean {
  if (nameOf(step) in doc.ticks) return true;
  if (gapAt(sheet, step)) return false;
  if (step.code === MEASURED && step.role) return crimpOfEnd(judged, doc, step.role)?.verdict === 'pass';
  const key = finishedKeys.find((one) => FINISHED_STEPS[one] === step.code);
  return !key || finishedOf(judged, key)?.verdict === 'pass';
}
