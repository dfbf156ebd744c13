import { Keypad, type Quantity } from '../../components/keypad.svelte';
import type { JobDoc } from '../../state/job-doc';
import { firstUnit, type Units } from '../check/fields';

/** Behind a field's name where its number goes the other way. */
const MINUS = '-';

/** The numbers of a sheet of the job: how each is typed and where it is kept. */
export interface Numbers<F extends string> {
  /** Before a field's name where half its number is kept, so that it is no other sheet's. */
  sheet: string;
  quantityOf: (field: F) => Quantity;
  keep: (field: F, value: number | null) => void;
  known: (name: string) => name is F;
  /** What stands now; its sign is where the next number begins. */
  now?: (field: F) => number | null;
}

/** The number of a sheet that is being typed. Half of it is part of the job, and comes back with it. */
export class Entering<F extends string> {
  open: F | null = $state(null);
  keypad: Keypad | null = $state.raw(null);
  /** The other way of the two that a number can go: to the left, below. */
  negative = $state(false);

  constructor(
    readonly doc: JobDoc,
    readonly numbers: Numbers<F>,
    readonly units: () => Units,
  ) {
    const of = doc.typing?.of ?? '';
    const [name = '', sign] = of.startsWith(numbers.sheet) ? of.slice(numbers.sheet.length).split('/') : [];
    if (!numbers.known(name)) return;
    this.edit(name);
    this.negative = sign === MINUS;
  }

  edit(field: F): void {
    const { typing } = this.doc;
    const quantity = this.numbers.quantityOf(field);
    const draft =
      typing?.of.split('/')[0] === this.numbers.sheet + field
        ? typing.draft
        : { unit: firstUnit(quantity, this.units()), typed: {} };
    this.open = field;
    this.keypad = new Keypad(quantity, draft);
    this.negative = (this.numbers.now?.(field) ?? 0) < 0;
  }

  typed(): void {
    if (!this.open || !this.keypad) return;
    const sign = this.negative ? `/${MINUS}` : '';
    this.doc.typing = { of: this.numbers.sheet + this.open + sign, draft: this.keypad.draft };
  }

  turn(negative: boolean): void {
    this.negative = negative;
    this.typed();
  }

  /** Null is not known. */
  keep(value: number | null): void {
    const signed = value === null ? null : Math.round((this.negative ? -value : value) * 1e4) / 1e4;
    if (this.open) this.numbers.keep(this.open, signed);
    this.close();
  }

  /** Back to the sheet; half a number goes. */
  close(): void {
    if (this.doc.typing?.of.startsWith(this.numbers.sheet)) this.doc.typing = null;
    this.open = null;
    this.keypad = null;
  }
}
