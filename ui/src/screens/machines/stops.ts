// What must not run on, in words: a finding, a rule of the owner's, or what the place asks. The verdicts are the register's.
import type { DueLine } from '../../backend/types';
import { day } from '../../words/date';
import { say } from '../../words/words';
import type { Row } from '../parts/Rows.svelte';

/** Why it must not run on. */
export function stopWhy(due: DueLine): string {
  if (due.seen) return due.seen.name;
  if (due.what === 'asked') return [say('place-over'), due.asked?.why].filter((part) => part).join(': ');
  return say('machines-stopped-rule');
}

/** A thing that must not run on as a line: why, where, and since when or by whose word. */
export function stoppedRow(due: DueLine): Omit<Row, 'id'> {
  const place = due.at && say('machines-place', { number: due.at.number ?? '', name: due.at.place_name ?? '' });
  return {
    title: stopWhy(due),
    note: place ?? due.code,
    more: due.seen
      ? say('machines-stopped-seen', { day: day(due.seen.seen_on), code: due.code })
      : [due.rule?.why, due.code].filter((part) => part).join(' \u00b7 '),
    sign: 'stop',
  };
}

/** What must not run on, under its place. */
export function stopsByPlace(stops: readonly DueLine[]): ReadonlyMap<string, DueLine> {
  return new Map(stops.toReversed().flatMap((due) => (due.at ? [[due.at.place, due] as const] : [])));
}
