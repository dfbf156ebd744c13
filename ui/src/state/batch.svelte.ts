import type { Question } from '../backend';

/** A hose of the batch: what it is called, how it is made, how many of it. */
export interface BatchHose {
  /** The place or the job it is for; once in a batch. */
  id: string;
  name: string;
  make: Question<'make'>;
  count: number;
}

const KEY = 'hosewright-batch';

function kept(): BatchHose[] {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? '[]') as BatchHose[];
  } catch {
    return [];
  }
}

/** Several hoses that are made at once. It stays on this device until it is emptied: no record, a list to work by. */
export class Batch {
  hoses: readonly BatchHose[] = $state.raw(kept());

  has(id: string): boolean {
    return this.hoses.some((one) => one.id === id);
  }

  add(...hoses: readonly BatchHose[]): void {
    this.#keep([...this.hoses.filter(({ id }) => !hoses.some((one) => one.id === id)), ...hoses]);
  }

  remove(id: string): void {
    this.#keep(this.hoses.filter((one) => one.id !== id));
  }

  count(id: string, count: number): void {
    this.#keep(this.hoses.map((one) => (one.id === id ? { ...one, count } : one)));
  }

  empty(): void {
    this.#keep([]);
  }

  /** Back to what it was, such as before it was emptied. */
  restore(hoses: readonly BatchHose[]): void {
    this.#keep(hoses);
  }

  /** As the commands ask for it. */
  get asked(): { name: string; make: Question<'make'>; count: number }[] {
    return this.hoses.map(({ name, make, count }) => ({ name, make, count }));
  }

  #keep(hoses: readonly BatchHose[]): void {
    this.hoses = hoses;
    localStorage.setItem(KEY, JSON.stringify(hoses));
  }
}
