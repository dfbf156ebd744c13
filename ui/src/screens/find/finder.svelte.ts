import type { Backend, CallError, Given } from '../../backend';
import type { Found, Readings, Tables } from '../../backend/types';

/** What the readings say, always of the newest question: an older answer that comes late is dropped. */
export class Finder {
  found: Found | null = $state.raw(null);
  /** The readings that `found` is the answer to. */
  answered: Given<Readings> | null = $state.raw(null);
  problem: CallError | null = $state.raw(null);
  /** Whether a first answer is there, a refusal included. */
  heard = $state(false);
  /** Rows of the catalogue to draw from; null until they are read. */
  tables: Tables | null = $state.raw(null);
  #text = '';
  #asked = 0;
  #latest: Promise<void> = Promise.resolve();

  constructor(readonly backend: Backend) {}

  async readTables(): Promise<void> {
    const reply = await this.backend.call('tables', {});
    if (reply.ok) this.tables = reply.value;
    else this.problem = reply.error;
  }

  /** Asks anew, after each key; the question that stands is not asked twice. */
  ask(readings: Given<Readings>): Promise<void> {
    const text = JSON.stringify(readings);
    if (text !== this.#text) {
      this.#text = text;
      this.#asked += 1;
      this.#latest = this.#call(this.#asked, readings);
    }
    return this.#latest;
  }

  async #call(number: number, readings: Given<Readings>): Promise<void> {
    const reply = await this.backend.call('find', readings);
    if (number !== this.#asked) return;
    this.heard = true;
    this.problem = reply.ok ? null : reply.error;
    if (reply.ok) {
      this.found = reply.value;
      this.answered = readings;
    } else this.#text = '';
  }
}
