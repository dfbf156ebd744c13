// What is typed on the bench and can hardly be: it is asked about before it is kept.
import type { HoseSize } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { say } from '../../words/words';
import { written, type Field } from './fields';
import type { LengthUnit } from './lengths';

/** Two figures that a caliper shows alike. */
const ALIKE_MM = 0.005;
/** A crimp's tolerance is some tenths of a millimetre: less than this share of its diameter (common practice). */
const LOOSEST = 0.1;

/** Why that value can hardly be, as a question; null where nothing speaks against it. `size` is the hose's by the tables. */
export function doubtOf(doc: JobDoc, field: Field, mm: number, size: HoseSize | null, unit: LengthUnit): string | null {
  const figure = (of: number) => written(field, of, unit);
  const value = figure(mm);
  if (field.of === 'end' && field.key === 'crimp_diameter_mm') {
    const read = [...doc.crimps[field.role], ...doc.givenUp[field.role].map((one) => one.mm)];
    if (read.some((one) => one !== null && Math.abs(one - mm) < ALIKE_MM)) return say('make-doubt-own', { value });
    // The ferrule lies round the reinforcement, by the tables.
    const low = size?.dimensions['reinforcement_od_mm']?.[0] ?? null;
    if (low !== null && mm < low) return say('make-doubt-narrow', { value, hose: figure(low) });
  }
  if (field.of === 'end' && field.key === 'crimp_tolerance_mm') {
    const target = doc.settings.find(({ role }) => role === field.role)?.crimp_diameter_mm;
    if (typeof target === 'number' && mm > target * LOOSEST)
      return say('make-doubt-tolerance', { value, target: figure(target) });
  }
  const whole = doc.spec.overall_length_mm;
  const isCutoff = field.of === 'cutoff' || (field.of === 'end' && field.key === 'cutoff_mm');
  if (typeof whole === 'number' && mm >= whole && (isCutoff || (field.of === 'finished' && field.key === 'cut_mm')))
    return say('make-doubt-cut', { value, whole: figure(whole) });
  return null;
}
