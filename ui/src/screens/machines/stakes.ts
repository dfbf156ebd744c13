// What a failure at a place would do, and how hard the place is on its hose.
import type { Given } from '../../backend';
import type { Demand, Place, RecordEvent, Stake, Versioned } from '../../backend/types';

export const DEMANDS: readonly Demand[] = ['normal', 'harsh'];
/** Grades of consequence that an owner may give: 1 the least. */
export const CONSEQUENCES = [1, 2, 3, 4, 5] as const;

/** What a person says of it. */
export interface Said {
  /** Null: as the machine. */
  demand: Demand | null;
  /** Null: nobody looked; none: looked, and none of them. */
  stakes: readonly Stake[] | null;
  /** The owner's own word over the table; null: the table's. */
  consequence: number | null;
}

export const saidOf = ({ demand, stakes, consequence }: Place): Said => ({
  demand: demand ?? null,
  stakes: stakes ?? null,
  consequence: consequence ?? null,
});

/** With that stake, or without it where it stood. */
export function toggled(stakes: Said['stakes'], stake: Stake): Stake[] {
  const now = stakes ?? [];
  return now.includes(stake) ? now.filter((one) => one !== stake) : [...now, stake];
}

/** The event that writes it so. */
export function withSaid({ version, ...place }: Versioned<Place>, said: Said): Given<RecordEvent> {
  const { demand, consequence } = said;
  const service = { ...place.service, duties: place.service.duties ?? [] };
  const stakes = said.stakes === null ? null : [...said.stakes];
  return { body: { kind: 'place-set', ...place, service, demand, stakes, consequence }, builds_on: [version] };
}
