// Where a new end is measured, by how it leaves the hose and what closes it (common practice).
import type { Given } from '../../backend';
import type { Role, Spec } from '../../backend/types';
import { bendOf } from '../../drawings/assembly';
import type { WordId } from '../../words/ids';
import { headOf } from '../../words/spec';
import { say } from '../../words/words';

const HEADS = {
  nut: 'make-cutoff-from-nut',
  male: 'make-cutoff-from-male',
  flange: 'make-cutoff-from-flange',
  banjo: 'make-cutoff-from-banjo',
  standpipe: 'make-cutoff-from-standpipe',
} as const satisfies Record<ReturnType<typeof headOf>, WordId>;

/** How the cut-off of that end is measured. */
export function cutoffHow(spec: Given<Spec>, role: Role): string {
  const end = spec.ends.find((one) => one.role === role);
  const bent = bendOf(end?.form ?? null) > 0;
  return [say(HEADS[headOf(end)]), bent && say('make-cutoff-bent'), say('make-cutoff-to')].filter(Boolean).join(' ');
}
