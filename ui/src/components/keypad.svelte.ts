import { BAR_PER_PSI, MM_PER_INCH, decimalSign, unitSign, withUnit } from '../words/number';

/** What is being typed; fixes the units and which keys there are. */
export type Quantity = 'length' | 'reel' | 'pressure' | 'temperature' | 'flow' | 'plain';

/** A key of the pad. A denominator is one key: `/16`. */
export type Key =
  | '0'
  | '1'
  | '2'
  | '3'
  | '4'
  | '5'
  | '6'
  | '7'
  | '8'
  | '9'
  | 'point'
  | 'plus'
  | 'minus'
  | '/8'
  | '/16'
  | '/32'
  | '/64'
  | 'rubout';

/** A unit as the trade writes it, and how its numbers become millimetres, bar, degrees Celsius or l/min. */
export interface Unit {
  id: string;
  factor: number;
  zero: number;
  fractions: boolean;
}

const unit = (id: string, factor = 1, zero = 0, fractions = false): Unit => ({ id, factor, zero, fractions });

// Factors: NIST SP 811, appendix B.
const UNITS: Record<Quantity, [Unit, ...Unit[]]> = {
  length: [unit('in', MM_PER_INCH, 0, true), unit('mm')],
  reel: [unit('m', 1000), unit('ft', 304.8)],
  pressure: [unit('bar'), unit('psi', BAR_PER_PSI)],
  temperature: [unit('C'), unit('F', 5 / 9, 32)],
  flow: [unit('l/min'), unit('gpm', 3.785_411_784)],
  plain: [unit('')],
};

/** Longest run of digits: enough for a hose of 99 m in mm with a decimal. */
const DIGITS = 6;

/** Digits of a reel's whole metres or feet: more are millimetres that were meant. */
const REEL = 4;

/** What stands on the pad, so that half a number survives being put away. */
export interface Draft {
  unit: string;
  typed: Record<string, string>;
}

/** The number as it is drawn: `1`, `13` over `16`. */
export interface Written {
  whole: string;
  top: string;
  bottom: string;
}

/**
 * A number being typed in the trade's writing. One draft a unit: a fraction is not lost by a look at the
 * other unit, and plain digits go along with the switch, because the digits were right and the unit was not.
 */
export class Keypad {
  readonly units: readonly [Unit, ...Unit[]];
  unit: Unit = $state.raw(unit(''));
  #typed: Record<string, string> = $state({});
  /** What stands was kept before: the first digit starts anew, any other key changes it. */
  #kept: boolean;

  constructor(
    readonly quantity: Quantity,
    draft?: Draft,
    kept = false,
  ) {
    this.#kept = kept;
    this.units = UNITS[quantity];
    this.unit = this.units.find((known) => known.id === draft?.unit) ?? this.units[0];
    for (const { id } of this.units) this.#typed[id] = draft?.typed[id] ?? '';
  }

  /** What has been typed: `13/16`, `1+1/16`, `1+`, `20.6`, `-20`. */
  get typed(): string {
    return this.#typed[this.unit.id] ?? '';
  }

  get empty(): boolean {
    return this.typed === '' || this.typed === '-';
  }

  /** Whether it stands as a number; `1+` and `1+1` do not yet. */
  get whole(): boolean {
    return this.value !== null;
  }

  /** The value in mm (of a reel too), bar, degrees Celsius, l/min or as it is; null while nothing or half a number stands. */
  get value(): number | null {
    const match = /^(-?)(?:(\d+)\+)?(\d+\.?\d*)(?:\/(\d+))?$/.exec(this.typed);
    if (!match) return null;
    const [, sign, ahead, number, bottom] = match;
    if (ahead !== undefined && bottom === undefined) return null;
    const size = Number(ahead ?? 0) + Number(number) / Number(bottom ?? 1);
    return ((sign ? -size : size) - this.unit.zero) * this.unit.factor;
  }

