// What stands in the cells of one hose.
import { daysUntil } from '../due/due';
import { years } from '../machines/ages';
import { day } from '../../words/date';
import { fixed, number } from '../../words/number';
import { hoseShort } from '../../words/spec';
import { say, sayCode } from '../../words/words';
import type { HoseRow } from './asked';

export interface Cells {
  machine: string;
  place: string;
  hose: string;
  /** In words, for who does not see the bar. */
  age: string;
  due: string;
  /** What falls due then; empty where nothing does. */
  dueOf: string;
  failures: string;
}

/** A hose in the words of its row. What nobody knows is said, never left blank. */
export function cells(row: HoseRow, on: string): Cells {
  return {
    machine: row.at?.machine_name ?? sayCode(`hoses-state-${row.state}`) ?? row.state,
    place: placeOf(row),
    hose: hoseOf(row),
    age: ageOf(row),
    due: dueIn(row.due, row.state, on),
    dueOf: row.due_what === null ? '' : say(`hoses-due-of-${row.due_what}`),
    failures: row.failures > 0 ? number(row.failures, 0) : '',
  };
}

/** Its place by number and name; of one that sits nowhere its code. */
export function placeOf({ at, code }: HoseRow): string {
  if (!at) return code;
  return [at.number === null ? null : number(at.number, 0), at.place_name].filter((part) => part).join(' · ');
}

/** Its age; one that was found in place is at least that old. */
export function ageOf({ age_years: age, at_least }: HoseRow): string {
  if (age === null) return say('hoses-age-unknown');
  const known = fixed(age, 1);
  return say('due-years', { years: at_least ? say('hose-at-least', { years: known }) : known });
}

/** Standard type and size, short. */
export function hoseOf({ standard, type, dn }: HoseRow): string {
  return (standard && type && dn ? hoseShort({ standard, type, dn }) : null) ?? say('hose-not-known');
}

/** The nearest days are counted, later ones named, and what is long past is counted in years. */
const COUNTED_DAYS = 60;

function dueIn(due: string | null, state: string, on: string): string {
  if (due === null) return state === 'fitted' || state === 'made' ? say('hoses-due-unknown') : '';
  const days = daysUntil(due, on);
  if (days < -COUNTED_DAYS) return say('due-over-by', { years: number(years(due, on), 1) });
  if (days <= 0) return say('hoses-due-past', { days: -days, shown: number(-days, 0) });
  if (days <= COUNTED_DAYS) return say('due-in-days', { days, shown: number(days, 0) });
  return day(due);
}
