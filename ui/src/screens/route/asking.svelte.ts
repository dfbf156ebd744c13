import type { Answer, Backend, CallError, Given } from '../../backend';
import type { FieldQuestion } from '../../backend/types';

type Asked = Given<FieldQuestion>;

/** Asks how the hose lies. While a question is under way only the newest of those that came meanwhile is asked after it. */
export class Routed {
  /** The last answer stays while the next is on its way. */
  answer: Answer<'route.field'> | null = $state.raw(null);
  refused: CallError | null = $state.raw(null);
  /** Whether the answer is to what stands now. */
  settled = $state(false);
  #question: Asked | null = null;
  #busy = false;

  constructor(readonly backend: Backend) {}

  async ask(question: Asked | null): Promise<void> {
    this.#question = question;
    this.settled = false;
    if (!question) {
      this.answer = null;
      this.refused = null;
    }
    if (this.#busy) return;
    this.#busy = true;
    for (let next = this.#open(); next; next = this.#open()) await this.#once(next);
    this.#busy = false;
  }

  /** The question that is not answered yet. */
  #open(): Asked | null {
    return this.settled ? null : this.#question;
  }

  async #once(asked: Asked): Promise<void> {
    const reply = await this.backend.call('route.field', asked);
    // Of a question that was taken back meanwhile nothing is shown.
    if (!this.#question) return;
    if (reply.ok) this.answer = reply.value;
    this.refused = reply.ok ? null : reply.error;
    this.settled = this.#question === asked;
  }
}
