// How the hoses of a batch are made now: those of jobs that are not done, and those of a machine's places.
import type { Question } from '../../backend';
import type { Draft, PlaceId, TagCode } from '../../backend/types';
import type { App } from '../../state/app.svelte';
import { resumed, type JobDoc } from '../../state/job-doc';
import { say } from '../../words/words';
import { Build } from '../make/build.svelte';
import { contextOf, placeOf } from '../make/title';

/** A hose as it would be made, or why it is not. */
export type Picked =
  | { name: string; make: Question<'make'> }
  /** It is made already. */
  | { name: string; code: TagCode }
  /** In words; the name is null where nothing is left of it. */
  | { name: string | null; not: string };

/** What a hose of a batch is for, as one text. */
export const ofJob = (job: string): string => `job ${job}`;
export const ofPlace = (place: PlaceId): string => `place ${place}`;

/** What is made for that job or place as it stands now. */
export function pick(app: App, id: string): Promise<Picked> {
  const [sort, which = ''] = id.split(' ');
  return sort === 'job' ? fromJob(app, which) : fromPlace(app, which as PlaceId);
}

/** A kept job, as it goes on. */
export const docOf = ({ content }: Draft): JobDoc => resumed(content as Parameters<typeof resumed>[0]);

export const nameOf = (doc: JobDoc): string => [contextOf(doc), placeOf(doc, '')].filter(Boolean).join(' · ');

/** How that job's hose is made, as far as it has come. */
async function fromJob(app: App, job: string): Promise<Picked> {
  const draft = app.drafts.find((one) => one.job === job);
  if (!draft) return { name: null, not: say('several-job-gone') };
  const doc = docOf(draft);
  const name = nameOf(doc);
  if (doc.written.made && doc.code) return { name, code: doc.code };
  const build = new Build(app.backend);
  if (doc.spec.hose) await build.ask(doc, app.settings.now.length_practice);
  if (!build.question) return { name, not: say('several-not-known') };
  return { name, make: { question: build.question, settings: doc.settings } };
}

/** The same again at a place, for what the place asks now. */
async function fromPlace(app: App, place: PlaceId): Promise<Picked> {
  const reply = await app.backend.call('register.place', { place });
  if (!reply.ok) return { name: null, not: reply.error.message };
  const { at, again } = reply.value;
  const name = say('several-place', {
    machine: at.machine_name ?? '',
    number: String(at.number ?? ''),
    name: at.place_name ?? '',
  });
  if (again.why_not !== null || again.spec === null) return { name, not: again.why_not ?? say('several-not-known') };
  const { spec, service, settings } = again;
  const question = { spec, service, overrides: [], length_practice: app.settings.now.length_practice };
  return { name, make: { question, settings } };
}

/** What of the stock a batch is made from. */
export const storeOf = (app: App) => (app.settings.now.store ? { store: app.settings.now.store } : {});
