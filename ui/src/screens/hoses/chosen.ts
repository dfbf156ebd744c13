// What is done with the hoses that were chosen in the table.
import type { Backend, CallError, Question } from '../../backend';
import type { PlaceId, TagCode } from '../../backend/types';
import type { App } from '../../state/app.svelte';
import { ofPlace, pick } from '../batch/picking';
import { sitting } from '../machines/ages';

/** So many are made again at once; more are no batch that one press makes in a day. */
export const MOST_IN_BATCH = 60;
/** So many may be chosen at once. */
export const MOST = 10_000;

type Asked = Omit<Question<'desk.codes'>, 'offset' | 'limit'>;

/** The codes of the rows from one up to and with another, of a filter in that order; `more` where that is more than may be chosen. */
export async function codesBetween(
  backend: Backend,
  ask: Asked,
  from: number,
  to: number,
): Promise<{ codes: TagCode[]; more: boolean } | { problem: CallError }> {
  const limit = Math.min(to + 1 - from, MOST);
  const reply = await backend.call('desk.codes', { ...ask, offset: from, limit });
  return reply.ok ? { codes: reply.value.codes, more: limit < to + 1 - from } : { problem: reply.error };
}

/** Puts the same again, for the places where these hoses sit, into the batch in hand; how many could not be. */
export async function toBatch(app: App, codes: readonly TagCode[]): Promise<number> {
  let not = 0;
  for (const code of codes) {
    const place = await placeOf(app.backend, code);
    const picked = place && (await pick(app, ofPlace(place)));
    if (picked && 'make' in picked) app.batch.add({ id: ofPlace(place), name: picked.name, count: 1 });
    else not += 1;
  }
  return not;
}

async function placeOf(backend: Backend, code: TagCode): Promise<PlaceId | null> {
  const shown = await backend.call('register.show', { code });
  return (shown.ok && sitting(shown.value.stays).at(-1)?.at.place) || null;
}
