// All words for people come from the same Fluent catalogues that the Rust side reads.
import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';
import type { WordId } from './ids';
import { spoken, type Language } from './language.svelte';

/** Fetched from the program itself when a language is first spoken: a device reads its own alone. */
const catalogues: Record<Language, () => Promise<{ default: string }>> = {
  en: () => import('virtual:words/en'),
  de: () => import('virtual:words/de'),
  es: () => import('virtual:words/es'),
};

const bundles = new Map<Language, FluentBundle>();

function bundle(language: Language, catalogue: string): FluentBundle {
  const made = new FluentBundle(language, { useIsolating: false });
  made.addResource(new FluentResource(named(catalogue)));
  return made;
}

/** A catalogue whose words all have an id: a build leaves out the short ones, which only count the words. */
export function named(catalogue: string): string {
  let place = 0;
  return catalogue.replace(/^=/gm, () => `w${(place++).toString(36)}=`);
}

/** Says everything in that language from now on; before the first call nothing can be said. */
export async function speak(language: Language): Promise<void> {
  if (!bundles.has(language)) bundles.set(language, bundle(language, (await catalogues[language]()).default));
  spoken.tag = language;
  document.documentElement.lang = language;
}

/** Values that stand in words: text as it is, or a number that plural rules look at. */
export type Values = Record<string, FluentVariable>;

/**
 * The words for an id with its values put in, in the language now spoken. Numbers that are shown are
 * written by `number.ts` and given as text. An id without words gives the id itself, so nothing is
 * ever silently left out. A build asks for a word without values by its name, `say.w1` (`tools/shipped.mjs`).
 */
export const say = new Proxy(said, { get: (_, id) => said(id as WordId) });

function said(id: WordId, values?: Values): string {
  return sayCode(id, values) ?? id;
}

/** The words for an id that is only known at run time, such as a rule's name; null where there are none. */
export function sayCode(id: string, values?: Values): string | null {
  const words = bundles.get(spoken.tag);
  const pattern = words?.getMessage(id)?.value;
  return words && pattern ? words.formatPattern(pattern, values ?? null, []) : null;
}
