import { describe, expect, it } from 'vitest';
import { changeOf, itemOf, nothingLoaded, ready } from './loading';
import { binsOf, grouped, lowCount, rowOf, shelved, stretch, type Counted, type HoseRow, type List } from './stock';
import { inBin, knownOf, nextOf, questionOf, withoutChanged } from './taking';

const hose = (more: Partial<HoseRow> = {}): HoseRow => ({
  hose: { kind: 'hose', standard: 'EN 853', type: '2SN', dn: 16 },
  name: 'EN 853 2SN DN16',
  store: 'Van 1',
  total_mm: 13_040,
  low_mark_mm: null,
  low: false,
  price: null,
  pieces: [
    {
      ...{ piece: 'p1', sort: 'reel', bin: 'B10', length_mm: 12_400, made: null, label: 'R3' },
      ...{ useful: true, negative: false, version: 'v1' },
    },
    {
      ...{ piece: 'p2', sort: 'offcut', bin: 'B2', length_mm: 640, made: null, label: '' },
      ...{ useful: true, negative: false, version: 'v2' },
    },
  ] as unknown as HoseRow['pieces'],
  ...more,
});

const counted = (name: string, more: Partial<Counted> = {}): Counted =>
  ({
    ...{ item: { kind: 'ferrule', name }, kind: 'ferrule', name, store: 'Van 1', bin: 'B2', quantity: 4 },
    ...{ low_mark: null, low: false, negative: false, price: null, unit: 'pieces' },
    ...more,
    in_store: more.in_store ?? more.quantity ?? 4,
  }) as Counted;

const list = (items: Counted[], hoses = [hose()]): List => ({ stores: [], hoses, items, said: [] }) as unknown as List;
const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');

describe('what is kept', () => {
  it('stands kind by kind, with what is low or less than nothing first', () => {
    const groups = grouped(
      list([
        counted('S16'),
        counted('S12', { low: true, low_mark: 5 }),
        counted('S20', { quantity: -2, negative: true }),
      ]),
    );
    expect(groups.map(({ id, things }) => [id, things.length])).toEqual([
      ['low', 2],
      ['hose', 2],
      ['ferrule', 3],
    ]);
    expect(lowCount(list([counted('S16')]))).toBe(0);
  });

  it('says less than nothing plainly', () => {
    const [low] = grouped(list([counted('S20', { quantity: -2, negative: true })]));
    const row = rowOf(low!.things[0]!, 'mm', false);
    expect(row.figure).toBe('\u22122');
    expect(row.more).toMatch(/less than nothing/);
    expect(row.sign).toBe('caution');
  });

  it('keeps a row for a hose whose pieces are used up, and finds a thing again by its id', () => {
    const gone = list([], [hose({ pieces: [], total_mm: 0, low: true, low_mark_mm: 5000 })]);
    expect(grouped(gone).map(({ id }) => id)).toEqual(['low', 'hose']);
    const id = grouped(list([counted('S16')])).at(-1)!.things[0]!.id;
    expect(shelved(list([counted('S16', { quantity: 9 })]), id)).toMatchObject({ item: { quantity: 9 } });
    expect(shelved(list([]), id)).toBeNull();
  });

  it.each([
    [12_400, 'mm', '12.4 m'],
    [640, 'mm', '640 mm'],
    [-150, 'mm', '\u2212150 mm'],
    [12_192, 'inch', '40 ft'],
    [1270, 'inch', '50 in'],
  ] as const)('tells %d mm in %s as %s', (mm, unit, text) => {
    // 1 ft = 304.8 mm, 1 in = 25.4 mm by definition (NIST SP 811).
    expect(plain(stretch(mm, unit))).toBe(text);
  });

  it('says how many there are in all where a thing lies in more than one bin', () => {
    const [shelf] = grouped(list([counted('S16', { quantity: 4, in_store: 9 })], []));
    expect(plain(rowOf(shelf!.things[0]!, 'mm', false).note)).toMatch(/9 in all/);
  });

  it('names the bins of one store in the order of their numbers', () => {
    const elsewhere = counted('S16', { store: 'Shop', bin: 'A1' });
    expect(binsOf(list([counted('S12'), elsewhere]), 'Van 1')).toEqual(['B2', 'B10']);
  });
});

