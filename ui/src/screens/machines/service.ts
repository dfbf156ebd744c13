// What a place asks of its hose: each value by its name, and the place with one of them changed.
import type { Given } from '../../backend';
import type { Duty, Line, Place, RecordEvent, Service, Versioned } from '../../backend/types';

/** A value of a service. */
export type ServiceKey = Exclude<keyof Service, 'estimated'>;

/** What is shown first, by what a check asks first. */
export const serviceKeys: readonly ServiceKey[] = [
  'line',
  'working_pressure_bar',
  'relief_bar',
  'surge_pressure_bar',
  'fluid',
  'fluid_max_c',
  'fluid_min_c',
  'ambient_max_c',
  'flow_l_min',
  'bend_radius_mm',
  'vacuum_kpa_abs',
  'duties',
];

/** What stands under a name; null is not known. The place's own line stands where its service names none. */
export function valueOf(place: Place, key: ServiceKey): number | string | Duty[] | null {
  const service: Given<Service> = place.service;
  if (key === 'line') return service.line ?? place.line ?? null;
  if (key === 'duties') return (service.duties ?? []).length > 0 ? service.duties : null;
  return service[key] ?? null;
}

/**
 * What stands under a name where the place itself says nothing: of its circuit, or of the hose that sits or last sat there.
 * The next job begins with it.
 */
export function recordedOf(place: Place, key: ServiceKey, begins: Given<Service>): ReturnType<typeof valueOf> {
  if (valueOf(place, key) !== null) return null;
  return valueOf({ ...place, line: null, service: begins as Service }, key);
}

/** A value of a service; null is not known. */
export type ServiceValue = number | string | readonly Duty[] | null;

/** The place with one value changed and the rest as it stands; null strikes it out. */
export function withValue<P extends Given<Place>>(place: P, key: ServiceKey, value: ServiceValue): P {
  const { service } = place;
  return {
    ...place,
    line: key === 'line' ? (value as Line | null) : place.line,
    service: { ...service, duties: service.duties ?? [], [key]: key === 'duties' ? (value ?? []) : value },
  };
}

/** The event that writes it so. */
export function changed(place: Versioned<Place>, key: ServiceKey, value: ServiceValue): Given<RecordEvent> {
  const { version, ...now } = withValue(place, key, value);
  return { body: { kind: 'place-set', ...now }, builds_on: [version] };
}

/** Above this a pressure is more likely a slip than a line: 700 bar is where hydraulics ends (common practice). */
export const MOST_BAR = 700;

/** A pressure that no hydraulic line has. */
export function farOut(key: ServiceKey, value: ServiceValue): boolean {
  return key.endsWith('_pressure_bar') || key === 'relief_bar' ? typeof value === 'number' && value > MOST_BAR : false;
}
