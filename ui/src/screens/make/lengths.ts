// Lengths of the bench in the unit set on this phone: fractions for what a tape measures, decimals for what a
// micrometer does.
import type { Settings } from '../../backend/types';
import type { Draft } from '../../components/keypad.svelte';
import { fixed, inches, length, lengthInches, MM_PER_INCH, number, signed, withUnit } from '../../words/number';

export type LengthUnit = Settings['length_unit'];

/** A figure of the tape that stands large, and its unit apart. */
export function figureIn(mm: number, unit: LengthUnit): { figure: string; unit: string } {
  return unit === 'inch' ? { figure: inches(mm), unit: 'in' } : { figure: number(mm, 1), unit: 'mm' };
}

/** A length by the tape, to a 64th or to a tenth of a millimetre. */
export function taped(mm: number, unit: LengthUnit): string {
  return unit === 'inch' ? lengthInches(mm) : length(mm, 1);
}

/** One side of a tolerance, with its sign. */
export function signedIn(mm: number, unit: LengthUnit): string {
  return unit === 'inch' ? `${mm > 0 ? '+' : ''}${inches(mm)}` : signed(mm, 1);
}

/** A diameter over the crimp without its unit, as the micrometer reads. */
export function crimpFigure(mm: number, unit: LengthUnit): string {
  return unit === 'inch' ? fixed(mm / MM_PER_INCH, 4) : fixed(mm, 2);
}

/** A diameter over the crimp, or its tolerance. */
export function crimped(mm: number, unit: LengthUnit): string {
  return unit === 'inch' ? withUnit(crimpFigure(mm, unit), 'in') : length(mm, 2);
}

/** A diameter that was kept, as if it were still being typed. */
export function draftOf(mm: number, unit: LengthUnit): Draft {
  return unit === 'inch'
    ? { unit: 'in', typed: { in: String(Number((mm / MM_PER_INCH).toFixed(4))) } }
    : { unit: 'mm', typed: { mm: String(mm) } };
}
