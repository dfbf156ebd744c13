// The ways into a job from a place or a hose. Nothing is judged here: the check is the job's next step.
import type { Given } from '../../backend';
import type { Assembly, Circuit, Place, PlaceAt, Service, Spec, TagCode } from '../../backend/types';
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
}

/** The spec that same-for-same repeats: that of the hose itself before the place's; null where neither names a hose. */
export function sameSpec(ground: Ground): Given<Spec> | null {
  const spec = ground.assembly?.spec ?? ground.place?.spec ?? null;
  return spec?.hose ? spec : null;
}

/** What a hose is checked for: of a place, its circuit, and the hose that sat or goes there. */
type Asks = Pick<Ground, 'place' | 'circuit'> & { assembly: { service: Given<Service> } | null };

/**
 * What the new hose has to stand: what is known of the place stands over the relief setting of its circuit, and that over
 * what the old hose was once checked for: a relief raised since then counts.
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
export function sameForSame(ground: Ground): Partial<JobDoc> | null {
  const spec = sameSpec(ground);
  if (!spec) return null;
  return {
    step: 'check',
    at: ground.at,
    replaces: ground.replaces,
    spec: structuredClone(spec),
    service: serviceOf(ground),
    ...begunWith(ground.place),
    sameForSame: true,
  };
}

/** The long way: the old hose is measured first. */
export function measure(ground: Ground): Partial<JobDoc> {
  return {
    step: 'find',
    at: ground.at,
    replaces: ground.replaces,
    service: serviceOf(ground),
    ...begunWith(ground.place),
  };
}

/** A hose that is made and tagged goes on its machine. */
export function fit(assembly: Assembly, made: string): Partial<JobDoc> {
  return {
    step: 'fit',
    code: assembly.code,
    spec: structuredClone(assembly.spec),
    service: { ...assembly.service, duties: assembly.service.duties ?? [] },
    written: { made, taken: true, fitted: null },
  };
}
