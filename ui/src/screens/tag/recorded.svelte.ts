import type { Backend } from '../../backend';
import type { Assembly, HoseNote, HoseOverride, TagCode, Versioned } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';

/** The hose as it stands on the record, held against what the job says now. */
export class Recorded {
  /** As it stands; a correction builds on its version. */
  assembly: Versioned<Assembly> | null = $state.raw(null);
  /** What was taken on already. */
  overrides: readonly HoseOverride[] = $state.raw([]);
  /** What is noted on it. */
  notes: readonly HoseNote[] = $state.raw([]);

  constructor(readonly backend: Backend) {}

  async read(code: TagCode | null): Promise<void> {
    const reply = code ? await this.backend.call('register.show', { code }) : null;
    this.assembly = reply?.ok ? reply.value.assembly : null;
    this.overrides = reply?.ok ? reply.value.overrides : [];
    this.notes = reply?.ok ? reply.value.notes : [];
  }

  /** Whether the spec was changed after the hose was recorded: tag and record then say what it is not. */
  differs(doc: JobDoc): boolean {
    const { assembly } = this;
    return doc.written.made !== null && assembly !== null && plain(assembly.spec) !== plain(doc.spec);
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
