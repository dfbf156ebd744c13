import type { Backend, CallError, Question } from '../backend';
import type { JsonValue } from '../backend/types';

type What = Question<'unfinished.read'>['what'];

/**
 * What was begun on this device and is no job. Whatever changes in it is written to the register at once, one write after
 * the other, so that nothing is lost when the phone is put away.
 */
export class Begun<T extends object> {
  problem: CallError | null = $state.raw(null);
  #last = '';
  #writing: Promise<unknown> = Promise.resolve();

  constructor(
    readonly backend: Backend,
    readonly what: What,
  ) {}

  /** As it was left; null where nothing was begun, or it is done. */
  async read(): Promise<T | null> {
    const reply = await this.backend.call('unfinished.read', { what: this.what });
    return reply.ok ? ((reply.value.unfinished?.content ?? null) as T | null) : null;
  }

  /** The file it is about, as it was picked. */
  async file(): Promise<Uint8Array | null> {
    const reply = await this.backend.call('unfinished.file', { what: this.what });
    this.problem = reply.ok ? null : reply.error;
    return reply.ok ? reply.bytes : null;
  }

  /** Keeps it as it stands now; the file stays where none is given. */
  keep(now: T, file?: Uint8Array): void {
    const content = JSON.stringify(now);
    if (content === this.#last && !file) return;
    this.#last = content;
    this.#next(() =>
      this.backend.call('unfinished.keep', { what: this.what, content: JSON.parse(content) as JsonValue }, file),
    );
  }

  /** It is done, or given up. What is under way is over first: a write that came after would bring it back. */
  close(): Promise<unknown> {
    this.#last = '';
    return this.#next(() => this.backend.call('unfinished.close', { what: this.what }));
  }

  #next(call: () => Promise<{ ok: true } | { ok: false; error: CallError }>): Promise<unknown> {
    this.#writing = this.#writing.then(async () => {
      const reply = await call();
      this.problem = reply.ok ? null : reply.error;
    });
    return this.#writing;
  }
}
