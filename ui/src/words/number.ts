// Numbers and units as people read them: the one place in the ui where they are written. The Rust side
// writes the same way (`hosewright_words::number`), so a screen, a paper and the command line agree.
import { spoken } from './language.svelte';

const MINUS = '\u2212';
/** Keeps a number and its unit on one line. */
const JOIN = '\u00a0';
export const MM_PER_INCH = 25.4;
/** By definition: one pound-force an inch squared, in bar (NIST SP 811, appendix B). */
export const BAR_PER_PSI = 0.068_947_572_931_683_6;

const formats = new Map<string, Intl.NumberFormat>();

function format(decimals: number, fixed: boolean): Intl.NumberFormat {
  const key = `${spoken.tag} ${decimals} ${fixed}`;
  let known = formats.get(key);
  if (!known) {
    known = new Intl.NumberFormat(spoken.tag, {
      maximumFractionDigits: decimals,
      minimumFractionDigits: fixed ? decimals : 0,
      useGrouping: false,
      signDisplay: 'negative',
    });
    formats.set(key, known);
  }
  return known;
}

/** A number with at most that many decimals and no needless zeros. Minus is a true minus. */
export function number(value: number, decimals: number): string {
  return format(decimals, false).format(value).replace('-', MINUS);
}

/** A number with exactly that many decimals: readings beside one another, ticks of one scale. */
export function fixed(value: number, decimals: number): string {
  return format(decimals, true).format(value).replace('-', MINUS);
}

/** A count as words take it: for the plural, and as it is shown. */
export const counted = (count: number) => ({ count, shown: number(count, 0) });

/** A number with its sign always written; zero has none. */
export function signed(value: number, decimals: number): string {
  const text = number(value, decimals);
  return value > 0 && text !== '0' ? `+${text}` : text;
}

/** The sign between whole and decimals in this language. */
export function decimalSign(): string {
  return (
    format(1, true)
      .formatToParts(0.5)
      .find((part) => part.type === 'decimal')?.value ?? '.'
  );
}

/** A number and its unit, kept on one line. */
export function withUnit(text: string, unit: string): string {
  return unit ? `${text}${JOIN}${unit}` : text;
}

/** The sign of a unit as people write it: a degree that the tables and the keypad leave out. */
export function unitSign(unit: string): string {
  return unit === 'C' || unit === 'F' ? `°${unit}` : unit;
}

/** A length in millimetres. */
export function length(mm: number, decimals: number): string {
  return withUnit(number(mm, decimals), 'mm');
}

/** A length as whole inches and the nearest fraction with that denominator, in lowest terms: `1 1/16`. */
export function inches(mm: number, denominator = 64): string {
  let top = Math.round((Math.abs(mm) / MM_PER_INCH) * denominator);
  let bottom = denominator;
  const sign = mm < 0 && top > 0 ? MINUS : '';
  const whole = Math.floor(top / bottom);
  top -= whole * bottom;
  while (top > 0 && top % 2 === 0 && bottom % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return `${sign}${whole}`;
  return `${sign}${whole > 0 ? `${whole} ` : ''}${top}/${bottom}`;
}

/** A length as the trade's inch fraction with its unit. */
export function lengthInches(mm: number, denominator = 64): string {
  return withUnit(inches(mm, denominator), 'in');
}

/** Ratings are set in steps of this many psi. */
const PSI_STEP = 500;

/**
 * A figure in psi as the trade prints it: a bar figure that a step of 500 psi is printed as (207 or 206 for
 * 3000, 35 for 500) gives the step; any other is converted, to 10 from 1000 up. The rule and its basis
 * stand at `Bar::printed_psi` of the core.
 */
export function psi(bar: number): string {
  const exact = bar / BAR_PER_PSI;
  const step = Math.round(exact / PSI_STEP) * PSI_STEP;
  const stepBar = step * BAR_PER_PSI;
  const printed = (bar >= Math.floor(stepBar) && bar <= stepBar + 0.5) || (bar === 35 && step === PSI_STEP);
  if (step > 0 && printed) return number(step, 0);
  return number(exact >= 1000 ? Math.round(exact / 10) * 10 : exact, 0);
}

/** A pressure in bar with psi beside it, or the other way about. */
export function pressure(bar: number, first: 'bar' | 'psi' = 'bar'): string {
  const inBar = withUnit(number(bar, 0), 'bar');
  const inPsi = withUnit(psi(bar), 'psi');
  return first === 'bar' ? `${inBar} (${inPsi})` : `${inPsi} (${inBar})`;
}

/** An angle in degrees. */
export function angle(degrees: number, decimals = 0): string {
  return `${number(degrees, decimals)}\u00b0`;
}

/** A number with its unit, with as many decimals as that unit is read to. A pressure has psi beside it. */
export function quantity(value: number, unit: string): string {
  switch (unit) {
    case 'bar':
      return pressure(value);
    case 'mm':
      return length(value, 1);
    case 'C':
      return withUnit(number(value, 0), unitSign(unit));
    case 'deg':
      return angle(value, 1);
    case '':
      return number(value, 2);
    default:
      return withUnit(number(value, 1), unit);
  }
}

/** A rate of tax, which is kept in hundredths of a percent: `7.7 %`. */
export const rate = (hundredths: number): string => withUnit(number(hundredths / 100, 2), '%');

/** The hundredths that a rate is kept in; a third decimal of a percent is not. */
export const hundredths = (percent: number): number => Math.round(percent * 100);

/** The figure of a percentage that never rounds a doubt away: 99.96 % is no 100 %, 0.4 % is no 0 %. */
export function percentFigure(probability: number): string {
  const percent = probability * 100;
  if (percent <= 0) return '0';
  if (percent < 1) return '<1';
  if (percent >= 99.5 && percent < 100) return '>99';
  return number(percent, 0);
}

/** That percentage with its sign. */
export function percent(probability: number): string {
  return withUnit(percentFigure(probability), '%');
}
