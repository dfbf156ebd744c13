// What stands in the catalogues of each language, and where two of them differ.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const locales = join(dirname(fileURLToPath(import.meta.url)), '../../src-tauri/crates/words/locales');

/** Every file of a language: its name, where it lies and its text. */
export function files(language) {
  const folder = join(locales, language);
  return readdirSync(folder)
    .filter((file) => file.endsWith('.ftl'))
    .sort()
    .map((file) => ({ file, path: join(folder, file) }))
    .map(({ file, path }) => ({ file, path, text: readFileSync(path, 'utf8') }));
}

/** Every message of a text: its id and all that is written for it. */
export function messages(text) {
  const found = [];
  for (const line of text.split('\n')) {
    const start = /^([a-zA-Z][\w-]*) *= ?(.*)$/.exec(line);
    if (start) found.push({ id: start[1], text: start[2] });
    else if (/^\s+\S|^\}/.test(line) && found.length > 0) found.at(-1).text += `\n${line}`;
  }
  return found;
}

/** Every message of a language by its id, with the file it stands in. */
export function catalogue(language) {
  return new Map(
    files(language).flatMap(({ file, text }) => messages(text).map((message) => [message.id, { file, ...message }])),
  );
}

const sorted = (found) => [...new Set(found)].sort();

/** What is put in: `$count`, or another message by its id. */
export const putIn = (text) => sorted([...text.matchAll(/\{\s*(\$?[a-zA-Z][\w-]*)/g)].map((match) => match[1]));

/** The cases a text tells apart by its selectors, plural categories and codes alike. */
export const cases = (text) => sorted([...text.matchAll(/^\s*\*?\[([\w-]+)\]/gm)].map((match) => match[1]));

/** The words alone, without what is put in: what a reader reads. */
export const prose = (text) =>
  text
    .replace(/\{[^{}]*?->/g, ' ')
    .replace(/\{[^{}]*\}/g, ' ')
    .replace(/^\s*\*?\[[\w-]+\]/gm, ' ')
    .replace(/[\s{}]+/g, ' ')
    .trim();

/** Where a language differs from English: a line for each id. */
export function differences(language) {
  const english = catalogue('en');
  const other = catalogue(language);
  const found = [];
  for (const [id, { file, text }] of english) {
    const said = other.get(id);
    if (!said) found.push(`${language}/${file}: ${id} is missing: ${text.split('\n')[0]}`);
    else if (said.file !== file) found.push(`${language}/${said.file}: ${id} stands in ${file} in English`);
    else if (String(putIn(said.text)) !== String(putIn(text)))
      found.push(`${language}/${file}: ${id} takes ${putIn(said.text)}; English takes ${putIn(text)}`);
    else if (codes(text).some((code) => !cases(said.text).includes(code)))
      found.push(`${language}/${file}: ${id} tells apart ${cases(said.text)}; English ${cases(text)}`);
  }
  for (const [id, { file }] of other) if (!english.has(id)) found.push(`${language}/${file}: English has no ${id}`);
  return found;
}

/** The cases that every language must tell apart; plural categories are a language's own, and it may tell more. */
const PLURALS = ['zero', 'one', 'two', 'few', 'many'];
const codes = (text) => cases(text).filter((name) => !PLURALS.includes(name));
