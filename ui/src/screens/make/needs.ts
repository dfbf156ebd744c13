// What a step can not be done without. A step whose figures are not there is not ticked like a sound one.
import type { BuildSheet, Missing, Role, SheetStep } from '../../backend/types';
import { fieldFor, type Field } from './fields';

/** By the codes of what a sheet misses. */
const NEEDS: Record<string, readonly string[]> = {
  'mark-insertion': ['insertion'],
  crimp: ['ferrule', 'die-set', 'crimp-diameter', 'crimp-tolerance'],
  'measure-crimp': ['crimp-diameter', 'crimp-tolerance'],
};

/** Steps that can be done by a sheet in the hand whose figures nobody enters. */
const BY_SHEET: ReadonlySet<string> = new Set(['mark-insertion', 'crimp']);

/** The first field that is still to be entered for a step; null where it has all it needs. */
export function gapAt(sheet: BuildSheet, step: SheetStep): Field | null {
  const missing = missingAt(sheet, step);
  if (missing) return fieldFor(missing);
  return NEEDS[step.code]?.includes('crimp-diameter') && step.role ? sourceGap(sheet, step.role) : null;
}

function missingAt(sheet: BuildSheet, step: SheetStep): Missing | undefined {
  return sheet.missing.find(({ code, role }) => role === step.role && NEEDS[step.code]?.includes(code));
}

/** Where a crimp diameter stands of which nobody said whose it is: its source. A target is never one's own. */
export function sourceGap(sheet: BuildSheet, role: Role): Field | null {
  const settings = sheet.settings.find((one) => one.role === role);
  const said = settings?.crimp_diameter_mm == null || (settings.source ?? '').trim() !== '';
  return said ? null : { of: 'end', role, key: 'source' };
}

/** Whether that step may be done by a sheet in the hand: it is shown so, and nothing of it is on record. */
export function isBySheet(sheet: BuildSheet, step: SheetStep): boolean {
  return BY_SHEET.has(step.code) && missingAt(sheet, step) !== undefined;
}
