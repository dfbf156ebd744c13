// The ways into a job from a place or a hose. Nothing is judged here: the check is the job's next step.
import type { Given } from '../../backend';
import type { Again, Assembly, Circuit, Place, PlaceAt, Service, TagCode } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { begunWith } from '../parts/place-ports';

/** What is known where the job starts. */
export interface Ground {
  at: PlaceAt | null;
  /** The hose that sits there and comes off. */
  replaces: TagCode | null;
  place: Given<Place> | null;
  circuit: Circuit | null;
  /** The hose that sits there, or the last that did. */
  assembly: Assembly | null;
  /** What is made where the same is made again, as the register says it. */
  again: Given<Again> | null;
}

/** What a hose is checked for: of a place, its circuit, and the hose that sat or goes there. */
type Asks = Pick<Ground, 'place' | 'circuit'> & { assembly: { service: Given<Service> } | null };

/**
 * What the check is asked of a hose that sits at a place or is carried to it: the records of it put together, none of them
 * judged. The place's own figures stand over its circuit's, and these over those of the hose. Of what is made anew there the
 * register says it (`again`); here it is a hose that is there already, and what a person who fits it may still change.
 */
export function serviceOf(ground: Asks): Given<Service> {
  const known = (service: Given<Service> | undefined) =>
    Object.fromEntries(Object.entries(service ?? {}).filter(([, value]) => value !== null && value !== undefined));
  const line = ground.place?.line ?? undefined;
  const relief = ground.circuit?.relief_bar ?? undefined;
  const duties = new Set([...(ground.assembly?.service.duties ?? []), ...(ground.place?.service.duties ?? [])]);
  return {
    ...(line === undefined ? {} : { line }),
    ...known(ground.assembly?.service),
    ...(relief === undefined ? {} : { relief_bar: relief }),
    ...known(ground.place?.service),
    duties: [...duties],
  };
}

/** Made again as it was: straight to the check. Null where no spec is known. */
export function sameForSame({
  at,
  replaces,
  place,
  again,
}: Omit<Ground, 'circuit' | 'assembly'>): Partial<JobDoc> | null {
  if (!again?.spec) return null;
  return {
    step: 'check',
    at,
    replaces,
    spec: structuredClone(again.spec),
    service: withDuties(again.service),
    ...begunWith(place),
    sameForSame: true,
  };
}

/** A hose that sits nowhere, made again for what it was made for. */
export const likeIt = (assembly: Assembly): Partial<JobDoc> => ({
  step: 'check',
  spec: structuredClone(assembly.spec),
  service: withDuties(assembly.service),
  sameForSame: true,
});

/** The long way: the old hose is measured first. */
export function measure({ at, replaces, place, again }: Omit<Ground, 'circuit' | 'assembly'>): Partial<JobDoc> {
  return { step: 'find', at, replaces, service: withDuties(again?.service), ...begunWith(place) };
}

const withDuties = (service?: Given<Service>) => ({ ...service, duties: service?.duties ?? [] });

/** A hose that is made and tagged goes on its machine. */
export function fit(assembly: Assembly, made: string): Partial<JobDoc> {
  return {
    step: 'fit',
    code: assembly.code,
    spec: structuredClone(assembly.spec),
    service: withDuties(assembly.service),
    written: { made, taken: true, fitted: null },
  };
}
