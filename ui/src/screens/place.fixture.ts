import type { PlaceAt } from '../backend/types';

/** A place for tests: on a machine that stands at no site. */
export const placeAt: PlaceAt = {
  place: 'p',
  number: 14,
  place_name: 'Stick cylinder',
  machine: 'm',
  machine_name: 'Excavator 3',
  site: null,
  site_name: null,
};
