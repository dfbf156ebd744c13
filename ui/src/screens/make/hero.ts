// The figure that a step goes by, large. The cut, the turn and the crimp ring have drawings of their own.
import type { BuildSheet, SheetStep } from '../../backend/types';
import { number } from '../../words/number';
import { say } from '../../words/words';
import { crimpFigure, figureIn, signedIn, type LengthUnit } from './lengths';
import { secondsOf } from './steps';

export interface HeroFigure {
  figure: string;
  unit: string;
  /** Its tolerance. */
  by?: string;
  /** From where to where. */
  words: string;
}

/** The large figure of a step; null where it has none, or while it is not known. */
export function heroOf(step: SheetStep, sheet: BuildSheet, unit: LengthUnit = 'mm'): HeroFigure | null {
  const settings = sheet.settings.find((one) => one.role === step.role);
  const end = step.role ?? '';
  switch (step.code) {
    case 'mark-insertion':
    case 'push-on': {
      const depth = settings?.insertion_mm;
      if (depth == null) return null;
      return { ...figureIn(depth, unit), words: say('make-hero-insertion', { end }) };
    }
    case 'crimp': {
      const target = settings?.crimp_diameter_mm;
      if (target == null) return null;
      const by = settings?.crimp_tolerance_mm;
      return {
        ...(unit === 'inch'
          ? { figure: crimpFigure(target, unit), unit: 'in' }
          : { figure: number(target, 2), unit: 'mm' }),
        by: by == null ? undefined : `± ${unit === 'inch' ? crimpFigure(by, unit) : number(by, 2)}`,
        words: say('make-hero-crimp', { end }),
      };
    }
    case 'measure-length': {
      const { overall_length_mm, length_tolerance_mm } = sheet.cut;
      return {
        ...figureIn(overall_length_mm, unit),
        by: length_tolerance_mm
          ?.map((one) => signedIn(one, unit))
          .reverse()
          .join(' '),
        words: say('make-hero-length'),
      };
    }
    case 'raise-pressure':
    case 'hold-pressure': {
      const { proof_pressure_bar, hold_from, hold_to } = sheet.proof;
      const hold = say('make-hold', { from: number(hold_from.value, 0), to: secondsOf(hold_to.value) });
      return { figure: number(proof_pressure_bar, 0), unit: 'bar', words: say('make-hero-proof', { hold }) };
    }
    default:
      return null;
  }
}
