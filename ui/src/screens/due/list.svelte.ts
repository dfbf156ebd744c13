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
    const question = { ...asked, glance: before.length === 0, offset: before.length, limit: AT_ONCE };
    const reply = await this.backend.call('register.due', question);
    if (turn !== this.#turn) return;
    this.problem = reply.ok ? null : reply.error;
    if (!reply.ok) return;
    this.rows = [...before, ...reply.value.due];
    // What is told at a glance comes with the first rows alone.
    this.answer = { ...reply.value, glance: reply.value.glance ?? this.answer?.glance ?? null };
  }
}
