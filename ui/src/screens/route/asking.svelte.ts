import type { Answer, Backend, CallError, Given } from '../../backend';
import type { FieldQuestion } from '../../backend/types';

type Asked = Given<FieldQuestion>;

/** How long the ports must stand before lengths and cures are sought too, which takes longest. */
const REST_MS = 400;

/**
 * Asks how the hose lies: at once the shape alone, so that it follows a finger, and the whole once the ports stand
 * still. While a question is under way only the newest of those that came meanwhile is asked after it.
 */
export class Routed {
  /** The last answer stays while the next is on its way. */
  answer: Answer<'route.field'> | null = $state.raw(null);
  refused: CallError | null = $state.raw(null);
  /** Whether the answer is to what stands now; and whether lengths and cures were sought in it. */
  state: 'old' | 'shape' | 'whole' = $state('old');
  #question: Asked | null = null;
  #busy = false;

  constructor(
    readonly backend: Backend,
    readonly rest: () => Promise<void> = () => new Promise((done) => setTimeout(done, REST_MS)),
  ) {}

  async ask(question: Asked | null): Promise<void> {
    this.#question = question;
    this.state = 'old';
    if (!question) {
      this.answer = null;
      this.refused = null;
    }
    if (this.#busy || !question) return;
    this.#busy = true;
    for (let next = this.#open(); next; next = this.#open()) await this.#once(next);
    this.#busy = false;
  }

  /** The question that is not answered whole yet. */
  #open(): Asked | null {
    return this.state === 'whole' ? null : this.#question;
  }

  async #once(asked: Asked): Promise<void> {
    const whole = this.state === 'shape';
    if (whole) await this.rest();
    if (this.#question !== asked) return;
    const reply = await this.backend.call('route.field', whole ? asked : { ...asked, shape_only: true });
    // Of a question that was taken back meanwhile nothing is shown; of one that moved on, its shape.
    if (!this.#question) return;
    if (reply.ok) this.answer = reply.value;
    this.refused = reply.ok ? null : reply.error;
    if (this.#question === asked) this.state = whole || !reply.ok ? 'whole' : 'shape';
  }
}
