// Which fields and findings of the check a sheet beside it works out.
import type { Beside } from '../../state/job-doc';
import type { WordId } from '../../words/ids';

const SHEETS: readonly (readonly [about: RegExp, sheet: Beside, verb: WordId])[] = [
  [/^(service\.bend_radius_mm$|bend-|original-bend-)/, 'route', 'check-to-route'],
  [/^(service\.flow_l_min$|flow-)/, 'oil', 'check-to-oil'],
  [/^(service\.surge_pressure_bar$|surge-)/, 'oil', 'check-to-surge'],
];

/** The sheet that works a field or a case of a finding out, and the words of the way there; null where none does. */
export function sheetOf(id: string): { sheet: Beside; verb: WordId } | null {
  const [, sheet, verb] = SHEETS.find(([about]) => about.test(id)) ?? [];
  return sheet && verb ? { sheet, verb } : null;
}
