// What a failure at a place would do, and how hard the place is on its hose.
import type { Given } from '../../backend';
import type { Demand, Place, RecordEvent, Stake, Versioned } from '../../backend/types';

export const DEMANDS: readonly Demand[] = ['normal', 'harsh'];
/** What may stand beside a place. */
export const STAKES: readonly Stake[] = ['someone-beside', 'load-held-up', 'hot-surface', 'remote'];
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

/** The event that writes it so: what nobody said any more is left out. */
export function withSaid({ version, ...place }: Versioned<Place>, said: Said): Given<RecordEvent> {
  const { demand: _demand, stakes: _stakes, consequence: _consequence, ...rest } = place;
  const service = { ...place.service, duties: place.service.duties ?? [] };
  return {
    body: {
      kind: 'place-set',
      ...rest,
      service,
      ...(said.demand && { demand: said.demand }),
      ...(said.stakes && { stakes: [...said.stakes] }),
      ...(said.consequence !== null && { consequence: said.consequence }),
    },
    builds_on: [version],
  };
}