  /** Half the step of a fraction in the value's unit; null where it was no fraction and the instrument's error stands. */
  get error(): number | null {
    const bottom = this.#bottom();
    return bottom === null || this.value === null ? null : this.unit.factor / bottom / 2;
  }

  /** As the command line and the use cases read it: `1 1/16 in`, `20.6 mm`; null while half a number stands. */
  get written(): string | null {
    if (this.value === null) return null;
    const number = this.typed.replace('+', ' ').replace(/\.$/, '');
    return this.unit.id ? `${number} ${this.unit.id}` : number;
  }

  /** As it is drawn, with this language's decimal sign and a true minus. */
  get shown(): Written {
    const [number = '', bottom = ''] = this.typed.split('/');
    const parts = number.split('+');
    const fraction = bottom !== '' || parts.length > 1;
    const text = (part = '') => part.replace('.', decimalSign()).replace('-', '\u2212');
    return fraction
      ? { whole: text(parts.length > 1 ? parts[0] : ''), top: text(parts.at(-1)), bottom }
      : { whole: text(number), top: '', bottom: '' };
  }

  /** The number with its unit, as people read it: `1 1/16 in`, `−20 °C`. */
  said(unit: string = this.unit.id): string {
    const { whole, top, bottom } = this.shown;
    const fraction = top && `${top}/${bottom}`;
    // A decimal sign with nothing behind it is not said.
    return withUnit([whole.replace(/\D$/, ''), fraction].filter(Boolean).join(' '), unitSign(unit));
  }

  get draft(): Draft {
    return { unit: this.unit.id, typed: { ...this.#typed } };
  }

  /** Whether a key does anything now; the others are shown at rest. */
  can(key: Key): boolean {
    return this.#after(key) !== this.typed;
  }

  /** Whether the key did anything. */
  press(key: Key): boolean {
    if (this.#kept && /^(\d|point)$/.test(key)) this.clear();
    this.#kept = false;
    const taken = this.can(key);
    this.#typed[this.unit.id] = this.#after(key);
    return taken;
  }

  /** Switches the unit. Plain digits go along, a fraction waits under its own unit. */
  use(id: string): void {
    const next = this.units.find((known) => known.id === id);
    if (!next || next === this.unit) return;
    if (!/[+/]/.test(this.typed) && this.typed !== '') this.#typed[next.id] = this.typed;
    this.unit = next;
  }

  clear(): void {
    this.#typed[this.unit.id] = '';
  }

  #bottom(): number | null {
    const bottom = this.typed.split('/')[1];
    return bottom === undefined ? null : Number(bottom);
  }

  #after(key: Key): string {
    const typed = this.typed;
    switch (key) {
      case 'rubout':
        return typed.replace(/(\/\d+|.)$/, '');
      case 'minus':
        if (this.quantity !== 'temperature') return typed;
        return typed.startsWith('-') ? typed.slice(1) : `-${typed}`;
      case 'point':
        if (/[./+]/.test(typed)) return typed;
        return /\d$/.test(typed) ? `${typed}.` : `${typed}0.`;
      case 'plus':
        return this.unit.fractions && /^\d+$/.test(typed) ? `${typed}+` : typed;
      case '/8':
      case '/16':
      case '/32':
      case '/64': {
        if (!this.unit.fractions) return typed;
        const match = /^((?:\d+\+)?0*[1-9]\d*)(?:\/\d+)?$/.exec(typed);
        return match ? `${match[1]}${key}` : typed;
      }
      default: {
        if (typed.includes('/')) return typed;
        const run = /[\d.]*$/.exec(typed)?.[0] ?? '';
        if (run.replace('.', '').length >= DIGITS) return typed;
        if (this.quantity === 'reel' && /^\d+$/.test(run) && run.length >= REEL) return typed;
        return run === '0' ? `${typed.slice(0, -1)}${key}` : `${typed}${key}`;
      }
    }
  }
}
