import type { Backend } from '../../backend';
import type { EventRef, HoseOverride, Spec, TagCode } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';

/** The hose as it stands on the record, held against what the job says now. */
export class Recorded {
  #spec: Spec | null = $state.raw(null);
  /** The event that stands; a correction builds on it. */
  version: EventRef | null = $state.raw(null);
  /** What was taken on already. */
  overrides: readonly HoseOverride[] = $state.raw([]);

  constructor(readonly backend: Backend) {}

  async read(code: TagCode | null): Promise<void> {
    const reply = code ? await this.backend.call('register.show', { code }) : null;
    const assembly = reply?.ok ? reply.value.assembly : null;
    this.#spec = assembly?.spec ?? null;
    this.version = assembly?.version ?? null;
    this.overrides = reply?.ok ? reply.value.overrides : [];
  }

  /** Whether the spec was changed after the hose was recorded: tag and record then say what it is not. */
  differs(doc: JobDoc): boolean {
    return doc.written.made !== null && this.#spec !== null && plain(this.#spec) !== plain(doc.spec);
  }
}

/** One writing of a value: keys in order; what is not known is left out, as the record leaves it out. */
function plain(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) => {
    if (part === null || typeof part !== 'object' || Array.isArray(part)) return part;
    const known = Object.entries(part).filter(
      ([, of]) => of !== null && of !== undefined && !(Array.isArray(of) && of.length === 0),
    );
    return Object.fromEntries(known.toSorted(([a], [b]) => a.localeCompare(b)));
  });
}
