// Which column of a sheet is what: as it was proposed, and as a person changes it. What is missing and asked says the core.
import type { SheetAsks, SheetUnit, DayOrder } from '../../../backend/types';
import { sayCode } from '../../../words/words';

/** The kinds of sheets whose columns are matched: their columns' names begin with it in the catalogues. */
export type Kind = 'van' | 'list';

/** A column as the core read it; `is` is none where it is passed over. */
export interface Found {
  column: number;
  heading: string;
  is: string | null;
  units: SheetUnit[];
  unit: SheetUnit | null;
  days: DayOrder | null;
  asks: SheetAsks | null;
  examples: string[];
}

/** What the columns of a sheet seem to be. */
export interface Match {
  header_row: number;
  rows: number;
  columns: Found[];
  missing: string[];
  choices: string[];
}

/** A column as a question has it. */
export interface Said<C extends string = string> {
  column: number;
  is: C;
  unit?: SheetUnit;
  days?: DayOrder;
}

/** How far a sheet was matched. */
export interface SheetBegun<C extends string = string> {
  /** The file's name. */
  name: string;
  header_row: number;
  columns: Said<C>[];
  fixed: Record<string, string>;
  leave_out: number[];
}

/** What a column can be, in words. */
export function columnName(kind: Kind, key: string): string {
  return sayCode(`${kind}-column-${key.replaceAll('_', '-')}`) ?? key;
}

/** The columns that are read, as a question has them. */
export function saidOf<C extends string>(columns: readonly Found[]): Said<C>[] {
  return columns.flatMap(({ column, is, unit, days }) =>
    is === null ? [] : [{ column, is: is as C, ...(unit && { unit }), ...(days && { days }) }],
  );
}

/** The columns with one of them changed: no two are the same thing, and what it was said to be in goes with what it was. */
export function changed(columns: readonly Found[], next: Found): Found[] {
  return columns.map((one) => {
    if (one.column === next.column) return next.is === one.is ? next : { ...next, unit: null, days: null };
    return next.is !== null && one.is === next.is ? { ...one, is: null, unit: null, days: null } : one;
  });
}
