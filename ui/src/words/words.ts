// All words for people come from the same Fluent catalogues that the Rust side reads.
import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';
import type { WordId } from './ids';
import { languages, spoken, type Language } from './language.svelte';

const catalogues = import.meta.glob<string>('../../../src-tauri/crates/words/locales/*/*.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const bundles = new Map<Language, FluentBundle>();

function bundleOf(language: Language): FluentBundle {
  const known = bundles.get(language);
  if (known) return known;
  const bundle = new FluentBundle(language, { useIsolating: false });
  for (const [path, text] of Object.entries(catalogues)) {
    if (path.includes(`/${language}/`)) bundle.addResource(new FluentResource(text));
  }
  bundles.set(language, bundle);
  return bundle;
}

/** Values that stand in words: text as it is, or a number that plural rules look at. */
export type Values = Record<string, FluentVariable>;

/**
 * The words for an id with its values put in, in the language now spoken. Numbers that are shown are
 * written by `number.ts` and given as text. An id without words gives the id itself, so nothing is
 * ever silently left out.
 */
export function say(id: WordId, values?: Values): string {
  return sayCode(id, values) ?? id;
}

/** The words for an id that is only known at run time, such as a rule's name; null where there are none. */
export function sayCode(id: string, values?: Values): string | null {
  const bundle = bundleOf(spoken.tag);
  const pattern = bundle.getMessage(id)?.value;
  return pattern ? bundle.formatPattern(pattern, values ?? null, []) : null;
}

/** Each language's catalogue files, for the tests that hold them whole. */
export const catalogueFiles: ReadonlyArray<{ language: Language; file: string; text: string }> = languages.flatMap(
  (language) =>
    Object.entries(catalogues)
      .filter(([path]) => path.includes(`/${language}/`))
      .map(([path, text]) => ({ language, file: path.slice(path.lastIndexOf('/') + 1), text })),
);
