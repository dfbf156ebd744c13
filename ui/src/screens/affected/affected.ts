// Rows of the tables that changed, in words.
import type { Answer } from '../../backend';
import { number } from '../../words/number';
import { say, sayCode } from '../../words/words';
import type { Row } from '../parts/Rows.svelte';

export type Changed = Answer<'register.affected'>['rows'][number];

/** The table and its row: `Hoses, EN 853 2SN DN16`. */
export function rowName({ table, row }: Changed): string {
  if (table === null) return say('affected-table-not-known');
  return `${sayCode(`affected-table-${table}`) ?? table}, ${row}`;
}

/** How a row stands now. */
export const standsWords = ({ stands }: Changed): string =>
  say(stands === 'gone' ? 'affected-gone' : stands === null ? 'affected-not-known' : 'affected-changed');

/** The hoses that rested on it. */
export function hoseRows({ hoses }: Changed): Row[] {
  return hoses.map(({ code, at, tables }) => ({
    id: code,
    title: at?.machine_name ?? say('due-not-fitted'),
    note: at
      ? say('due-row-place', { number: at.number === null ? '' : number(at.number, 0), name: at.place_name ?? '' })
      : code,
    more: say('affected-checked-by', { code, version: tables }),
  }));
}
