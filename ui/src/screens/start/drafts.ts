// A job that is not done, in a line.
import type { Draft } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { clock } from '../../words/date';

export interface Summary {
  /** Null where the hose is in the hand alone. */
  machine: string | null;
  place: string | null;
  step: string;
  /** When it was kept, in the phone's own time. */
  kept: string;
}

/** What is told of a job. Its content is what some version of the program kept: nothing is taken for granted. */
export function summary(draft: Draft): Summary {
  const content = (typeof draft.content === 'object' ? draft.content : {}) as Partial<JobDoc> | null;
  const at = content?.at ?? null;
  return {
    machine: at?.machine_name ?? at?.place_name ?? null,
    place: at?.machine_name ? (at.place_name ?? null) : null,
    step: content?.step ?? 'find',
    kept: whenKept(draft.kept),
  };
}

function whenKept(kept: string): string {
  return Number.isNaN(Date.parse(kept)) ? kept : clock(kept);
}
