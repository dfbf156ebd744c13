// The rows of a list that is taken in, by what becomes of them.
import type { RowIs, RowTold } from '../../backend/types';

export type Filter = RowIs | 'all';

const ORDER: readonly RowIs[] = ['refused', 'made', 'changed', 'known', 'left-out'];

/** What can be looked at alone: all, and each that some row is. */
export function filters(told: readonly RowTold[]): { id: Filter; rows: number }[] {
  const each = ORDER.map((id) => ({ id, rows: told.filter(({ is }) => is === id).length }));
  return [{ id: 'all', rows: told.length }, ...each.filter(({ rows }) => rows > 0)];
}

/** The rows of one filter. */
export function shown(told: readonly RowTold[], filter: Filter): readonly RowTold[] {
  return filter === 'all' ? told : told.filter(({ is }) => is === filter);
}
