// Signs of a hose looked at in place, by where to look. Grades and what they do are the table's.
import type { Graded, SignEntry, SignGroup, Verdict } from '../../backend/types';

/** In the order that an eye goes along a hose. */
const GROUPS: readonly SignGroup[] = ['cover', 'shape', 'end', 'leak', 'routing', 'marking', 'other'];

/** The signs of each group that has any. */
export function grouped(signs: readonly SignEntry[]): { group: SignGroup; entries: SignEntry[] }[] {
  return GROUPS.map((group) => ({ group, entries: signs.filter((one) => one.group === group) })).filter(
    ({ entries }) => entries.length > 0,
  );
}

/** With that sign as the table grades it; without it where it stood. Nothing left is no answer, not "nothing wrong". */
export function withSign(findings: readonly Graded[] | null, { code, grade }: SignEntry): Graded[] | null {
  const others = (findings ?? []).filter(({ sign }) => sign !== code);
  const stood = others.length < (findings ?? []).length;
  const now = stood ? others : [...others, { sign: code, grade }];
  return now.length > 0 ? now : null;
}

/** With that sign graded as seen: never lighter than the table has it. */
export function withGrade(findings: readonly Graded[] | null, entry: SignEntry, grade: Verdict): Graded[] {
  const graver = entry.grade === 'stop' ? 'stop' : grade === 'stop' ? 'stop' : 'caution';
  return (findings ?? []).map((one) => (one.sign === entry.code ? { ...one, grade: graver } : one));
}
