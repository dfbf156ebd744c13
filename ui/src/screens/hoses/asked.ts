// What the table of hoses shows, and what it asks the register for it.
import type { Answer } from '../../backend';
import type { Given } from '../../backend/backend';
import type { HoseFilter, HoseSort } from '../../backend/types';

export type { HoseRow, HoseSort } from '../../backend/types';
export type Glance = Answer<'desk.glance'>;
/** Which hoses: the same for the table, what stands over it and what is done with all of them. */
export type Filter = Given<HoseFilter>;

/** The filters that are set, without those that leave everything. */
export function filterOf(words: string, filter: Filter): Filter {
  const text = words.trim();
  const set = Object.entries(filter).filter(([, value]) => value !== null && value !== undefined);
  return { ...Object.fromEntries(set), ...(text === '' ? {} : { words: text }) };
}

/** Which way a column is sorted when it is first chosen: what is most urgent or most first. */
export const FALLING: readonly HoseSort[] = ['age', 'failures', 'fitted'];
