// A cut-off that is measured on a new end, again and again until the readings agree.
import type { Question } from '../../backend';
import type { Role } from '../../backend/types';
import type { App } from '../../state/app.svelte';
import type { JobDoc } from '../../state/job-doc';
import { today } from '../../words/date';
import { say } from '../../words/words';

/**
 * How the measuring of a cut-off stands: taken, refused for a reading that can not be, or what is done next by its code
 * (`cutoff-repeat`, `cutoff-apart`, `cutoff-coarse`).
 */
export type Cutoff = string;

/** A cut-off is kept as it is shown, so that overall length, cut-offs and cut add up as they stand. */
const shown = (mm: number) => Math.round(mm * 10) / 10;

/** The question that judges readings of a new end. */
export function cutoffQuestion(app: App, readings_mm: number[]): Question<'cutoff.measured'> {
  const { instruments, caliper_error_mm: error_mm } = app.settings.now;
  return { readings_mm, instrument: { name: instruments.caliper, error_mm, error_is: 'standard' } };
}

/** Takes what was measured of an end as its cut-off, once the command says that it will do. */
export async function settleCutoff(app: App, doc: JobDoc, role: Role): Promise<Cutoff> {
  const readings = $state.snapshot(doc.cutoffs[role]);
  const end = doc.spec.ends.find((one) => one.role === role);
  if (!end || end.cutoff_mm != null) return 'taken';
  if (readings.length === 0) return 'cutoff-repeat';
  const reply = await app.backend.call('cutoff.measured', cutoffQuestion(app, readings));
  if (!reply.ok) return 'refused';
  const { cutoff_mm, verdict } = reply.value;
  if (verdict !== 'pass' || cutoff_mm === null) return reply.value.do;
  end.cutoff_mm = shown(cutoff_mm);
  const known = doc.settings.find((one) => one.role === role);
  if (known) known.cutoff_source = say('make-cutoff-measured', { day: today() });
  return 'taken';
}
