// What stands on the record after a hose was looked at in place.
import type { Question } from '../../backend';
import type { Graded, TagCode } from '../../backend/types';

export interface Seen {
  code: TagCode;
  date: string;
  /** What was seen; empty: nothing was found. */
  findings: readonly Graded[];
  words: string;
}

/** The inspection, and what was said of it as a remark on the hose, all or none. It was looked at in place, not opened. */
export function inspected({ code, date, findings, words }: Seen): Question<'register.record'>['events'] {
  const text = words.trim();
  return [
    { body: { kind: 'inspected', code, date, findings: [...findings] } },
    ...(text === '' ? [] : [{ body: { kind: 'noted' as const, about: { hose: code }, text } }]),
  ];
}
