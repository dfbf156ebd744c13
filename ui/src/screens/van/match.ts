// Which column of a supplier's table is what.
import type { Answer, Question } from '../../backend';
import { sayCode } from '../../words/words';

/** A column as the person has it; null is passed over. */
export interface Matched {
  column: number;
  is: string | null;
  unit: 'mm' | 'in' | null;
}

/** How far a table was matched. */
export interface SheetBegun {
  /** The file's name. */
  name: string;
  header_row: number;
  columns: Matched[];
  fixed: Record<string, string>;
  leave_out: number[];
}

type Columns = NonNullable<Question<'supplier.import'>['columns']>;

/** What a column can be, in words. */
export function columnName(key: string): string {
  return sayCode(`van-column-${key}`) ?? key;
}

/** The columns that are read, as the import asks for them. */
export function matchedOf(columns: readonly Matched[]): Columns {
  return columns.flatMap(({ column, is, unit }) =>
    is === null ? [] : [{ column, is, ...(unit && { unit }) }],
  ) as Columns;
}

/** What every row needs and no column is yet. */
export function openOf({ missing, columns }: Answer<'supplier.match'>, now: readonly Matched[]): string[] {
  // What was proposed and taken away again is needed just as well.
  const proposed = columns.flatMap(({ is }) => (is !== null && NEEDED.has(is) ? [is] : []));
  return [...new Set([...missing, ...proposed])].filter((key) => !now.some(({ is }) => is === key));
}

/** Columns of lengths: bare numbers in them are millimetres or inches. */
export const LENGTHS: ReadonlySet<string> = new Set([
  ...['insertion', 'skive', 'skive-inner', 'crimp-diameter', 'crimp-tolerance', 'cutoff'],
]);

/** Without these a row says nothing of any hose. */
const NEEDED: ReadonlySet<string> = new Set(['supplier', 'standard', 'type', 'dn']);
