import type { CallError } from '../../backend';
import type { EventRef } from '../../backend/types';
import type { App } from '../../state/app.svelte';
import { say } from '../../words/words';
import { struckOut, write } from '../parts/write';
import type { Change, Said } from './stock';

/** A change that was written, and how it is taken back. */
interface Done {
  words: string;
  written: readonly EventRef[];
}

/** Changes of the stock. The last one can be taken back: nobody is asked "are you sure". */
export class Changing {
  problem: CallError | null = $state.raw(null);
  done: Done | null = $state.raw(null);
  /** What a person must see of the last change, such as less than nothing on the shelf. */
  said: readonly Said[] = $state.raw([]);
  busy = $state(false);

  constructor(
    readonly app: App,
    readonly onchange: () => void,
  ) {}

  /** Writes all of them or none; true once they are on the disk. */
  async make(changes: Change[], words: string): Promise<boolean> {
    if (this.busy) return false;
    this.busy = true;
    const reply = await this.app.backend.call('stock.change', { changes });
    this.busy = false;
    this.problem = reply.ok ? null : reply.error;
    if (!reply.ok) return false;
    this.wrote(words, reply.value);
    return true;
  }

  /** Remembers what was written, so that it can be taken back. */
  wrote(words: string, { written, said }: { written: readonly EventRef[]; said: readonly Said[] }): void {
    this.done = { words, written };
    this.said = said;
    this.onchange();
  }

  /** Strikes out what was written last. */
  async undo(): Promise<void> {
    const { done } = this;
    if (!done || this.busy) return;
    this.busy = true;
    this.problem = await write(this.app, struckOut(done.written, say('shelf-undo-reason')));
    this.busy = false;
    if (this.problem) return;
    this.done = null;
    this.said = [];
    this.onchange();
  }
}
