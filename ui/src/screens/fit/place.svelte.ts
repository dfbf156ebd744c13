import type { Answer, Backend, CallError } from '../../backend';
import type { PlaceAt, Stay } from '../../backend/types';

/** The place a hose goes to, as the register has it. */
export class Place {
  sheet: Answer<'register.place'> | null = $state.raw(null);
  problem: CallError | null = $state.raw(null);
  #latest = 0;

  constructor(readonly backend: Backend) {}

  async read(at: PlaceAt | null): Promise<void> {
    const mine = ++this.#latest;
    this.sheet = null;
    this.problem = null;
    if (!at) return;
    const reply = await this.backend.call('register.place', { place: at.place });
    if (mine !== this.#latest) return;
    if (reply.ok) this.sheet = reply.value;
    else this.problem = reply.error;
  }

  /** The hose that sits there and has to come off first. */
  get sitting(): Stay | null {
    return this.sheet?.stays.find((stay) => stay.off === null) ?? null;
  }
}
