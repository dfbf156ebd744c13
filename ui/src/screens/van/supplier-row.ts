// A supplier's row that is entered by hand, as far as it is said.
import type { Given } from '../../backend';
import type { EndSettings, EndSpec, Role, Skive, Spec, SupplierRow } from '../../backend/types';
import { today } from '../../words/date';
import { say } from '../../words/words';
import { noEnd, type PickedEnd } from '../stock/loading';

/** Its figures, in the order they are needed at the bench. */
export const FIGURES = [
  'insertion_mm',
  'skive_outer_mm',
  'skive_inner_mm',
  'crimp_diameter_mm',
  'crimp_tolerance_mm',
  'cutoff_mm',
] as const;
export type FigureKey = (typeof FIGURES)[number];

/** What is taken off the hose first. */
export const SKIVES = ['none', 'outer', 'inner', 'both'] as const;
export type SkiveKind = (typeof SKIVES)[number];

/** What a person says of a row; blank is not known. */
export interface RowBegun extends Record<FigureKey, number | null> {
  supplier: string;
  dn: number | null;
  hose: { standard: string; type: string } | null;
  end: PickedEnd;
  series: string;
  ferrule: string;
  lubricant: string;
  die_set: string;
  skive: SkiveKind | null;
}

/** Nothing said yet. */
export function noRow(): RowBegun {
  return {
    supplier: '',
    dn: null,
    hose: null,
    end: noEnd(),
    series: '',
    ferrule: '',
    lubricant: '',
    die_set: '',
    skive: null,
    insertion_mm: null,
    skive_outer_mm: null,
    skive_inner_mm: null,
    crimp_diameter_mm: null,
    crimp_tolerance_mm: null,
    cutoff_mm: null,
  };
}

/** A row for an end of a job: its hose, its end, and what was entered of it so far. */
export function rowFor(spec: Given<Spec>, role: Role, entered: Given<EndSettings> | undefined): RowBegun {
  const end: Given<EndSpec> | undefined = spec.ends.find((one) => one.role === role);
  const { hose } = spec;
  const number = (value: unknown): number | null => (typeof value === 'number' ? value : null);
  return {
    ...noRow(),
    dn: hose ? Number(hose.dn) : null,
    hose: hose ? { standard: hose.standard, type: hose.type } : null,
    end: end ? { family: end.family, size: end.size, gender: end.gender ?? null } : noEnd(),
    series: entered?.series ?? '',
    ferrule: entered?.ferrule ?? '',
    lubricant: entered?.lubricant ?? '',
    die_set: entered?.die_set ?? '',
    insertion_mm: number(entered?.insertion_mm),
    crimp_diameter_mm: number(entered?.crimp_diameter_mm),
    crimp_tolerance_mm: number(entered?.crimp_tolerance_mm),
    // A row knows no form: a bent end's cut-off is not a straight one's.
    cutoff_mm: end?.form === 'straight' ? number(end.cutoff_mm) : null,
    ...skiveOf(entered?.skive ?? null),
  };
}

/** Whether both are of one hose and end: what was left half entered of it is gone on with. */
export function isForSame(one: RowBegun, other: RowBegun): boolean {
  const key = ({ dn, hose, end }: RowBegun) => JSON.stringify([dn, hose, end.family, end.size]);
  return key(one) === key(other);
}

function skiveOf(skive: Given<Skive> | null): Pick<RowBegun, 'skive' | 'skive_outer_mm' | 'skive_inner_mm'> {
  const of = (kind: SkiveKind | null, outer: unknown = null, inner: unknown = null) => ({
    skive: kind,
    skive_outer_mm: outer as number | null,
    skive_inner_mm: inner as number | null,
  });
  if (skive === null) return of(null);
  if (skive === 'none') return of('none');
  if ('outer' in skive) return of('outer', skive.outer.length_mm);
  if ('inner' in skive) return of('inner', null, skive.inner.length_mm);
  return of('both', skive.both.outer_mm, skive.both.inner_mm);
}

/** The figures that are asked: those of a skive only where there is one. */
export function figuresOf({ skive }: RowBegun): FigureKey[] {
  return FIGURES.filter(
    (key) =>
      (key !== 'skive_outer_mm' || skive === 'outer' || skive === 'both') &&
      (key !== 'skive_inner_mm' || skive === 'inner' || skive === 'both'),
  );
}

/** The row as it is kept; null while hose, supplier or every figure is missing. */
export function rowOf(begun: RowBegun): Given<SupplierRow> | null {
  const { hose, dn, end, insertion_mm, crimp_diameter_mm, crimp_tolerance_mm, cutoff_mm } = begun;
  const supplier = begun.supplier.trim();
  const skive = skived(begun);
  const figures = [insertion_mm, crimp_diameter_mm, cutoff_mm, skive];
  if (!supplier || !hose || dn === null || skive === undefined || figures.every((one) => one === null)) return null;
  const text = (given: string) => given.trim() || null;
  return {
    supplier,
    ...hose,
    dn,
    family: end.family,
    size: end.size,
    series: text(begun.series),
    ferrule: text(begun.ferrule),
    lubricant: text(begun.lubricant),
    die_set: text(begun.die_set),
    insertion_mm,
    skive,
    crimp_diameter_mm,
    crimp_tolerance_mm,
    cutoff_mm,
    from: say('van-row-from', { day: today() }),
  };
}

/** What is taken off; null is not known, undefined while a length of it is missing. */
function skived({ skive, skive_outer_mm: outer, skive_inner_mm: inner }: RowBegun): Given<Skive> | null | undefined {
  if (skive === null || skive === 'none') return skive;
  if (skive === 'outer') return outer === null ? undefined : { outer: { length_mm: outer } };
  if (skive === 'inner') return inner === null ? undefined : { inner: { length_mm: inner } };
  return outer === null || inner === null ? undefined : { both: { outer_mm: outer, inner_mm: inner } };
}
