// A hose that sits on a machine already, put on record as a list of hoses would: made elsewhere, never checked here.
import type { Given, Question } from '../../backend';
import type { Place, Service, TagContent, Versioned } from '../../backend/types';

export interface Found {
  place: Versioned<Place>;
  /** What its record says; its code, spec and the pressure of its weakest part come from the check. */
  tag: TagContent;
  /** When it was assembled; null: nobody knows. */
  assembled: string | null;
  /** When it was fitted; null: it was found there, fitted nobody knows when. */
  fitted: string | null;
  today: string;
  program: string;
}

/** The hose, where it sits, and what belongs there where the place does not say it yet: all or none. */
export function onRecord({
  place,
  tag,
  assembled,
  fitted,
  today,
  program,
}: Found): Question<'register.record'>['events'] {
  const service: Given<Service> = { ...place.service, duties: place.service.duties ?? [] };
  const { version, ...now } = place;
  const belongs = { body: { kind: 'place-set' as const, ...now, service, spec: tag.spec }, builds_on: [version] };
  return [
    ...(place.spec ? [] : [belongs]),
    {
      body: {
        kind: 'assembly-made',
        code: tag.code,
        spec: tag.spec,
        service,
        assembled,
        proof: { state: 'not-proved', why: 'made-elsewhere' },
        pressure_bar: tag.pressure_bar,
        catalogue: tag.catalogue,
        program,
      },
    },
    {
      body: {
        kind: 'fitted',
        code: tag.code,
        place: place.place,
        date: fitted ?? today,
        already_there: fitted === null,
      },
    },
  ];
}
