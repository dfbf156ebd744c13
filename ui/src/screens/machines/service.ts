// What a place asks of its hose: each value by its name, and the place with one of them changed.
import type { Given } from '../../backend';
import type { Duty, Line, Place, RecordEvent, Service, Versioned } from '../../backend/types';

/** A value of a service. */
export type ServiceKey = keyof Service;

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

/** The event that changes one value and keeps the rest as it stands; null strikes it out. */
export function changed(
  place: Versioned<Place>,
  key: ServiceKey,
  value: number | string | readonly Duty[] | null,
): Given<RecordEvent> {
  const { version, ...now } = place;
  const service = { ...now.service, duties: now.service.duties ?? [], [key]: key === 'duties' ? (value ?? []) : value };
  const line = key === 'line' ? (value as Line | null) : now.line;
  return { body: { kind: 'place-set', ...now, line, service }, builds_on: [version] };
}
