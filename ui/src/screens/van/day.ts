import { spoken } from '../../words/language.svelte';

/** A moment as a person reads it: day and time. */
export function day(iso: string): string {
  return new Intl.DateTimeFormat(spoken.tag, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(iso));
}
