// What was said of the ports in another job at the same place.
import type { Draft, JobId, PlaceId } from '../../backend/types';
import { noRouting, type JobDoc, type Routing } from '../../state/job-doc';

/** The ports of the latest other job at a place; its content is what some version of the program kept. */
export function lastRouting(drafts: readonly Draft[], place: PlaceId | null, job: JobId | null): Routing | null {
  if (place === null) return null;
  for (const draft of drafts) {
    const content = (typeof draft.content === 'object' ? draft.content : null) as Partial<JobDoc> | null;
    if (draft.job === job || content?.at?.place !== place || !content.route?.facing) continue;
    return { ...noRouting(), ...content.route, pose: null };
  }
  return null;
}
