// What stands on the record after a hose was looked at in place.
import type { Question } from '../../backend';
import type { TagCode, Verdict } from '../../backend/types';

export interface Seen {
  code: TagCode;
  date: string;
  grade: Verdict;
  /** What was seen, by its code among the causes of failure; null: nothing was found. */
  sign: string | null;
  words: string;
}

/** The inspection, and what was said of it as a remark on the hose, all or none. */
export function inspected({ code, date, grade, sign, words }: Seen): Question<'register.record'>['events'] {
  const findings = sign === null ? [] : [{ sign, grade }];
  const text = words.trim();
  return [
    { body: { kind: 'inspected', code, date, findings } },
    ...(text === '' ? [] : [{ body: { kind: 'noted' as const, about: { hose: code }, text } }]),
  ];
}
