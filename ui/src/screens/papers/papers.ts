// The papers of a hose: what is asked for each.
import type { Backend, Question, Reply } from '../../backend';
import type { FileMade, Settings, TagCode } from '../../backend/types';
import type { Stroke } from '../../components/SignaturePad.svelte';
import type { WordId } from '../../words/ids';

export type PaperKind = 'build-sheet' | 'certificate' | 'report';

export const names = {
  'build-sheet': 'papers-build-sheet',
  certificate: 'papers-certificate',
  report: 'papers-report',
} as const satisfies Record<PaperKind, WordId>;

/**
 * What there is: a sheet of what is in hand, and of what is on record its report and, unless it `failed` its proof, its
 * certificate. Null is not on record.
 */
export function kindsFor(inHand: boolean, failed: boolean | null): PaperKind[] {
  return [
    ...(inHand ? (['build-sheet'] as const) : []),
    ...(failed === false ? (['certificate'] as const) : []),
    ...(failed === null ? [] : (['report'] as const)),
  ];
}

/** Whether somebody signs it. */
export function signs(kind: PaperKind): boolean {
  return kind !== 'build-sheet';
}

/** What a paper is asked with: a sheet with what is made, the others with the code of the hose and who signs. */
export type Asked =
  | { kind: 'build-sheet'; make: Question<'make'>; subject: string; paper: Settings['paper'] }
  | { kind: 'certificate' | 'report'; code: TagCode; name: string; strokes: Stroke[]; paper: Settings['paper'] };

/** The paper as a file. */
export function ask(backend: Backend, asked: Asked, as: 'svg' | 'pdf'): Promise<Reply<FileMade>> {
  const { paper } = asked;
  if (asked.kind === 'build-sheet') {
    const { make, subject } = asked;
    return backend.call('make.paper', { make, subject, paper, as });
  }
  const { kind, code, name, strokes } = asked;
  const signature = strokes.length > 0 ? { name, strokes } : null;
  return backend.call(`${kind}.paper`, { code, paper, as, signature });
}
