// Which hoses may go into a batch: those of jobs that are not done, and those of a machine's places.
import type { Draft, PlaceId } from '../../backend/types';
import type { App } from '../../state/app.svelte';
import type { BatchHose } from '../../state/batch.svelte';
import { resumed, type JobDoc } from '../../state/job-doc';
import { say } from '../../words/words';
import { Standing } from '../machines/standing.svelte';
import { sameForSame } from '../machines/start-job';
import { Build } from '../make/build.svelte';
import { contextOf, placeOf } from '../make/title';

/** How that job's hose is made, as far as it has come; null while it names no hose. */
export async function fromJob(app: App, id: string, doc: JobDoc): Promise<BatchHose | null> {
  if (!doc.spec.hose) return null;
  const build = new Build(app.backend);
  await build.ask(doc, app.settings.now.length_practice);
  if (!build.question) return null;
  const name = [contextOf(doc), placeOf(doc, '')].filter(Boolean).join(' · ');
  return { id: `job ${id}`, name, make: { question: build.question, settings: doc.settings }, count: 1 };
}

/** A kept job, as it goes on. */
export const docOf = ({ content }: Draft): JobDoc => resumed(content as Parameters<typeof resumed>[0]);

/** The same again at a place, for what the place asks now; null where nobody knows what belongs there. */
export async function fromPlace(app: App, place: PlaceId): Promise<BatchHose | null> {
  const standing = new Standing(app.backend);
  await standing.ask(place);
  const { at, ground } = standing;
  const start = at && sameForSame(ground);
  if (!start?.spec || !start.service) return null;
  const question = {
    spec: start.spec,
    service: start.service,
    overrides: [],
    length_practice: app.settings.now.length_practice,
  };
  const name = say('several-place', {
    machine: at?.machine_name ?? '',
    number: String(at?.number ?? ''),
    name: at?.place_name ?? '',
  });
  return { id: `place ${place}`, name, make: { question, settings: [] }, count: 1 };
}

/** What of the stock a batch is made from. */
export const storeOf = (app: App) => (app.settings.now.store ? { store: app.settings.now.store } : {});
