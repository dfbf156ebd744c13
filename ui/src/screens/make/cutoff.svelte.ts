// A cut-off that is measured on a new end, again and again until the readings agree.
import type { Question } from '../../backend';
import type { Role } from '../../backend/types';
import type { App } from '../../state/app.svelte';
import type { JobDoc } from '../../state/job-doc';
import { today } from '../../words/date';
import { say } from '../../words/words';

/** How the measuring of a cut-off stands: taken, or what is done next by its code. */
export type Cutoff = 'taken' | 'cutoff-repeat' | 'cutoff-apart';

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
  if (!reply.ok || reply.value.verdict === 'unsettled') return 'cutoff-repeat';
  if (reply.value.verdict === 'stop' || reply.value.cutoff_mm === null) return 'cutoff-apart';
  end.cutoff_mm = reply.value.cutoff_mm;
  const known = doc.settings.find((one) => one.role === role);
  if (known) known.cutoff_source = say('make-cutoff-measured', { day: today() });
  return 'taken';
}
