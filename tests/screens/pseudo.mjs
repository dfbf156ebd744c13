// A language that nobody speaks: every word of the catalogues in brackets, in letters that are in no code, and longer by
// four tenths. What is left in plain letters was written in a program and not in a catalogue.
import { readdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { file } from './support.mjs';

const PLAIN = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';
const OTHER = 'áƀçđéƒĝĥíĵķļḿñóƥɋŕšţúṽŵẋýžÁƁÇĐÉƑĜĤÍĴĶĻḾÑÓƤɊŔŠŢÚṼŴẊÝŽ';
const letters = new Map([...PLAIN].map((letter, place) => [letter, [...OTHER][place]]));
const LONGER = 0.4;

/** A word in other letters, some of them twice. */
function lengthened(word) {
  let owed = 0;
  return [...word].reduce((said, letter) => {
    owed += LONGER;
    const twice = owed >= 1 ? 2 : 1;
    owed -= twice - 1;
    return said + (letters.get(letter) ?? letter).repeat(twice);
  }, '');
}

/** Plain text between what is put in; its blanks stay where they are. */
const bracketed = (text) =>
  /[a-z]/i.test(text) ? text.replace(/^(\s*)(.*?)(\s*)$/s, (_, ahead, said, after) => `${ahead}⟦${said.replace(/[a-z]+/gi, lengthened)}⟧${after}`) : text;

/** What Fluent reads as no text: something put in, the head of a choice and its end. */
const PUT_IN = /(\{[^{}]*\}|\{[^{}]*->\s*$|^\s*\})/;
const said = (line) => line.split(PUT_IN).map((part, place) => (place % 2 === 1 ? part : bracketed(part))).join('');

/** A catalogue in that language; as it is shipped, ids may be left out. */
export const pseudo = (catalogue) =>
  catalogue
    .split('\n')
    .map((line) => {
      const [, head = '', text = line] = /^((?:[a-zA-Z][\w-]* ?)?=|\s*\*?\[[\w-]+\])(.*)$/.exec(line) ?? [];
      return line.startsWith('#') ? line : head + said(text);
    })
    .join('\n');

/** Has the page speak it wherever it would speak `language`: with the built screens' own English catalogue. */
export async function speaksPseudo(page, language) {
  const assets = file('ui/dist-browser/assets');
  const [english] = readdirSync(assets).filter((name) => /^en-.*\.js$/.test(name));
  const { default: catalogue } = await import(pathToFileURL(`${assets}/${english}`));
  const body = `export default ${JSON.stringify(pseudo(catalogue))}`;
  await page.route(new RegExp(`/assets/${language}-[^/]*\\.js$`), (route) => route.fulfill({ contentType: 'text/javascript', body }));
}

/** Every text of the page that a person reads or hears, also what stands in attributes. */
export const texts = (page) =>
  page.evaluate(() => {
    const found = new Set();
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = words.nextNode(); text; text = words.nextNode())
      if (!text.parentElement.closest('script, style')) found.add(text.data);
    for (const name of ['aria-label', 'aria-description', 'aria-valuetext', 'placeholder', 'title', 'alt'])
      for (const node of document.querySelectorAll(`[${name}]`)) found.add(node.getAttribute(name));
    return [...found];
  });
