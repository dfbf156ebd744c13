// What of the bench is still open: a hose that is not finished has no label.
import type { JobDoc } from '../../state/job-doc';
import { say, sayCode } from '../../words/words';
import type { Build } from '../make/build.svelte';
import { nextOf } from '../make/next';
import { sourceGap } from '../make/needs';
import { benchSteps, currentOf, textOf } from '../make/steps';

const PROOF_OPEN = 'proof-open';

/** What keeps the hose in hand from its label, in words; null while it is not judged yet. One on record is finished. */
export function openOf({ sheet, judged, unjudged }: Build, doc: JobDoc): string[] | null {
  if (doc.written.made) return [];
  if (unjudged) return [unjudged.message];
  if (!sheet || !judged) return null;
  const open = doc.proof.state === 'not-proved' && !judged.why_not.includes(PROOF_OPEN) ? [PROOF_OPEN] : [];
  const roles = (['A', 'B'] as const).filter((role) => sourceGap(sheet, role));
  return [
    ...roles.map((end) => say('tag-source-open', { end })),
    ...[...judged.why_not, ...open].map((code) => sayCode(`bench-why-${code}`) ?? code),
  ];
}

/** Whether the way back to the bench leads to the proof, and the step that is in hand there. */
export function stepOpen({ sheet, judged }: Build, doc: JobDoc): { proof: boolean; step: string | null } {
  if (!sheet) return { proof: false, step: null };
  const step = currentOf(benchSteps(sheet, doc.proving), doc.ticks);
  const next = nextOf(sheet, judged, doc);
  const proof = next.do === 'say-rig' || next.do === 'write-proof' || step?.step === 'prove';
  return { proof, step: step && textOf(step) };
}
