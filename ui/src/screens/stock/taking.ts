// A bin that is being counted: what was counted so far, as it is kept on this device until it is saved or given up.
import type { Answer, Question } from '../../backend';
import { grouped, itemId, type List, type Shelved } from './stock';

/** How far a count has come. */
export interface Taking {
  store: string;
  /** Null counts the whole store. */
  bin: string | null;
  /** What was counted, by the thing's id. */
  counts: Record<string, Count>;
}

/** Pieces, or millimetres of one piece of hose: how much there is, and how much was known when it was counted. */
export interface Count {
  counted: number;
  known: number;
}

const KEY = 'hosewright-stock-take-2';

/** The count that was begun; null for none. */
export function begun(): Taking | null {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? 'null') as Taking | null;
  } catch {
    return null;
  }
}

export function keepTaking(taking: Taking | null): void {
  if (taking) localStorage.setItem(KEY, JSON.stringify(taking));
  else localStorage.removeItem(KEY);
}

const binOf = (thing: Shelved): string =>
  thing.of === 'item' ? thing.item.bin : thing.of === 'piece' ? thing.piece.bin : '';

/** How a bin's name is compared: as a person reads it, whatever its letters' case. */
const plain = (bin: string): string => bin.trim().toLowerCase();

/** What is known to lie in a bin: pieces of hose one by one, what is counted thing by thing. */
export function inBin(list: List, bin: string | null): Shelved[] {
  return grouped(list)
    .filter(({ id }) => id !== 'low')
    .flatMap(({ things }) => things)
    .filter((thing) => thing.of !== 'hose' && (bin === null || plain(binOf(thing)) === plain(bin)));
}

/** The first that was not counted yet, after that one and then from the start. */
export function nextOf(things: readonly Shelved[], counts: Taking['counts'], after: string): string | null {
  const at = things.findIndex(({ id }) => id === after);
  const order = [...things.slice(at + 1), ...things.slice(0, at + 1)];
  return order.find(({ id }) => !(id in counts))?.id ?? null;
}

/** How much of a thing is known. */
export const knownOf = (thing: Shelved): number =>
  thing.of === 'item' ? thing.item.quantity : thing.of === 'piece' ? thing.piece.length_mm : 0;

/** What changed since it was counted is to be counted again. */
export function withoutChanged(taking: Taking, changed: Answer<'stock.take'>['changed']): Taking {
  const ids = changed.map(({ item, piece, bin }) =>
    item === null ? `piece ${piece}` : itemId(taking.store, bin, item),
  );
  const counts = Object.fromEntries(Object.entries(taking.counts).filter(([id]) => !ids.includes(id)));
  return { ...taking, counts };
}

/** The question of a count. A piece of no length is not there. */
export function questionOf(taking: Taking, things: readonly Shelved[], save: boolean): Question<'stock.take'> {
  const { store, bin, counts } = taking;
  const counted = things.filter(({ id }) => id in counts);
  return {
    store,
    ...(bin !== null && { bin }),
    items: counted.flatMap((one) => {
      const count = counts[one.id];
      return one.of === 'item' && count ? [{ item: one.item.item, bin: one.item.bin, ...count }] : [];
    }),
    pieces: counted.flatMap((one) => {
      const count = counts[one.id];
      if (one.of !== 'piece' || !count) return [];
      const length = count.counted > 0 && { length_mm: count.counted };
      return [{ piece: one.piece.piece, ...length, known_mm: count.known }];
    }),
    save,
  };
}
