// What is kept, in the groups and words that a person looks through. Sums, low marks and prices are the register's.
import type { Answer, Question } from '../../backend';
import type { HoseRef } from '../../backend/types';
import { number, withUnit } from '../../words/number';
import type { WordId } from '../../words/ids';
import { say } from '../../words/words';
import { taped, type LengthUnit } from '../make/lengths';
import type { Row } from '../parts/Rows.svelte';

export type List = Answer<'stock.list'>;
export type HoseRow = List['hoses'][number];
export type PieceRow = HoseRow['pieces'][number];
export type Counted = List['items'][number];
export type Change = Question<'stock.change'>['changes'][number];
export type Item = Counted['item'];
export type Kind = Counted['kind'];
export type Said = List['said'][number];
export type NeedLine = Answer<'stock.need'>['lines'][number];
export type Unit = 'pieces' | 'millimetres';

export const KINDS = {
  hose: 'shelf-kind-hose',
  end: 'shelf-kind-end',
  ferrule: 'shelf-kind-ferrule',
  adapter: 'shelf-kind-adapter',
  sleeve: 'shelf-kind-sleeve',
  seal: 'shelf-kind-seal',
  other: 'shelf-kind-other',
} as const satisfies Record<Kind, WordId>;
export const kinds = Object.keys(KINDS) as Kind[];

/** One thing on the shelf: a piece of hose, the hose as a whole, or what is counted. */
export type Shelved =
  | { of: 'piece'; id: string; hose: HoseRow; piece: PieceRow }
  | { of: 'hose'; id: string; hose: HoseRow }
  | { of: 'item'; id: string; item: Counted };

export interface Group {
  id: Kind | 'low';
  title: string;
  things: Shelved[];
}

/** Shorter than this, a tape measures it; longer, it is told in metres or feet. */
const TAPE_MM = 2000;
const FOOT_MM = 304.8;

/** A length of hose as it is told: a reel in metres or feet, an offcut by the tape. */
export function stretch(mm: number, unit: LengthUnit): string {
  if (Math.abs(mm) < TAPE_MM) return taped(mm, unit);
  return unit === 'inch' ? withUnit(number(mm / FOOT_MM, 1), 'ft') : withUnit(number(mm / 1000, 2), 'm');
}

/** So many of something: `3`, `1.18 m`. */
export function amount(quantity: number, of: Unit, unit: LengthUnit): string {
  return of === 'millimetres' ? stretch(quantity, unit) : number(quantity, 0);
}

/** Which other stores have some, each with how much. */
export const where = (others: NeedLine['elsewhere'], of: Unit, unit: LengthUnit): string =>
  others.map((one) => `${one.store} ${amount(one.quantity, of, unit)}`).join(', ');

/** What is low first, then kind by kind. */
export function grouped({ hoses, items }: List): Group[] {
  const low: Shelved[] = [
    ...hoses.filter((hose) => hose.low).map(asHose),
    ...hoses.flatMap(asPieces).filter((one) => one.of === 'piece' && one.piece.negative),
    ...items.filter((item) => item.low || item.negative).map(asItem),
  ];
  const groups: Group[] = [
    { id: 'low', title: say('shelf-low'), things: low },
    { id: 'hose', title: say(KINDS.hose), things: hoses.flatMap(asPieces) },
    ...kinds
      .filter((kind) => kind !== 'hose')
      .map((kind) => ({
        id: kind,
        title: say(KINDS[kind]),
        things: items.filter((item) => item.kind === kind).map(asItem),
      })),
  ];
  return groups.filter(({ things }) => things.length > 0);
}

/** What names a counted thing in one bin. */
export const itemId = (store: string, bin: string, item: Item): string =>
  `item ${store} ${bin} ${JSON.stringify(item)}`;

const asItem = (item: Counted): Shelved => ({ of: 'item', id: itemId(item.store, item.bin, item.item), item });
const asHose = (hose: HoseRow): Shelved => ({ of: 'hose', id: `hose ${hose.store} ${hose.name}`, hose });
/** Of a hose whose pieces are used up its own row stays: it has a low mark and a price. */
const asPieces = (hose: HoseRow): Shelved[] =>
  hose.pieces.length === 0
    ? [asHose(hose)]
    : hose.pieces.map((piece) => ({ of: 'piece', id: `piece ${piece.piece}`, hose, piece }));

/** The thing of that id as it stands now. */
export function shelved(list: List, id: string): Shelved | null {
  return (
    [...grouped(list).flatMap(({ things }) => things), ...list.hoses.map(asHose)].find((one) => one.id === id) ?? null
  );
}

/** How many things are low; each once. */
export const lowCount = (list: List): number => grouped(list).find(({ id }) => id === 'low')?.things.length ?? 0;

const parts = (...some: (string | null | undefined | false)[]): string => some.filter(Boolean).join(' · ');

/** Its bin; where nobody said, that. */
export const binWords = (bin: string): string => (bin ? say('shelf-in-bin', { bin }) : say('shelf-no-bin'));

/** One row of the list; the store is named where more than one is shown. */
export function rowOf(thing: Shelved, unit: LengthUnit, withStore: boolean): Row {
  if (thing.of === 'item') {
    const { name, store, bin, quantity, in_store, low_mark, low, negative } = thing.item;
    const elsewhere = in_store !== quantity && say('shelf-in-all', { count: number(in_store, 0) });
    return {
      id: thing.id,
      title: name,
      note: parts(withStore && store, binWords(bin), elsewhere),
      more: negative
        ? say('shelf-negative')
        : low && low_mark !== null
          ? say('shelf-low-at', { mark: number(low_mark, 0) })
          : undefined,
      figure: number(quantity, 0),
      sign: negative || low ? 'caution' : undefined,
    };
  }
  const { hose } = thing;
  if (thing.of === 'hose') {
    return {
      id: thing.id,
      title: hose.name,
      note: parts(withStore && hose.store, say('shelf-pieces', { count: hose.pieces.length })),
      more:
        hose.low && hose.low_mark_mm !== null
          ? say('shelf-low-at', { mark: stretch(hose.low_mark_mm, unit) })
          : undefined,
      figure: stretch(hose.total_mm, unit),
      sign: hose.low ? 'caution' : undefined,
    };
  }
  const { piece } = thing;
  return {
    id: thing.id,
    title: hose.name,
    note: parts(say(SORTS[piece.sort]), withStore && hose.store, binWords(piece.bin), piece.label),
    more: piece.negative ? say('shelf-negative') : piece.useful === false ? say('shelf-not-useful') : undefined,
    figure: stretch(piece.length_mm, unit),
    sign: piece.negative ? 'caution' : undefined,
  };
}

export const SORTS = { reel: 'shelf-reel', offcut: 'shelf-offcut' } as const;

/** The bins of a store that something lies in, in their order. */
export function binsOf({ hoses, items }: List, store: string): string[] {
  const all = [
    ...hoses.filter((hose) => hose.store === store).flatMap((hose) => hose.pieces.map(({ bin }) => bin)),
    ...items.filter((item) => item.store === store).map(({ bin }) => bin),
  ];
  return [...new Set(all)]
    .filter((bin) => bin !== '')
    .sort((one, other) => one.localeCompare(other, undefined, { numeric: true }));
}

/** The hose that a thing is; null for anything else. */
export const hoseOf = (item: Item): HoseRef | null =>
  typeof item === 'object' && item.kind === 'hose' ? { standard: item.standard, type: item.type, dn: item.dn } : null;
