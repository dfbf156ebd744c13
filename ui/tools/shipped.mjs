// The words as they are shipped: catalogues without what only their writers read, and short ids where nothing but
// `say('…')` names one. What code puts together of parts, or hands on before it is said, keeps the id it has.
import { messages, putIn } from './catalogues.mjs';

/** `say('…'`, as the screens say a word that they name themselves. */
const SAID = /\bsay\(\s*'([a-z][\w-]*)'/g;
const QUOTED = /'([a-z][\w-]*)'/g;
/** What is put into a template, and a template that may become an id: nothing in it that no id has. */
const PUT_IN = /\$\{(?:[^{}`]|\{[^{}`]*\})*\}/;
const BUILT = new RegExp(`\`((?:[\\w-]|${PUT_IN.source})+)\``, 'g');

const every = (text, pattern) => [...text.matchAll(pattern)].map((match) => match[1]);

function counted(names) {
  const counts = new Map();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return counts;
}

/** The ids that a template may become; null where it has no word of its own and so only hands others on. */
function become(template) {
  const parts = template.split(PUT_IN);
  return parts.some((part) => /[a-z]/.test(part)) ? new RegExp(`^${parts.join('[\\w-]+')}$`) : null;
}

/** The short id for each id of these catalogues that is said in the sources and stands nowhere else in them. */
export function shortIds(sources, catalogues) {
  const code = sources.join('\n');
  const said = counted(every(code, SAID));
  const quoted = counted(every(code, QUOTED));
  const built = every(code, BUILT).map(become).filter(Boolean);
  const written = catalogues.flatMap(messages);
  const inOthers = new Set(written.flatMap(({ text }) => putIn(text)));
  const alone = written
    .map(({ id }) => id)
    .filter((id) => said.has(id) && said.get(id) === quoted.get(id) && !inOthers.has(id))
    .filter((id) => !built.some((pattern) => pattern.test(id)));
  return new Map(alone.sort().map((id, place) => [id, `w${place.toString(36)}`]));
}

/** A source that says the short ids. */
export const sayingShort = (source, short) =>
  source.replace(SAID, (said, id) => `${said.slice(0, -id.length - 1)}${short.get(id) ?? id}'`);

/** A catalogue without its notes and the blanks that Fluent does not read, under the short ids. */
export const shipped = (catalogue, short = new Map()) =>
  catalogue
    .replace(/^(#.*)?\n/gm, '')
    .replace(/^([a-zA-Z][\w-]*) *= */gm, (_, id) => `${short.get(id) ?? id}=`)
    .replace(/\{ +/g, '{')
    .replace(/ +\}/g, '}');
