import type { LanguageTag } from '../backend/types';

/** Languages with a full set of catalogues, in the order a person is offered them. */
export const languages = ['en', 'de', 'es'] as const satisfies readonly LanguageTag[];
export type Language = (typeof languages)[number];

/** Each language named in itself, so that whoever reads it finds it whatever is spoken now. */
export const languageNames: Record<Language, string> = { en: 'English', de: 'Deutsch', es: 'Español' };

/** The language everything is said and written in. Reading `tag` in a component makes it follow a change. */
class Spoken {
  tag = $state<Language>('en');
}

export const spoken = new Spoken();

/** The first language of the device that there are words in; English where there is none. */
export function languageOfDevice(wanted: readonly string[] = navigator.languages): Language {
  for (const tag of wanted) {
    const known = languages.find((language) => language === tag.toLowerCase().split('-')[0]);
    if (known) return known;
  }
  return 'en';
}
