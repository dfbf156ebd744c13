// How parts, readings and their values are said.
import type { CallError } from '../../backend';
import type { Draft } from '../../components/keypad.svelte';
import { MM_PER_INCH, angle, inches, length, number, withUnit } from '../../words/number';
import { say, sayCode } from '../../words/words';
import { kindOf, roleOf, isMate, type Half, type Key } from './keys';
import { mmOf, padFor, textOf } from './readings';

const code = (key: string) => key.replaceAll('_', '-');

/** The part by its name: `End A`, `machine’s half of A`. */
export function partName(half: Half): string {
  const role = roleOf(half);
  if (role === null) return say('find-part-hose');
  return isMate(half) ? say('find-part-mate', { role }) : say('find-part-end', { role });
}

/** What is read: `Thread Ø, inside` where it is known which half. */
export function keyName(key: Key, gender = ''): string {
  return sayCode(`find-key-${code(key)}-${gender}`) ?? sayCode(`find-key-${code(key)}`) ?? key;
}

/** What to do, after "Next:" and as a task: `gauge the seat`. */
export const keyTask = (key: Key): string => sayCode(`find-do-${code(key)}`) ?? keyName(key);

/** Where the tool goes, in a few words. */
export const toolOf = (key: Key, gender = ''): string =>
  sayCode(`find-tool-${code(key)}-${gender}`) ?? sayCode(`find-tool-${code(key)}`) ?? '';

/** How it is taken and what goes wrong, in full. */
export const howOf = (key: Key, gender = ''): string =>
  sayCode(`find-how-${code(key)}`) ?? sayCode(`how-${key}-${gender}`) ?? sayCode(`how-${key}`) ?? '';

/** What a thing picked is called. */
export const optionName = (key: Key, option: string): string =>
  sayCode(`find-is-${code(key)}-${code(option.toLowerCase())}`) ?? option;

/** What tells it apart; empty where its name says it. */
export const optionNote = (key: Key, option: string): string =>
  sayCode(`find-sign-${code(key)}-${code(option.toLowerCase())}`) ?? '';

/** A form of an end: any elbow by its angle. */
export function formName(form: string): string {
  const elbow = /^elbow([\d.]+)$/.exec(form);
  return elbow ? say('find-form-elbow', { angle: angle(Number(elbow[1]), 1) }) : optionName('form', form);
}

/** A reading's value as it is written, in the unit it was read in. */
export function valueText(key: Key, draft: Draft | null): string {
  if (!draft) return '';
  const text = textOf(draft);
  switch (kindOf(key)) {
    case 'length': {
      const { whole, top, bottom } = padFor(key, draft).shown;
      return withUnit(top ? `${whole ? `${whole} ` : ''}${top}/${bottom}` : whole, draft.unit);
    }
    case 'gauge':
      return draft.unit === 'in' ? say('find-tpi', { count: text }) : withUnit(text, 'mm');
    case 'choice':
      return key === 'form' ? formName(text) : optionName(key, text);
    default:
      return text;
  }
}

/** A figure on a dimension of a drawing: millimetres without their unit. */
export function figureText(key: Key, draft: Draft | null): string {
  const mm = mmOf(key, draft);
  return mm === null ? valueText(key, draft) : number(mm, 2);
}

/** Why a number can not be, in the unit it was typed in: the use case tells lengths in millimetres. */
export function refusal(problem: CallError, key: Key, draft: Draft | null, gender = ''): string {
  const what = keyName(key, gender);
  const [, low, high] = / between ([\d.]+) and ([\d.]+)$/.exec(problem.message) ?? [];
  if (!low || !high || !draft || mmOf(key, draft) === null) return problem.message.replace(problem.field, what);
  const bound = (text: string) => {
    const mm = Number(text);
    if (draft.unit !== 'in') return length(mm, 1);
    return withUnit(number(mm / MM_PER_INCH, mm < MM_PER_INCH ? 3 : 1), 'in');
  };
  return say('find-refused', { what, value: valueText(key, draft), low: bound(low), high: bound(high) });
}

/** Breaks words into lines of about that many letters: drawings have no wrapping of their own. */
export function inLines(text: string, letters: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** The same length in the other unit. */
export function otherUnit(key: Key, draft: Draft | null): string {
  const mm = mmOf(key, draft);
  if (!draft || mm === null) return '';
  return draft.unit === 'in' ? length(mm, 2) : withUnit(inches(mm), 'in');
}
