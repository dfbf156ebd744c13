// The words as they are shipped: without what only their writers read, and without the ids of those that the screens
// name whole. These stand in the order of their short ids, by which the code asks for them. What code puts together of
// parts, or what the core may say too, keeps the id it has.
import { files, messages, putIn } from './catalogues.mjs';

/**
 * What the core's answers already say in words (checks, certificates, the plain command line) and papers: no screen
 * speaks from it.
 */
const UNSPOKEN = /^(care|certificate|check|cli|found|office|papers|photo|register|share|sheet|stock|tables|tag)\.ftl$/;

/** The catalogues of a language that the screens speak from. */
export const spoken = (language) => files(language).filter(({ file }) => !UNSPOKEN.test(file));

const QUOTED = /'([a-z]\w*-[\w-]+)'/g;
/** A code of the contract, as its types write it. */
const CODE = /"([a-z][\w-]*)"/g;
/** What is put into a template, and a template that may become an id: nothing in it that no id has. */
const PUT_IN = /\$\{(?:[^{}`]|\{[^{}`]*\})*\}/;
const BUILT = new RegExp(`\`((?:[\\w-]|${PUT_IN.source})+)\``, 'g');

const every = (text, pattern) => [...text.matchAll(pattern)].map((match) => match[1]);

/** The ids that a template may become; null where it has no word of its own and so only hands others on. */
function become(template) {
  const parts = template.split(PUT_IN);
  return parts.some((part) => /[a-z]/.test(part)) ? new RegExp(`^${parts.join('[\\w-]+')}$`) : null;
}

/** The short id for each id of these catalogues that the sources name whole and nothing else does. */
export function shortIds(sources, catalogues) {
  const code = sources.join('\n');
  const named = new Set(every(code, QUOTED));
  const built = every(code, BUILT).map(become).filter(Boolean);
  const written = catalogues.flatMap(messages);
  const others = new Set([...every(code, CODE), ...written.flatMap(({ text }) => putIn(text))]);
  const alone = written
    .map(({ id }) => id)
    .filter((id) => named.has(id) && !others.has(id) && !built.some((pattern) => pattern.test(id)));
  return new Map(alone.map((id, place) => [id, `w${place.toString(36)}`]));
}

/**
 * A source that names the short ids. A word that takes no values is asked for as `say.w1`: of a name Svelte keeps
 * nothing, of a call it keeps what the call gave last, for every label of every screen.
 */
export const sayingShort = (source, short) =>
  source
    .replace(QUOTED, (_, id) => `'${short.get(id) ?? id}'`)
    .replace(/\bsay\('(w[\da-z]+)'\)/g, (_, id) => `say.${id}`);

/** A catalogue without its notes and the blanks that Fluent does not read: first the words of short ids, in their order. */
export function shipped(catalogue, short = new Map()) {
  const order = [...short.keys()];
  const written = messages(catalogue);
  const nameless = written.filter(({ id }) => short.has(id)).sort((a, b) => order.indexOf(a.id) - order.indexOf(b.id));
  const named = written.filter(({ id }) => !short.has(id));
  return [...nameless.map(({ text }) => `=${text}\n`), ...named.map(({ id, text }) => `${id}=${text}\n`)]
    .join('')
    .replace(/\{ +/g, '{')
    .replace(/ +\}/g, '}');
}
