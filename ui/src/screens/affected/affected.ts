// Rows of the tables that changed, in words.
import type { Answer } from '../../backend';
import { number } from '../../words/number';
import { say, sayCode } from '../../words/words';
import type { Row } from '../parts/Rows.svelte';

export type Changed = Answer<'register.affected'>['rows'][number];

/** The table and its row: `Hoses, EN 853 2SN DN16`. */
export function rowName({ table, row }: Changed): string {
  const name = sayCode(`affected-table-${table}`) ?? table;
  return row === null ? say('affected-table-not-known') : `${name}, ${row}`;
}

/** The hoses that rested on it. */
export function hoseRows({ hoses }: Changed): Row[] {
  return hoses.map(({ code, at, catalogue }) => ({
    id: code,
    title: at?.machine_name ?? say('due-not-fitted'),
    note: at
      ? say('due-row-place', { number: at.number === null ? '' : number(at.number, 0), name: at.place_name ?? '' })
      : code,
    more: say('affected-checked-by', { code, version: catalogue }),
  }));
}
