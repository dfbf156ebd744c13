import type { Question } from '../../backend';
import type { TagCode } from '../../backend/types';
import type { App } from '../../state/app.svelte';
import type { Wanted } from '../../state/batch.svelte';
import { pick, type Picked } from './picking';

/** A wanted hose with how it stands now. */
export type Standing = Wanted & Picked & { name: string };

/** The batch in hand as its jobs and places stand now. */
export class Current {
  /** Null until they were asked. */
  hoses: readonly Standing[] | null = $state.raw(null);
  #asked = 0;

  constructor(readonly app: App) {}

  /** Asks each job and place anew. */
  async ask(wanted: readonly Wanted[]): Promise<void> {
    const asked = ++this.#asked;
    const hoses = await Promise.all(
      wanted.map(async (one) => {
        const picked = await pick(this.app, one.id);
        return { ...one, ...picked, name: picked.name ?? one.name };
      }),
    );
    if (asked === this.#asked) this.hoses = hoses;
  }

  /** Those that are to be made, as the commands ask for them. */
  get asked(): Question<'batch'>['hoses'] {
    return (this.hoses ?? []).flatMap((one) =>
      'make' in one ? [{ name: one.name, make: one.make, count: one.count }] : [],
    );
  }

  /** The codes of those that are made. */
  get made(): TagCode[] {
    return (this.hoses ?? []).flatMap((one) => ('code' in one ? [one.code] : []));
  }
}
