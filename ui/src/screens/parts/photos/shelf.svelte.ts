import type { CallError } from '../../../backend';
import type { About, PhotoKept } from '../../../backend/types';
import type { App } from '../../../state/app.svelte';
import { say } from '../../../words/words';
import { write } from '../write';

/** The photos of one thing, and the pictures of those that are here. */
export class PhotoShelf {
  photos: readonly PhotoKept[] = $state.raw([]);
  /** Addresses of pictures by their hash. */
  pictures: Readonly<Record<string, string>> = $state.raw({});
  problem: CallError | null = $state.raw(null);
  /** Why the last one was not kept. */
  refused: CallError | null = $state.raw(null);
  busy = $state(false);
  /** The last one that was to be added is on record already. */
  known = $state(false);
  #closed = false;

  constructor(
    readonly app: App,
    readonly about: About,
  ) {}

  /** Reads the list, then one picture after the other. */
  async ask(): Promise<void> {
    const reply = await this.app.backend.call('photo.list', { about: this.about });
    this.problem = reply.ok ? null : reply.error;
    if (!reply.ok) return;
    this.photos = reply.value.photos;
    for (const { sha256, state } of reply.value.photos) {
      if (state !== 'here' || this.pictures[sha256]) continue;
      if (!(await this.#read(sha256))) return;
    }
  }

  async #read(sha256: string): Promise<boolean> {
    const reply = await this.app.backend.call('photo.read', { sha256 });
    if (this.#closed) return false;
    if (reply.ok) {
      const picture = new Blob([new Uint8Array(reply.bytes)], { type: reply.value.mime });
      this.pictures = { ...this.pictures, [sha256]: URL.createObjectURL(picture) };
    } else {
      // It looked whole by its length: what was read said otherwise.
      this.photos = this.photos.map((photo) => (photo.sha256 === sha256 ? { ...photo, state: 'damaged' } : photo));
    }
    return true;
  }

  async add(picture: Uint8Array): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    const reply = await this.app.backend.call('photo.add', { about: this.about }, picture);
    this.refused = reply.ok ? null : reply.error;
    this.known = reply.ok && reply.value.known;
    if (reply.ok) await this.ask();
    this.busy = false;
  }

  /** Strikes it out. Whether it is gone. */
  async takeBack({ versions }: PhotoKept): Promise<boolean> {
    if (this.busy) return false;
    this.busy = true;
    const body = { kind: 'voided' as const, reason: say('photos-back-reason') };
    this.refused = await write(this.app, [{ body, builds_on: versions }]);
    this.known = false;
    if (!this.refused) await this.ask();
    this.busy = false;
    return this.refused === null;
  }

  /** Lets go of the pictures. */
  close(): void {
    this.#closed = true;
    Object.values(this.pictures).forEach((address) => URL.revokeObjectURL(address));
  }
}
