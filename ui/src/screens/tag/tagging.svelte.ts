import type { Answer, Backend, CallError, Question } from '../../backend';
import type { Assembly, TagContent, Versioned } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';

type CheckQuestion = Question<'check'>;

/** The tag of the job in hand. */
export class Tagging {
  made: Answer<'tag.make'> | null = $state.raw(null);
  /** Why there is no tag. */
  error: CallError | null = $state.raw(null);
  #tag = 0;

  constructor(readonly backend: Backend) {}

  /** Asks for the tag; a job without a code gets one with it. Of answers that overtake each other the latest stands. */
  async make(question: CheckQuestion, doc: JobDoc, today: string, corrects: boolean): Promise<void> {
    const mine = ++this.#tag;
    const reply = await this.backend.call('tag.make', {
      question,
      proof: $state.snapshot(doc.proof),
      assembled: doc.assembled ?? today,
      // Of another spec than on record a code gets no tag: what corrects the record is reckoned without it.
      ...(doc.code && !corrects && { code: doc.code }),
    });
    if (mine !== this.#tag) return;
    const { code } = doc;
    const of = reply.ok ? reply.value : null;
    // It is the same hose: its tag is shown under the code it has.
    this.made = of?.tag && corrects && code ? { ...of, tag: { ...of.tag, code, seal: undefined } } : of;
    this.error = reply.ok ? null : reply.error;
    const tag = this.made?.tag ?? null;
    if (!tag) return;
    doc.assembled ??= today;
    doc.code ??= tag.code;
  }
}

/** The hose on record, corrected: what its tag says now over what was done on the bench. */
export function corrected(
  doc: JobDoc,
  made: Answer<'tag.make'>,
  tag: TagContent,
  { version, ...recorded }: Versioned<Assembly>,
): Question<'register.record'>['events'] {
  const { spec, pressure_bar } = tag;
  const { verdict, catalogue, program } = made;
  const service = $state.snapshot(doc.service);
  const body = {
    kind: 'assembly-made' as const,
    ...recorded,
    spec,
    service,
    verdict,
    pressure_bar,
    catalogue,
    program,
  };
  return [{ builds_on: [version], body }];
}

/** A code in the groups it is read aloud in. */
export function groupsOf(code: string): string[] {
  return code.split('-');
}
