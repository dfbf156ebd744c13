// A supplier's rows in words.
import type { SupplierRow } from '../../backend/types';
import { hoseLong, sizeWords } from '../../words/spec';
import { say } from '../../words/words';
import { settingsOf } from '../make/fields';
import { taped, type LengthUnit } from '../make/lengths';

/** What a row is for: hose, and end where it names one. */
export function rowTitle(row: SupplierRow): string {
  const end = row.family && [row.family, row.size && sizeWords(row.size)].filter(Boolean).join(' ');
  return [hoseLong(row), end, row.series].filter(Boolean).join(', ');
}

/** What it says. */
export function rowText(row: SupplierRow, unit: LengthUnit): string {
  const cutoff = row.cutoff_mm == null ? null : `${say('make-cutoff')} ${taped(row.cutoff_mm, unit)}`;
  return [settingsOf({ ...row, role: 'A' }, unit), cutoff].filter(Boolean).join(' · ');
}

/** Whether every word that is looked for stands in a row. */
export function matches(row: SupplierRow, looked: string): boolean {
  const text = [rowTitle(row), row.ferrule, row.die_set, row.from].filter(Boolean).join(' ').toLowerCase();
  return looked
    .toLowerCase()
    .replaceAll('-', '\u2212')
    .split(/\s+/)
    .every((word) => text.replaceAll('-', '\u2212').includes(word));
}
