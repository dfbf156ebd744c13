// A tag's code as it is typed. Whether it checks is said by the use cases, never here.

/** Lengths of the groups a code is written in; the last is the check character. */
export const GROUPS = [5, 5, 1] as const;
/** Letters of a whole code. */
export const WHOLE = 11;
/** A letter that is gone. */
export const GONE = '?';
/** Fewer known letters than these say nothing about which hose it is. */
const TELLING = 3;

/** The letter a key or a reader stands for; null for what no code has. `I` and `L` are one, `O` is nought. */
export function letter(key: string): string | null {
  const upper = key.toUpperCase();
  if (upper === 'I' || upper === 'L') return '1';
  if (upper === 'O') return '0';
  return /^[0-9A-HJKMNP-TV-Z?]$/.test(upper) ? upper : null;
}

/** The letters of a pasted or read text, no more than a code has. */
export function letters(text: string): string {
  return [...text]
    .map((key) => letter(key) ?? '')
    .join('')
    .slice(0, WHOLE);
}

/** Whether every letter stands. */
export function isWhole(typed: string): boolean {
  return typed.length === WHOLE && !typed.includes(GONE);
}

/** As it is written on a tag. */
export function grouped(typed: string): string {
  return [typed.slice(0, 5), typed.slice(5, 10), typed.slice(10)].filter(Boolean).join('-');
}

/** What to look for in the register: the beginning of each group; null while too little is known. */
export function beginnings(typed: string): string | null {
  const words = [typed.slice(0, 5), typed.slice(5, 10)].map((group) => group.split(GONE)[0] ?? '').filter(Boolean);
  return words.join('').length < TELLING ? null : words.join(' ');
}

/** Whether a code may be the one that was typed in part. */
export function fits(typed: string, code: string): boolean {
  const known = letters(code);
  return [...typed].every((typed, at) => typed === GONE || typed === known[at]);
}
