// What stands on the record once the hose is on: all of it in one transaction, or none.
import type { Question } from '../../backend';
import type { Finding, Place, PlaceAt, TagCode, Versioned } from '../../backend/types';
import { NOT_FAILED, type Fitting, type Oil, type Routing } from '../../state/job-doc';
import { say } from '../../words/words';
import { begunWith, oilLineOf, portsOf, routingOf } from '../parts/place-ports';

type Events = Question<'register.record'>['events'];

/** The hose that goes on, where, and the one that comes off. */
export interface Change {
  on: TagCode;
  off: TagCode | null;
  at: PlaceAt;
  fit: Fitting;
  /** The place as it stands on the record; null where it could not be read. */
  place: Versioned<Place> | null;
  /** What tells the hose from the one that belongs there, where a person fits it all the same. */
  allTheSame: readonly Finding[];
  /** What was said in this job of its ports and its oil. */
  said: { route: Routing; oil: Oil };
  /** The day, where none was said. */
  today: string;
}

/** Off before on, then the hours, then what the place keeps for the next job; `fitted` is the one that the job remembers. */
export function fitEvents({ on, off, at, fit, place, allTheSame, said, today }: Change): {
  events: Events;
  fitted: number;
} {
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
  if (allTheSame.length > 0)
    events.push({
      body: {
        kind: 'noted',
        about: { hose: on },
        text: say('fit-anyway-record', { place: at.place_name ?? '', why: allTheSame.map(({ why }) => why).join(' ') }),
      },
    });
  const kept = place && learned(place, said);
  if (kept) events.push(kept);
  return { events, fitted };
}

/** The place with what was said of its ports and oil; null where nothing was, or it says so already. */
function learned({ version, ...now }: Versioned<Place>, { route, oil }: Change['said']): Events[number] | null {
  const before = begunWith(now);
  const changed = (one: unknown, other: unknown) => JSON.stringify(one) !== JSON.stringify(other);
  const ports = portsOf(route);
  const line = oilLineOf(oil);
  const news = {
    ...(ports && changed(routingOf(ports), before.route) && { ports }),
    ...(line && changed(oil, before.oil) && { oil: line }),
  };
  if (Object.keys(news).length === 0) return null;
  return { body: { kind: 'place-set', ...now, ...news }, builds_on: [version] };
}
