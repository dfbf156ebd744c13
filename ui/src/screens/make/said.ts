// What the bench was judged, in words: each code has a title and what to do.
import { sayCode } from '../../words/words';

/** What is so. */
export function titleOfCode(code: string): string {
  return sayCode(`bench-${code}`) ?? code;
}

/** What to do about it. */
export function howOf(code: string): string {
  return sayCode(`bench-${code}-how`) ?? '';
}
