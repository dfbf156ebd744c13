// What was done on the bench, as the commands that judge and record it ask for it.
import type { Answer, Question } from '../../backend';
import type { Role, Settings } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';

/** The build sheet, and whose figures filled it. */
export type Made = Answer<'make'>;
export type BenchQuestion = Question<'bench.judge'>;

const ROLES: readonly Role[] = ['A', 'B'];

/** What of a job the bench is judged by. */
export type Benched = Pick<
  JobDoc,
  'settings' | 'ticks' | 'crimps' | 'givenUp' | 'crimpedBy' | 'finished' | 'proving' | 'scrap'
>;

/** The instrument a crimp is read with, and how far off it may read. */
export function instrumentOf(by: JobDoc['crimpedBy'][Role], settings: Settings) {
  const read =
    by === 'micrometer'
      ? { name: settings.instruments.micrometer, error_mm: settings.micrometer_error_mm }
      : { name: settings.instruments.caliper, error_mm: settings.caliper_error_mm };
  return { ...read, error_is: 'standard' as const };
}

/** The question to `bench.judge` and `bench.record`. */
export function benchOf(doc: Benched, question: Question<'check'>, settings: Settings): BenchQuestion {
  const { cut_mm, length_mm, turn_deg } = doc.finished;
  const { rig, pressure_bar, hold_s, gauge, calibrated } = doc.proving;
  return {
    make: { question, settings: doc.settings },
    bench: {
      crimps: ROLES.map((role) => ({
        role,
        readings_mm: doc.crimps[role],
        given_up: doc.givenUp[role].map(({ mm, by, why }) => ({ mm, why, instrument: instrumentOf(by, settings) })),
        instrument: instrumentOf(doc.crimpedBy[role], settings),
      })),
      cut_length_mm: cut_mm,
      finished: {
        ...(length_mm !== null && { length_mm, length_error_mm: settings.tape_error_mm }),
        ...(turn_deg !== null && { turn_deg }),
      },
      proof: {
        rig,
        failed: doc.scrap?.failed ?? null,
        pressure_bar,
        hold_s,
        gauge,
        gauge_calibrated: calibrated,
      },
      steps: Object.entries(doc.ticks).map(([name, { at, by }]) => ({ ...stepOf(name), at, by })),
    },
  };
}

/** A step's code and end by its name in the ticks. */
function stepOf(name: string): { code: string; role: Role | null } {
  const [code = '', end] = name.split('.');
  return { code, role: ROLES.find((role) => role === end) ?? null };
}

/** What the sheet took from the one supplier's row that suits becomes the job's own: the table may change later. */
export function takeFilled(doc: JobDoc, sheet: Made): void {
  for (const { role, cutoff } of sheet.filled) {
    const filled = sheet.settings.find((one) => one.role === role);
    if (filled && !doc.settings.some((one) => one.role === role)) doc.settings.push({ ...filled });
    const end = doc.spec.ends.find((one) => one.role === role);
    if (cutoff && end) end.cutoff_mm ??= role === 'A' ? sheet.cut.cutoff_a_mm : sheet.cut.cutoff_b_mm;
  }
}
