import type { Answer, Backend, CallError } from '../../backend';
import type { Finding, HoursRead, PlaceAt, Stay, TagCode } from '../../backend/types';

/** The place a hose goes to, as the register has it. */
export class Place {
  sheet: Answer<'register.place'> | null = $state.raw(null);
  /** The machine's last reading; null where none was ever read, or it is not known yet. */
  hours: HoursRead | null = $state.raw(null);
  problem: CallError | null = $state.raw(null);
  #latest = 0;

  constructor(readonly backend: Backend) {}

  /** `hose` is the one that is to go there; none while it has no code. */
  async read(at: PlaceAt | null, hose: TagCode | null): Promise<void> {
    const mine = ++this.#latest;
    this.sheet = null;
    this.hours = null;
    this.problem = null;
    if (!at) return;
    const [place, machine] = await Promise.all([
      this.backend.call('register.place', { place: at.place, ...(hose && { hose }) }),
      at.machine === null ? null : this.backend.call('register.machine', { machine: at.machine }),
    ]);
    if (mine !== this.#latest) return;
    if (place.ok) this.sheet = place.value;
    if (machine?.ok) this.hours = machine.value.hours;
    const refused = [place, machine].find((reply) => reply && !reply.ok);
    this.problem = refused && !refused.ok ? refused.error : null;
  }

  /** What tells the hose that is to go there from the one that belongs there. */
  get strange(): Finding[] {
    return (this.sheet?.findings ?? []).filter(({ rule }) => rule === 'belongs');
  }

  /** The hose that sits there and has to come off first. */
  get sitting(): Stay | null {
    return this.sheet?.stays.find((stay) => stay.off === null) ?? null;
  }
}
