// What is done next on the bench.
import type { BuildSheet, Role, SheetStep } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { firstOutside, nextReading } from './crimp';
import { fieldFor, proofKeys, type Field } from './fields';
import { benchSteps, currentOf, nameOf } from './steps';

export type Next =
  | { do: 'enter'; field: Field }
  | { do: 'crimp-outside'; role: Role; index: number }
  | { do: 'read-crimp'; role: Role; index: number }
  | { do: 'tick'; step: SheetStep; then: SheetStep | null }
  | { do: 'say-rig' }
  | { do: 'write-proof'; field: Field }
  | { do: 'make-again' }
  | { do: 'tag' };

/** Why a proof that was written down proves nothing; null while it is not written, or where it proves. */
export function shortfall(sheet: BuildSheet, doc: JobDoc): 'low' | 'short' | null {
  const { pressure_bar, hold_s } = doc.proving;
  if (pressure_bar !== null && pressure_bar < sheet.proof.proof_pressure_bar) return 'low';
  return hold_s !== null && hold_s < sheet.proof.hold_from.value ? 'short' : null;
}

/** What the assembly's proof is, as far as it was written down. */
export function proofOf(sheet: BuildSheet, doc: JobDoc): JobDoc['proof'] {
  const { rig, failed, pressure_bar, hold_s, gauge } = doc.proving;
  if (rig === false) return { state: 'no-rig' };
  const held = rig === true && !failed && hold_s !== null && gauge !== '' && shortfall(sheet, doc) === null;
  const done = benchSteps(sheet, doc.proving).every((step) => step.step !== 'prove' || nameOf(step) in doc.ticks);
  return held && done && pressure_bar !== null ? { state: 'proved', pressure_bar } : { state: 'not-proved' };
}

/** The step that is ticked once its readings stand, all of them inside. */
const MEASURED = 'measure-crimp';

/** Settings that a step can not be done without. */
const NEEDS: Record<string, readonly string[]> = {
  'mark-insertion': ['insertion'],
  crimp: ['die-set', 'crimp-diameter', 'crimp-tolerance'],
};

/** The one next thing. What is missing is got before the cut, later only where the step in hand needs it. */
export function nextOf(sheet: BuildSheet, doc: JobDoc): Next {
  if (doc.proving.failed) return { do: 'make-again' };
  const out = firstOutside(sheet, doc.crimps);
  if (out) return { do: 'crimp-outside', ...out };
  const steps = benchSteps(sheet, doc.proving);
  const step = currentOf(steps, doc.ticks);
  const before = !('cut' in doc.ticks);
  const gap = sheet.missing.find(
    (one) =>
      fieldFor(one) !== null &&
      (before || one.code === 'cutoff' || (step?.role === one.role && NEEDS[step?.code ?? '']?.includes(one.code))),
  );
  const field = gap && fieldFor(gap);
  if (field && step?.code !== 'fetch-parts') return { do: 'enter', field };
  if (!step) {
    if (doc.proving.rig === null) return { do: 'say-rig' };
    if (doc.proof.state !== 'not-proved') return { do: 'tag' };
    const open = proofKeys.find((key) => !doc.proving[key]);
    const short = shortfall(sheet, doc) === 'low' ? 'pressure_bar' : 'hold_s';
    return { do: 'write-proof', field: { of: 'proof', key: open ?? short } };
  }
  const reading = step.code === MEASURED && step.role ? nextReading(doc.crimps[step.role]) : null;
  if (step.role && reading !== null) return { do: 'read-crimp', role: step.role, index: reading };
  return { do: 'tick', step, then: steps[steps.indexOf(step) + 1] ?? null };
}

/** Whether a step may be ticked, whatever the order: a crimp only once it is read at all places and lies inside. */
export function mayTick(sheet: BuildSheet, doc: JobDoc, step: SheetStep): boolean {
  if (step.code !== MEASURED || !step.role || nameOf(step) in doc.ticks) return true;
  return nextReading(doc.crimps[step.role]) === null && firstOutside(sheet, doc.crimps)?.role !== step.role;
}
