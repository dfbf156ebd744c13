// Jobs that are not done, by the place they are for.
import type { Draft, PlaceId } from '../../backend/types';
import type { App } from '../../state/app.svelte';
import type { JobDoc, Step } from '../../state/job-doc';

/** The place a kept job is for. Its content is what some version of the program kept: nothing is taken for granted. */
function placeOf({ content }: Draft): PlaceId | null {
  return (content as Partial<JobDoc> | null)?.at?.place ?? null;
}

/** The places with a job that is not done. */
export function jobPlaces({ job, drafts }: App): Set<PlaceId> {
  return new Set([job.doc?.at?.place, ...drafts.map(placeOf)].filter((place) => place != null));
}

/** The step that the job of a place has come to; null where none is open there. */
export function stepAt({ job, drafts }: App, place: PlaceId): Step | null {
  if (job.doc?.at?.place === place) return job.doc.step;
  const kept = drafts.find((draft) => placeOf(draft) === place);
  return kept ? ((kept.content as Partial<JobDoc>).step ?? 'find') : null;
}

/** Goes on with the job of a place: the one in hand, else the latest that was kept. */
export async function goOn({ job, drafts, nav }: App, place: PlaceId): Promise<void> {
  const kept = drafts.find((draft) => placeOf(draft) === place);
  if (job.doc?.at?.place !== place && kept) await job.open(kept.job, kept.content);
  nav.go({ at: 'job' });
}
