import type { Answer, Backend, CallError, CommandName, Question } from '../../backend';

/** What a screen reads from the register: the answer, or why there is none. The last answer stands while it is read anew. */
export class Read<N extends CommandName> {
  value: Answer<N> | null = $state.raw(null);
  problem: CallError | null = $state.raw(null);
  #asked = 0;

  constructor(
    readonly backend: Backend,
    readonly command: N,
  ) {}

  /** Asks; of two questions under way only the later one's answer is shown. */
  async ask(question: Question<N>): Promise<void> {
    this.#asked += 1;
    const asked = this.#asked;
    const reply = await this.backend.call(this.command, question);
    if (asked !== this.#asked) return;
    if (reply.ok) this.value = reply.value;
    this.problem = reply.ok ? null : reply.error;
  }
}
