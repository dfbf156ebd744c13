import type { Answer, Backend, CallError, Question } from '../../backend';
import type { EventRef, LabelKind, Proof, TagContent } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';

type CheckQuestion = Question<'check'>;

/** A label's size and the printer's dots an inch. */
export interface Size {
  width_mm: number;
  height_mm: number;
  dpi: number;
}

/** The tag of the job in hand and how its label comes out. */
export class Tagging {
  made: Answer<'tag.make'> | null = $state.raw(null);
  preview: Answer<'tag.preview'> | null = $state.raw(null);
  /** Why there is no tag. */
  error: CallError | null = $state.raw(null);
  /** Why the label can not be drawn in that size. */
  labelError: CallError | null = $state.raw(null);
  #tag = 0;
  #label = 0;

  constructor(readonly backend: Backend) {}

  /** Asks for the tag; a job without a code gets one with it. Of answers that overtake each other the latest stands. */
  async make(question: CheckQuestion, doc: JobDoc, today: string): Promise<void> {
    const mine = ++this.#tag;
    const reply = await this.backend.call('tag.make', {
      question,
      proof: $state.snapshot(doc.proof),
      assembled: doc.assembled ?? today,
      ...(doc.code && { code: doc.code }),
    });
    if (mine !== this.#tag) return;
    this.made = reply.ok ? reply.value : null;
    this.error = reply.ok ? null : reply.error;
    const tag = reply.ok ? reply.value.tag : null;
    if (!tag) return;
    doc.assembled ??= today;
    doc.code ??= tag.code;
  }

  async draw(tag: TagContent, size: Size): Promise<void> {
    const mine = ++this.#label;
    const reply = await this.backend.call('tag.preview', { tag, ...size, as: 'svg' });
    if (mine !== this.#label) return;
    this.preview = reply.ok ? reply.value : null;
    this.labelError = reply.ok ? null : reply.error;
  }

  /** The label as a file. */
  label(tag: TagContent, size: Size, as: LabelKind) {
    return this.backend.call('tag.label', { tag, ...size, as });
  }
}

/** The proof as the record keeps it. */
export function recordedProof(doc: JobDoc): Proof {
  const { hold_s, gauge, calibrated } = doc.proving;
  return doc.proof.state === 'proved' && hold_s !== null
    ? { state: 'proved', pressure_bar: doc.proof.pressure_bar, hold_s, gauge, gauge_calibrated: calibrated }
    : { state: 'not-proved', why: 'no-rig' };
}

/** The hose as the record keeps it; a correction builds on what stands there. */
export function madeEvents(
  doc: JobDoc,
  made: Answer<'tag.make'>,
  tag: TagContent,
  corrects: EventRef | null = null,
): Question<'register.record'>['events'] {
  return [
    {
      ...(corrects && { builds_on: [corrects] }),
      body: {
        kind: 'assembly-made',
        code: tag.code,
        spec: tag.spec,
        service: $state.snapshot(doc.service),
        assembled: tag.assembled,
        proof: recordedProof(doc),
        verdict: made.verdict,
        pressure_bar: tag.pressure_bar,
        catalogue: made.catalogue,
        program: made.program,
      },
    },
  ];
}

/** A code in the groups it is read aloud in. */
export function groupsOf(code: string): string[] {
  return code.split('-');
}
