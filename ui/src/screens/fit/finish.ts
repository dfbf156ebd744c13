// What stands on the record once the hose is on: all of it in one transaction, or none.
import type { Question } from '../../backend';
import type { PlaceAt, TagCode } from '../../backend/types';
import { NOT_FAILED, type Fitting } from '../../state/job-doc';

type Events = Question<'register.record'>['events'];

/** The hose that goes on, where, and the one that comes off. */
export interface Change {
  on: TagCode;
  off: TagCode | null;
  at: PlaceAt;
  fit: Fitting;
  /** The day, where none was said. */
  today: string;
}

/** Off before on, then the hours; `fitted` is the one that the job remembers. */
export function fitEvents({ on, off, at, fit, today }: Change): { events: Events; fitted: number } {
  const date = fit.date ?? today;
  const hours = fit.hours === null ? {} : { hours: fit.hours };
  const events: Events = [];
  if (off) {
    events.push({
      body: {
        kind: 'taken-off',
        code: off,
        place: at.place,
        date,
        ...hours,
        ...(fit.cause && fit.cause !== NOT_FAILED && { cause: fit.cause }),
        ...(fit.note.trim() && { note: fit.note.trim() }),
      },
    });
  }
  const fitted = events.length;
  events.push({ body: { kind: 'fitted', code: on, place: at.place, date, already_there: false, ...hours } });
  if (fit.hours !== null && at.machine)
    events.push({ body: { kind: 'hours-read', machine: at.machine, hours: fit.hours, date } });
  return { events, fitted };
}
