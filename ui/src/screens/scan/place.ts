import type { PlaceAt } from '../../backend/types';

/** Where a hose sits: machine, number and name of the place; null for none. */
export function placeWords(at: PlaceAt | null): string | null {
  if (!at) return null;
  return [at.machine_name, at.number, at.place_name].filter((part) => part !== null).join(' · ');
}
