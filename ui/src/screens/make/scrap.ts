// What becomes of a hose that did not pass: it is put on record where its proof failed, and another one is made.
import type { CallError } from '../../backend';
import type { App } from '../../state/app.svelte';
import { noFinish, noProof, type Failure, type JobDoc } from '../../state/job-doc';
import type { WordId } from '../../words/ids';
import { say } from '../../words/words';
import { benchOf } from './bench';
import type { Build } from './build.svelte';

const FAILED: Record<Failure, WordId> = {
  leak: 'make-failed-leak',
  'end-moved': 'make-failed-end-moved',
  burst: 'make-failed-burst',
};

/** How a proof failed. */
export function failureWords(failure: Failure): string {
  return say(FAILED[failure]);
}

/** The hose in hand is scrap: at that step, and by a failed proof where it came to one. */
export function scrapAt(doc: JobDoc, step: string, failed: Failure | null, now: Date): void {
  doc.scrap = {
    step,
    at: now.toISOString(),
    by: doc.person,
    failed,
    proving: { ...doc.proving },
    code: failed ? doc.code : null,
    written: null,
  };
}

/**
 * Puts a hose whose proof failed on record. Its code stands in the job before it is written, so that a program that is
 * killed in between finds it again and writes nothing twice.
 */
export async function recordScrap(app: App, doc: JobDoc, build: Build): Promise<CallError | null> {
  const { scrap } = doc;
  const { question } = build;
  if (!scrap?.failed || scrap.written || !question) return null;
  if (scrap.code) {
    const known = await app.backend.call('register.show', { code: scrap.code });
    if (known.ok && known.value.assembly?.proof.state === 'failed') {
      scrap.written = known.value.assembly.version;
      return null;
    }
  } else {
    const tag = await app.backend.call('tag.make', { question, proof: { state: 'not-proved' } });
    if (!tag.ok) return tag.error;
    scrap.code = tag.value.tag?.code ?? null;
    if (!scrap.code) return null;
  }
  const reply = await app.backend.call('bench.record', {
    ...benchOf(doc, question, app.settings.now),
    code: scrap.code,
    labelled: false,
    ...(doc.stock && { used: doc.stock.used }),
  });
  if (!reply.ok) return reply.error;
  scrap.written = reply.value.written;
  await app.refresh();
  return null;
}

/** Another hose of the same spec and settings: everything that was done on the bench is done again. */
export function makeAgain(doc: JobDoc): void {
  if (doc.scrap) doc.scraps.push(doc.scrap);
  doc.scrap = null;
  doc.stock = null;
  doc.ticks = {};
  doc.crimps = { A: [], B: [] };
  doc.givenUp = { A: [], B: [] };
  doc.finished = noFinish();
  doc.proving = noProof();
  doc.assembled = null;
  doc.code = null;
  doc.written = { made: null, taken: false, fitted: null };
}
