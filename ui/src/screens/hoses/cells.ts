// What stands in the cells of one hose.
import { daysUntil } from '../due/due';
import { day } from '../../words/date';
import { fixed, number } from '../../words/number';
import { hoseShort } from '../../words/spec';
import { say } from '../../words/words';
import type { HoseRow } from './asked';

export interface Cells {
  machine: string;
  place: string;
  hose: string;
  /** In words, for who does not see the bar. */
  age: string;
  due: string;
  failures: string;
}

/** A hose in the words of its row. What nobody knows is said, never left blank. */
export function cells(row: HoseRow, on: string): Cells {
  return {
    machine: row.machine_name ?? say(`hoses-state-${row.state}`),
    place:
      row.place === null
        ? row.code
        : [row.number === null ? null : number(row.number, 0), row.place_name].filter((part) => part).join(' · '),
    hose: hoseOf(row),
    age: row.age_years === null ? say('hoses-age-unknown') : say('due-years', { years: fixed(row.age_years, 1) }),
    due: dueIn(row.due, row.state, on),
    failures: row.failures > 0 ? number(row.failures, 0) : '',
  };
}

/** Standard type and size, short. */
export function hoseOf({ standard, type, dn }: HoseRow): string {
  return (standard && type && dn ? hoseShort({ standard, type, dn }) : null) ?? say('hose-not-known');
}

/** The nearest days are counted, later ones named. */
const COUNTED_DAYS = 60;

function dueIn(due: string | null, state: HoseRow['state'], on: string): string {
  if (due === null) return state === 'fitted' || state === 'made' ? say('hoses-due-unknown') : '';
  const days = daysUntil(due, on);
  if (days <= 0) return say('hoses-due-past', { days: -days, shown: number(-days, 0) });
  if (days <= COUNTED_DAYS) return say('due-in-days', { days, shown: number(days, 0) });
  return day(due);
}
