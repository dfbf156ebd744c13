import { describe, expect, it } from 'vitest';
import { catalogue, differences, prose } from '../../tools/catalogues.mjs';
import { languageOfDevice, languages, type Language } from './language.svelte';

const others = languages.filter((language): language is Exclude<Language, 'en'> => language !== 'en');

/** Words that are the same in English: units, codes, what standards and instruments print, loan words of the trade. */
const SAME: Record<(typeof others)[number], readonly string[]> = {
  de: [
    'Adapter',
    'Scans',
    'Dash',
    'Frost',
    'Letter',
    'Name',
    'Region',
    'laminar',
    'turbulent',
    'max',
    'bar max',
    'psi max',
  ],
  es: ['banjo', 'Banjo', 'Dash', 'Tractor', 'est.', 'laminar', '/in', 'Total', 'metal'],
};
const UNITS = ['mm', 'bar', 'psi', 'l/min', 'gpm', 'DN', 'DIN 20066', 'WebDAV', 'ft', 'min', 'EUR'];

/** The longest word that a key of a phone 360 px wide holds on one line. */
const LONGEST_WORD = 26;
/** How much longer short words (keys, names of fields) may be than in English: what the keys have room for. */
const shortGrows = (english: number) => english * 2 + 12;
const SHORT = 24;

/** How long the longest of a message's cases is. */
const longest = (text: string) => Math.max(...text.split(/^\s*\*?\[[\w-]+\]/m).map((each) => prose(each).length));

describe.each(others)('the words in %s', (language) => {
  const english = catalogue('en');
  const other = catalogue(language);
  const pairs = [...english].flatMap(([id, { text }]) => {
    const said = other.get(id);
    return said ? [{ id, english: prose(text), said: prose(said.text) }] : [];
  });

  it('are all there, take the same values and tell the same cases apart', () => {
    expect(differences(language)).toEqual([]);
  });

  it('are not English left as it was', () => {
    const left = pairs
      .filter((pair) => pair.english === pair.said && /\p{L}{2}/u.test(pair.said))
      .filter((pair) => ![...SAME[language], ...UNITS].includes(pair.said));
    expect(left).toEqual([]);
  });

  it('allow no English word that nothing says any more', () => {
    const said = new Set(pairs.filter((pair) => pair.english === pair.said).map((pair) => pair.said));
    expect(SAME[language].filter((word) => !said.has(word))).toEqual([]);
  });

  it('are not cut: no word too long for a line, no key much longer than in English', () => {
    const long = pairs.flatMap(({ id, said }) =>
      said
        .split(/[\s/-]+/)
        .filter((word) => word.length > LONGEST_WORD)
        .map((word) => `${id}: ${word}`),
    );
    const grown = [...english].flatMap(([id, { text }]) => {
      const [most, said] = [text, other.get(id)?.text ?? ''].map(longest) as [number, number];
      return most <= SHORT && said > shortGrows(most) ? [`${id}: ${said} letters, ${most} in English`] : [];
    });
    expect([...long, ...grown]).toEqual([]);
  });
});

describe('the language of the first start', () => {
  it('is the first one of the device that there are words in', () => {
    expect(languageOfDevice(['de-AT', 'en'])).toBe('de');
    expect(languageOfDevice(['fr-FR', 'es-419', 'en-GB'])).toBe('es');
    expect(languageOfDevice(['EN-us'])).toBe('en');
    expect(languageOfDevice(['fr'])).toBe('en');
    expect(languageOfDevice([])).toBe('en');
  });
});
