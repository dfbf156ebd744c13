// What is being taken in, as far as it is said.
import type { Gender, Tables } from '../../backend/types';
import type { Given } from '../../backend';
import { number } from '../../words/number';
import type { Change, Item, Kind } from './stock';

/** An end of the tables, as far as it is picked. */
export interface PickedEnd {
  family: string | null;
  size: string | null;
  gender: Gender | null;
}

/** What a person says of a thing that is taken in; what its kind has no use for stays as it is. */
export interface Loading {
  kind: Kind;
  hose: { standard: string; type: string } | null;
  /** Of the hose itself, or that an end or ferrule is for. */
  dn: number | null;
  sort: 'reel' | 'offcut';
  end: PickedEnd;
  form: string | null;
  series: string;
  /** The machine's side of an adapter; `end` is the hose's. */
  machine: PickedEnd;
  rating_bar: number | null;
  name: string;
  store: string;
  bin: string;
  label: string;
  made: string;
}

/** Every bore of the tables, the smallest first. */
export function boresOf({ hoses }: Tables): { id: string; label: string }[] {
  const bores = new Set(hoses.flatMap((hose) => hose.sizes.map((size) => size.dn)));
  return [...bores]
    .toSorted((one, other) => one - other)
    .map((dn) => ({ id: String(dn), label: `DN${number(dn, 1)}` }));
}

export const noEnd = (): PickedEnd => ({ family: null, size: null, gender: null });

/** Nothing said yet, for that store. */
export function nothingLoaded(store: string): Loading {
  return {
    kind: 'hose',
    hose: null,
    dn: null,
    sort: 'reel',
    end: noEnd(),
    form: null,
    series: '',
    machine: noEnd(),
    rating_bar: null,
    name: '',
    store,
    bin: '',
    label: '',
    made: '',
  };
}

/** What is kept; null while too little is said. */
export function itemOf(loading: Loading): Given<Item> | null {
  const { kind, hose, dn, end, form, machine, rating_bar } = loading;
  const name = loading.name.trim();
  const series = loading.series.trim();
  switch (kind) {
    case 'hose':
      return hose && dn !== null ? { kind, ...hose, dn } : null;
    case 'end':
      if (end.family === null || end.size === null || dn === null) return null;
      return { kind, family: end.family, size: end.size, dn, ...omit({ gender: end.gender, form, series }) };
    // Without its size nobody knows whether it goes on the hose in hand.
    case 'ferrule':
      return name && dn !== null ? { kind, name, dn } : null;
    case 'sleeve':
      return name ? { kind, name, ...omit({ dn }) } : null;
    case 'adapter':
      return name
        ? { kind, name, ...omit({ hose_side: sideOf(end), machine_side: sideOf(machine), rating_bar }) }
        : null;
    case 'seal':
      return name ? { kind, name } : null;
    default:
      return name || null;
  }
}

/** What is still to be said before it can be counted. */
export function ready(loading: Loading): boolean {
  return itemOf(loading) !== null && loading.store.trim() !== '';
}

/** The change that takes it in: so many, or a piece of that length. */
export function changeOf(loading: Loading, value: number): Change | null {
  const item = itemOf(loading);
  if (item === null) return null;
  const store = loading.store.trim();
  const bin = loading.bin.trim();
  if (typeof item === 'object' && item.kind === 'hose') {
    const { sort, made } = loading;
    const label = loading.label.trim();
    return {
      do: 'load-hose',
      store,
      hose: item,
      sort,
      length_mm: value,
      ...omit({ made, label, bin }),
    };
  }
  return { do: 'load', store, item, count: value, ...omit({ bin }) };
}

const sideOf = ({ family, size, gender }: PickedEnd) =>
  family !== null && size !== null ? { family, size, ...omit({ gender }) } : null;

/** What was said; what is blank was not. */
function omit<T extends object>(some: T): { [K in keyof T]?: NonNullable<T[K]> } {
  return Object.fromEntries(Object.entries(some).filter(([, value]) => value !== null && value !== '')) as {
    [K in keyof T]?: NonNullable<T[K]>;
  };
}
