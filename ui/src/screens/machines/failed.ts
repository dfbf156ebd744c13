// What failed at a place, in words.
import type { Stay } from '../../backend/types';
import { counted } from '../../words/number';
import { say } from '../../words/words';
import type { Failures } from './ages';
import { stayText } from './words';

/** From so many failures on, making the same again is not the first thing to do. */
const REPEATED = 2;

export const repeated = (failed: Failures): boolean => failed.times >= REPEATED;

/** `once`, `twice`, `3 times`. */
export const timesText = (times: number): string => say('place-times', counted(times));

/** `abrasion twice, bent too tight once`. */
export function causesText(failed: Failures, cause: (code: string) => string): string {
  return failed.causes
    .map(({ code, times }) => say('place-cause-times', { cause: cause(code), times: timesText(times) }))
    .join(', ');
}

/** What a stay came to: since when, until when, why it failed and what was seen. */
export function stayLine(stay: Stay, cause: (code: string) => string): string {
  const failed = stay.cause === null ? null : say('place-stay-failed', { cause: cause(stay.cause) });
  return [stayText(stay), failed, stay.note].filter((part) => part).join('\u00a0· ');
}
