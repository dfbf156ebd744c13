import type { Backend, CallError } from '../../backend';
import type { MachineId, TagCode } from '../../backend/types';

/** Rows read at once, so that other questions get between. */
const AT_ONCE = 500;
/** By then nothing has fallen due but what has no day: the register counts that as due at any time. */
const BEFORE_ALL = '0001-01-01';

/** How many hoses of each machine have no day that their age or their last inspection counts from. They are in no count of
 * what is past. */
export class NoDay {
  machines: ReadonlyMap<MachineId, number> = $state.raw(new Map());
  problem: CallError | null = $state.raw(null);
  #turn = 0;

  constructor(readonly backend: Backend) {}

  async ask(): Promise<void> {
    const turn = ++this.#turn;
    const found = new Map<MachineId, Set<TagCode>>();
    for (let offset = 0, more = true; more; offset += AT_ONCE) {
      const reply = await this.backend.call('register.due', {
        on: BEFORE_ALL,
        within_days: 0,
        what: ['service', 'inspection'],
        offset,
        limit: AT_ONCE,
      });
      if (turn !== this.#turn) return;
      this.problem = reply.ok ? null : reply.error;
      if (!reply.ok) return;
      for (const { at, code } of reply.value.due) {
        if (at?.machine) found.set(at.machine, (found.get(at.machine) ?? new Set()).add(code));
      }
      more = reply.value.more;
    }
    this.machines = new Map([...found].map(([machine, codes]) => [machine, codes.size]));
  }
}
