import type { CallError, Reply } from '../../backend';

/** Rows asked for at once. */
export const PAGE = 100;
/** Pages that are kept; those longest out of sight are let go. */
const KEPT = 40;

/** Some rows of a list, and how many there are in all. */
export interface Page<Row> {
  total: number;
  rows: readonly Row[];
}

/** A list too long to be read at once: what is in sight is asked for, page by page. */
export class Pages<Row> {
  /** How many rows there are; null until the first page came. */
  total: number | null = $state.raw(null);
  problem: CallError | null = $state.raw(null);
  #pages: ReadonlyMap<number, readonly Row[]> = $state.raw(new Map());
  #asked = new Set<number>();
  #turn = 0;
  #fetch: ((offset: number, limit: number) => Promise<Reply<Page<Row>>>) | null = null;

  /** Asks another question: from its first page. What was shown stands until the answer comes. */
  async ask(fetch: (offset: number, limit: number) => Promise<Reply<Page<Row>>>): Promise<void> {
    this.#turn += 1;
    this.#fetch = fetch;
    this.#asked = new Set();
    await this.#page(0, true);
  }

  /** The row at that place; undefined while its page is not there. */
  row(index: number): Row | undefined {
    return this.#pages.get(Math.floor(index / PAGE))?.[index % PAGE];
  }

  /** Sees to it that the rows from one up to, without, another come. */
  want(from: number, to: number): void {
    if (this.total === null) return;
    const last = Math.ceil(Math.min(to, this.total) / PAGE);
    for (let page = Math.floor(from / PAGE); page < last; page += 1) void this.#page(page, false);
  }

  async #page(page: number, first: boolean): Promise<void> {
    if (!this.#fetch || this.#asked.has(page) || (!first && this.#pages.has(page))) return;
    const turn = this.#turn;
    this.#asked.add(page);
    const reply = await this.#fetch(page * PAGE, PAGE);
    if (turn !== this.#turn) return;
    this.#asked.delete(page);
    this.problem = reply.ok ? null : reply.error;
    if (!reply.ok) return;
    this.total = reply.value.total;
    const kept = first ? [] : [...this.#pages].slice(1 - KEPT);
    this.#pages = new Map([...kept, [page, reply.value.rows]]);
  }
}
