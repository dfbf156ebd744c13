/** A hose that is wanted in a batch: which job or place it is for, and how many. */
export interface Wanted {
  /** The job or the place it is for; once in a batch. */
  id: string;
  name: string;
  count: number;
}

const KEY = 'hosewright-batch';

function kept(): Wanted[] {
  try {
    const wanted = JSON.parse(localStorage.getItem(KEY) ?? '[]') as Wanted[];
    return wanted.map(({ id, name, count }) => ({ id, name, count }));
  } catch {
    return [];
  }
}

/**
 * Several hoses that are made at once. It stays on this device until it is emptied: no record, a list to work by. How each
 * is made is asked anew whenever it is looked at, since its job or place may have changed.
 */
export class Batch {
  wanted: readonly Wanted[] = $state.raw(kept());

  has(id: string): boolean {
    return this.wanted.some((one) => one.id === id);
  }

  add(...wanted: readonly Wanted[]): void {
    this.#keep([...this.wanted.filter(({ id }) => !wanted.some((one) => one.id === id)), ...wanted]);
  }

  remove(id: string): void {
    this.#keep(this.wanted.filter((one) => one.id !== id));
  }

  count(id: string, count: number): void {
    this.#keep(this.wanted.map((one) => (one.id === id ? { ...one, count } : one)));
  }

  empty(): void {
    this.#keep([]);
  }

  /** Back to what it was, such as before it was emptied. */
  restore(wanted: readonly Wanted[]): void {
    this.#keep(wanted);
  }

  #keep(wanted: readonly Wanted[]): void {
    this.wanted = wanted;
    localStorage.setItem(KEY, JSON.stringify(wanted));
  }
}
