import type { Answer, Backend, CallError, Question } from '../../backend';
import type { DueLine } from '../../backend/types';

/** Rows read at once: what a person scrolls through before narrowing the list. */
export const AT_ONCE = 60;

type Asked = Omit<Question<'register.due'>, 'offset' | 'limit'>;

/** What falls due, as far as it was read; more comes when it is asked for. */
export class DueList {
  rows: readonly DueLine[] = $state.raw([]);
  /** All but the rows; null until they came. */
  answer: Answer<'register.due'> | null = $state.raw(null);
  problem: CallError | null = $state.raw(null);
  #asked: Asked | null = null;
  #turn = 0;

  constructor(readonly backend: Backend) {}

  /** Whether there are rows after those. */
  get more(): boolean {
    return this.answer?.more ?? false;
  }

  /** Asks from the first row on. What stood before stands until it comes. */
  async ask(asked: Asked): Promise<void> {
    this.#asked = asked;
    await this.#read(asked, []);
  }

  /** Reads the rows after those. */
  async next(): Promise<void> {
    if (this.#asked && this.more) await this.#read(this.#asked, this.rows);
  }

  async #read(asked: Asked, before: readonly DueLine[]): Promise<void> {
    this.#turn += 1;
    const turn = this.#turn;
    const reply = await this.backend.call('register.due', { ...asked, offset: before.length, limit: AT_ONCE });
    if (turn !== this.#turn) return;
    this.problem = reply.ok ? null : reply.error;
    if (!reply.ok) return;
    this.rows = [...before, ...reply.value.due];
    this.answer = { ...reply.value, glance: this.answer?.glance ?? null };
    if (before.length === 0) await this.#glance(asked);
  }

  /** What is told at a glance counts everything and comes after the first rows, which do not wait for it. */
  async #glance(asked: Asked): Promise<void> {
    const reply = await this.backend.call('register.due', { ...asked, by: 'date', glance: true, limit: 0 });
    if (asked !== this.#asked || !this.answer) return;
    this.problem = reply.ok ? null : reply.error;
    if (reply.ok) this.answer = { ...this.answer, glance: reply.value.glance };
  }
}
