import type { Backend, CallError } from '../backend';
import type { Exchanged } from '../backend/types';

/** How long after an exchange the next one begins by itself. */
export const PAUSE_MS = 15 * 60 * 1000;

/** The exchange with the fleet's other devices: by hand, and by itself whenever there may be a signal. */
export class Exchange {
  /** One is under way. */
  running = $state(false);
  /** How the last one went, and why it did not. */
  last: Exchanged | null = $state.raw(null);
  problem: CallError | null = $state.raw(null);

  constructor(
    readonly backend: Backend,
    /** Something came: the screens read the register anew. */
    readonly came: () => void,
  ) {}

  /** Exchanges now. Where one is under way it is that one. */
  async now(): Promise<void> {
    if (this.running) return;
    this.running = true;
    const reply = await this.backend.call('share.exchange', {});
    this.running = false;
    this.problem = reply.ok ? null : reply.error;
    if (!reply.ok) return;
    this.last = reply.value;
    if (reply.value.came > 0 || reply.value.photos.came > 0) this.came();
  }

  /** From now on it exchanges by itself: at the start, when the signal comes back, and every so often. */
  keep(): () => void {
    const go = () => void this.#where_chosen();
    go();
    const timer = setInterval(go, PAUSE_MS);
    addEventListener('online', go);
    return () => {
      clearInterval(timer);
      removeEventListener('online', go);
    };
  }

  /** A device without a storage or a fleet has nothing to exchange and is not told so every time. */
  async #where_chosen(): Promise<void> {
    const shown = await this.backend.call('share.show', {});
    if (shown.ok && shown.value.url !== null && shown.value.fleet !== null) await this.now();
  }
}