describe('what is taken in', () => {
  it('can be counted only once it is known what it is and where it goes', () => {
    const nothing = nothingLoaded('');
    expect(ready(nothing)).toBe(false);
    const reel = { ...nothing, hose: { standard: 'EN 853', type: '2SN' }, dn: 16 };
    expect(ready(reel)).toBe(false);
    expect(ready({ ...reel, store: ' Van 1 ' })).toBe(true);
    expect(changeOf({ ...reel, store: ' Van 1 ', label: 'R3' }, 20_000)).toEqual({
      ...{ do: 'load-hose', store: 'Van 1', sort: 'reel', length_mm: 20_000, label: 'R3' },
      hose: { kind: 'hose', standard: 'EN 853', type: '2SN', dn: 16 },
    });
  });

  it('leaves out what was not said: an adapter without a rating has none', () => {
    const adapter = { ...nothingLoaded('Van 1'), kind: 'adapter' as const, name: 'JIC to BSPP' };
    expect(itemOf(adapter)).toEqual({ kind: 'adapter', name: 'JIC to BSPP' });
    const end = { family: 'JIC 37 flare', size: '-10', gender: null };
    expect(itemOf({ ...adapter, end, rating_bar: 350 })).toEqual({
      ...{ kind: 'adapter', name: 'JIC to BSPP', rating_bar: 350 },
      hose_side: { family: 'JIC 37 flare', size: '-10' },
    });
  });

  it('needs the hose that a ferrule is for', () => {
    const ferrule = { ...nothingLoaded('Van 1'), kind: 'ferrule' as const, name: 'S16' };
    expect(itemOf(ferrule)).toBeNull();
    expect(itemOf({ ...ferrule, dn: 16 })).toEqual({ kind: 'ferrule', name: 'S16', dn: 16 });
  });

  it('needs the size and the hose of an end', () => {
    const loading = { ...nothingLoaded('Van 1'), kind: 'end' as const };
    expect(itemOf({ ...loading, end: { family: 'ORFS', size: null, gender: null }, dn: 16 })).toBeNull();
    expect(itemOf({ ...loading, end: { family: 'ORFS', size: '-10', gender: 'female' }, dn: 16 })).toEqual({
      ...{ kind: 'end', family: 'ORFS', size: '-10', gender: 'female', dn: 16 },
    });
  });
});

describe('a stock take', () => {
  const all = list([counted('S16'), counted('S12', { bin: 'C1' })]);

  it('takes what lies in the bin, whatever the case of its letters', () => {
    expect(inBin(all, ' b2').map(({ of }) => of)).toEqual(['piece', 'item']);
    expect(inBin(all, null)).toHaveLength(4);
  });

  it('goes on with the next that was not counted, round to the first', () => {
    const things = inBin(all, null);
    const ids = things.map(({ id }) => id);
    expect(nextOf(things, {}, '')).toBe(ids[0]);
    const one = { counted: 1, known: 1 };
    expect(nextOf(things, { [ids[3]!]: one }, ids[3]!)).toBe(ids[0]);
    expect(nextOf(things, Object.fromEntries(ids.map((id) => [id, one])), ids[1]!)).toBeNull();
  });

  it('asks about what was counted alone; a piece of no length is not there', () => {
    const things = inBin(all, 'B2');
    const [piece, ferrule] = things.map(({ id }) => id);
    const gone = { counted: 0, known: 640 };
    const taking = { store: 'Van 1', bin: 'B2', counts: { [piece!]: gone } };
    expect(questionOf(taking, things, false)).toEqual({
      ...{ store: 'Van 1', bin: 'B2', items: [], pieces: [{ piece: 'p2', known_mm: 640 }], save: false },
    });
    const counts = { [piece!]: { counted: 635, known: 640 }, [ferrule!]: { counted: 3, known: 4 } };
    const both = questionOf({ ...taking, counts }, things, true);
    expect(both.pieces).toEqual([{ piece: 'p2', length_mm: 635, known_mm: 640 }]);
    expect(both.items).toEqual([{ item: { kind: 'ferrule', name: 'S16' }, bin: 'B2', counted: 3, known: 4 }]);
  });

  it('drops what changed since it was counted: it has to be counted again', () => {
    const things = inBin(all, 'B2');
    const [piece, ferrule] = things.map(({ id }) => id);
    const counts = { [piece!]: { counted: 635, known: 640 }, [ferrule!]: { counted: 3, known: 4 } };
    const taking = { store: 'Van 1', bin: 'B2', counts };
    const changed = [{ item: { kind: 'ferrule', name: 'S16' }, piece: null, bin: 'B2' }] as never;
    expect(Object.keys(withoutChanged(taking, changed).counts)).toEqual([piece]);
    expect(knownOf(things[1]!)).toBe(4);
  });
});
