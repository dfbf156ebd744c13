// Every screen and main state in a language that nobody speaks, on a phone: every word comes from a catalogue, and words
// that are longer by four tenths and bracketed are not cut.
import assert from 'node:assert/strict';
import test from 'node:test';
import { stumbles } from './looks.mjs';
import { pseudo, speaksPseudo, texts } from './pseudo.mjs';
import { states } from './states.mjs';
import { ask, browse, open, phone, serve } from './support.mjs';
import { go, named, stocked } from './walker.mjs';
import { catalogue } from '../../ui/tools/catalogues.mjs';

/** What the core says comes in German, so that an English word was written in the screens. */
const SPOKEN = 'de';
/** States show what they say where something is refused: no flow, a code on no record, a hose that stops. */
const REFUSED = ['make', 'oil', 'register.show'];
/** The same in every language: units, and languages as each is called in itself. */
const CODES = ['min', 'ms', 'English', 'Deutsch', 'Español'];
const only = process.env.ONLY ? new RegExp(process.env.ONLY) : null;

const WORD = /\p{L}[\p{L}’'-]+/gu;
const wordsOf = (text) => text.match(WORD) ?? [];
/** Words that are spelled as English is; those of the catalogues are not. */
const plain = (word) => /[a-z]{2}/i.test(word);

/** Months as they are written there. */
const months = Array.from({ length: 12 }, (_, month) =>
  ['short', 'long'].map((how) => new Date(2026, month, 1).toLocaleDateString(SPOKEN, { day: 'numeric', month: how, year: 'numeric' })),
).flat();

/**
 * The strings of an answer: what was typed, chosen or said by the core. A code such as `wire-braid` is no word for people,
 * but where it stands as a name.
 */
function* said(value, key) {
  if (typeof value === 'string' && (key === 'name' || !/^[a-z]+(-[a-z0-9]+)*$/.test(value))) yield value;
  else if (value && typeof value === 'object') for (const [name, each] of Object.entries(value)) yield* said(each, name);
}

/** Remembers every word that an answer brings. */
function listen(page, known) {
  page.on('response', async (response) => {
    if (!response.url().includes('/api/') || !response.headers()['content-type']?.includes('json')) return;
    const words = [...said(await response.json().catch(() => null))].flatMap(wordsOf);
    // A tag's code is also shown in parts.
    for (const word of words.flatMap((word) => [word, ...word.split('-')])) known.add(word);
  });
}

const written = async (page, known) =>
  (await texts(page)).flatMap((text) =>
    wordsOf(text)
      .filter((word) => plain(word) && !known.has(word))
      .map((word) => `“${word}” of “${text.trim()}” is in no catalogue`),
  );

test('words are bracketed and longer by four tenths, and what is put in stays as it is', () => {
  const catalogue = ['# Note', 'hose = Hose { $code } leaks', 'hoses = { $count ->', '   *[other] { $count } hoses', '} here'];
  assert.deepEqual(pseudo(catalogue.join('\n')).split('\n'), [
    '# Note',
    'hose = ⟦Ĥóššé⟧ { $code } ⟦ļéááķšš⟧',
    'hoses = { $count ->',
    '   *[other] { $count } ⟦ĥóššéšš⟧',
    '} ⟦ĥéŕŕé⟧',
  ]);
});

test('what these tests look for is found where it is', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  const page = await open(t, browser, url, phone);
  await page.evaluate(() => {
    document.body.innerHTML = '<p>⟦Ŵóŕđđ⟧ EN 853 25 mm wire-braid</p><button aria-label="Loose words">⟦ḿḿ⟧</button>';
  });
  assert.deepEqual(
    (await written(page, new Set(['mm', 'EN']))).map((line) => line.split(' of ')[0]),
    ['“wire-braid”', '“Loose”', '“words”'],
  );
});

test('every screen says what the catalogues have, and nothing is cut where words are longer', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const { wanted, ...fleet } = await stocked(url, db);
  const page = await open(t, browser, url, phone, { may: REFUSED });
  await speaksPseudo(page, SPOKEN);
  const known = new Set([...CODES, ...[...months, ...wanted.map((hose) => hose.name)].flatMap(wordsOf)]);
  listen(page, known);
  const { catalogue: _, program: __, unreadable: ___, ...now } = await ask(url, 'settings.read', {});
  await ask(url, 'settings.write', { ...now, language: SPOKEN });
  page.setDefaultTimeout(6000);
  await page.evaluate((wanted) => localStorage.setItem('hosewright-batch', JSON.stringify(wanted)), wanted);
  await page.reload();
  await page.getByRole('navigation').first().waitFor();

  const name = named(new Map([...catalogue('en')].map(([id, { text }]) => [id, { text: pseudo(`x =${text}`).slice(3) }])));
  const found = [];
  for (const [state, way] of Object.entries(states(fleet))) {
    if (only && !only.test(state)) continue;
    for (const word of wordsOf(way.file?.[1].name ?? '')) known.add(word);
    try {
      await go(page, url, way, name);
      found.push(...[...(await written(page, known)), ...(await stumbles(page))].map((line) => `${state}: ${line}`));
    } catch (error) {
      found.push(`${state}: ${error.message.split('\n').slice(0, 3).join(' ')}`);
    }
  }
  assert.deepEqual(found, []);
});
