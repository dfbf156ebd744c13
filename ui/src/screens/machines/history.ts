// What is on record of a hose, event by event, in words.
import type { Given } from '../../backend';
import type { EventRef, Graded, HoseShown, RecordEvent, Written } from '../../backend/types';
import { day } from '../../words/date';
import { number } from '../../words/number';
import type { WordId } from '../../words/ids';
import { say } from '../../words/words';
import { specLine } from '../../words/spec';
import { hoursAt, proofText } from './words';

/** Where an event's place and cause get their names. */
export interface Names {
  place: (id: string) => string;
  cause: (code: string) => string;
}

/** The places of a hose by name: `Excavator 3, 14 Stick cylinder, rod side`. */
export function placeNames(hose: HoseShown): ReadonlyMap<string, string> {
  return new Map(
    hose.stays.map(({ at }) => {
      const place = [at.number === null ? null : number(at.number, 0), at.place_name].filter((part) => part).join(' ');
      return [at.place, [at.machine_name, place].filter((part) => part).join(', ')];
    }),
  );
}

/** What an event says, in one line. */
export function saidBy({ body }: Written, names: Names): string {
  switch (body.kind) {
    case 'assembly-made':
      return parts(
        say('hose-did-made'),
        specLine(body.spec),
        body.assembled && say('hose-did-assembled', { day: day(body.assembled) }),
        proofText(body.proof),
      );
    case 'fitted': {
      const id: WordId = body.already_there ? 'hose-did-found' : 'hose-did-fitted';
      return parts(say(id, { day: day(body.date), place: names.place(body.place) }), atHours(body.hours));
    }
    case 'taken-off':
      return parts(
        say('hose-did-off', { day: day(body.date), place: names.place(body.place) }),
        atHours(body.hours),
        body.cause && names.cause(body.cause),
        body.note,
      );
    case 'inspected':
      return parts(say('hose-did-inspected', { day: day(body.date) }), ...foundText(body.findings, names));
    case 'surveyed':
      return parts(say('hose-did-surveyed', { day: day(body.date) }), body.note);
    case 'overridden':
      return say('hose-did-overridden', { reason: body.reason });
    case 'photo-added':
      return say('hose-did-photo');
    case 'tag-withdrawn':
      return say('hose-did-withdrawn', { reason: body.reason });
    case 'labelled':
      return say(body.how === 'printed' ? 'hose-did-labelled' : 'hose-did-label-seen');
    case 'noted':
      return say('hose-did-noted', { text: body.text });
    case 'voided':
      return say('hose-did-voided', { reason: body.reason });
    default:
      return body.kind;
  }
}

/** What was seen and how grave it is; of nothing found that it was so. */
function foundText(findings: readonly Graded[], names: Names): string[] {
  if (findings.length === 0) return [say('hose-grade-pass')];
  return findings.map(({ sign, grade }) =>
    say('hose-found', { what: names.cause(sign), grade: say(`hose-grade-${grade}`) }),
  );
}

const atHours = (hours: number | null | undefined) => (hours == null ? null : hoursAt(hours));

const parts = (...some: (string | null | undefined)[]): string => some.filter((part) => part).join('\u00a0· ');

/** The events that contradict each other, as they were written. */
export function versions(hose: HoseShown): Written[] {
  return hose.conflicts.flatMap((ref) => hose.history.find((one) => one.event === ref) ?? []);
}

/** The event that lets one version stand: it says the same and builds on all of them. Null where they are of different kinds, which no one version settles. */
export function settled(of: readonly Written[], stands: EventRef): Given<RecordEvent> | null {
  const chosen = of.find((one) => one.event === stands);
  if (!chosen || of.some((one) => one.body.kind !== chosen.body.kind)) return null;
  return { body: chosen.body, builds_on: of.map((one) => one.event) };
}
