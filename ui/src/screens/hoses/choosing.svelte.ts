// Which rows of the table are chosen, by pointer and by keys.

const within = (index: number, total: number) => Math.min(Math.max(index, 0), Math.max(total - 1, 0));

/** Chosen rows, by their codes: one by one, a span, or all that the filter leaves. */
export class Choosing {
  codes: ReadonlySet<string> = $state.raw(new Set());
  /** The row that the keys move; the panel tells of it. */
  at = $state(0);
  /** Where a span began. */
  #anchor = 0;

  has(code: string): boolean {
    return this.codes.has(code);
  }

  /** Goes to a row, without choosing it. */
  go(index: number, total: number): void {
    // Read back from itself it would be asked anew at every step where it is set.
    const at = within(index, total);
    this.at = at;
    this.#anchor = at;
  }

  /** Chooses a row, or lets go of it. */
  toggle(index: number, code: string): void {
    const codes = new Set(this.codes);
    if (!codes.delete(code)) codes.add(code);
    this.codes = codes;
    this.at = index;
    this.#anchor = index;
  }

  /** The rows from where the last choice was made to this one, both of them: what is chosen next. */
  span(index: number, total: number): [number, number] {
    const at = within(index, total);
    this.at = at;
    return [Math.min(this.#anchor, at), Math.max(this.#anchor, at)];
  }

  /** Chooses those too. */
  add(codes: Iterable<string>): void {
    this.codes = new Set([...this.codes, ...codes]);
  }

  /** Lets go of all. */
  none(): void {
    this.codes = new Set();
  }
}
