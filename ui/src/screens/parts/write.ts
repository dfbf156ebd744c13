import type { CallError, Question } from '../../backend';
import type { EventRef } from '../../backend/types';
import type { App } from '../../state/app.svelte';

type Events = Question<'register.record'>['events'];

/** Writes events to the register, all or none, and reads what the frame shows anew. The error where nothing was written. */
export async function write(app: App, events: Events): Promise<CallError | null> {
  const reply = await app.backend.call('register.record', { events });
  if (!reply.ok) return reply.error;
  await app.refresh();
  return null;
}

/** Each of those events struck out, as events to write. */
export function struckOut(events: readonly EventRef[], reason: string): Events {
  return events.map((event) => ({ body: { kind: 'voided', reason }, builds_on: [event] }));
}

/** An id that no two devices give alike; the error where the register gives none. */
export async function newId(app: App): Promise<{ id: string } | { problem: CallError }> {
  const reply = await app.backend.call('register.id', {});
  return reply.ok ? { id: reply.value.id } : { problem: reply.error };
}
