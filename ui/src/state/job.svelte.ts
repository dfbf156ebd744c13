import type { Backend, CallError } from '../backend';
import type { JobId, JsonValue } from '../backend/types';
import { emptyJob, resumed, type JobDoc } from './job-doc';

/** How long after a refused write it is tried again. */
const RETRY_MS = 2000;

/**
 * The job in hand. Whatever changes in `doc` is written to the register at once, one write after the
 * other and always the newest, so nothing is lost when the phone is put away.
 */
export class Job {
  /** Null while no job is open. */
  doc: JobDoc | null = $state(null);
  /** Whether all that stands on the screen is on the disk. */
  kept = $state(true);
  problem: CallError | null = $state.raw(null);
  #id: JobId | null = null;
  #last = '';
  #writing: Promise<void> | null = null;

  constructor(readonly backend: Backend) {}

  get id(): JobId | null {
    return this.#id;
  }

  /** Opens a new job. It is written with its first change. */
  async begin(start: Partial<JobDoc> = {}): Promise<void> {
    await this.aside();
    this.doc = { ...emptyJob(), ...start };
  }

  /** Opens a job as it was left. */
  async open(id: JobId, content: JsonValue): Promise<void> {
    await this.aside();
    this.#id = id;
    this.#last = JSON.stringify(content);
    this.doc = resumed(content as Parameters<typeof resumed>[0]);
  }

  /** Puts it aside; it stays among the jobs that are not done. */
  async aside(): Promise<void> {
    if (this.doc) this.keep(JSON.stringify(this.doc));
    this.doc = null;
    await this.#settled();
    this.#id = null;
    this.#last = '';
    this.kept = true;
  }

  /** Done, or given up. */
  async close(): Promise<void> {
    // Nothing more is kept of it, and what is under way is over first: a write that came after would bring it back.
    this.doc = null;
    await this.#settled();
    if (this.#id) {
      const reply = await this.backend.call('job.close', { job: this.#id });
      if (!reply.ok) this.problem = reply.error;
    }
    await this.aside();
  }

  async #settled(): Promise<void> {
    while (this.#writing) await this.#writing;
  }

  /** Called by an effect of the app with every change. */
  keep(content: string): void {
    if (content === this.#last) return;
    this.#last = content;
    this.kept = false;
    this.#writing ??= this.#write();
  }

  async #write(): Promise<void> {
    let written: string;
    do {
      written = this.#last;
      const reply = await this.backend.call('job.keep', { job: this.#id, content: JSON.parse(written) as JsonValue });
      if (!reply.ok) {
        this.problem = reply.error;
        this.#writing = null;
        this.#again();
        return;
      }
      this.#id ??= reply.value.job;
      this.problem = null;
    } while (written !== this.#last);
    this.kept = true;
    this.#writing = null;
  }
  /** What was refused (the register was in use, the disk full) is tried until it stands. */
  #again(): void {
    this.#last = '';
    setTimeout(() => {
      if (this.doc) this.keep(JSON.stringify(this.doc));
    }, RETRY_MS);
  }
}
