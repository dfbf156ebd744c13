// What the table of hoses shows, and what it asks the register for it.
import type { Answer, Question } from '../../backend';

type Asked = Question<'desk.hoses'>;
export type HoseRow = Answer<'desk.hoses'>['rows'][number];
export type Glance = Answer<'desk.glance'>;
export type HoseSort = NonNullable<Asked['sort']>;
/** Which hoses: the same for the table, what stands over it and what is done with all of them. */
export type Filter = Omit<Question<'desk.codes'>, 'on'>;

/** The filters that are set, without those that leave everything. */
export function filterOf(words: string, filter: Filter): Filter {
  const text = words.trim();
  const set = Object.entries(filter).filter(([, value]) => value !== null && value !== undefined && value !== false);
  return { ...Object.fromEntries(set), ...(text === '' ? {} : { words: text }) };
}

/** Which way a column is sorted when it is first chosen: what is most urgent or most first. */
export const FALLING: readonly HoseSort[] = ['age', 'failures', 'fitted'];
