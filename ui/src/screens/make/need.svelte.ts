// What the hose in hand takes from the stock: which reel or offcut it is cut from, and what goes off with it.
import type { Answer, Question } from '../../backend';
import type { App } from '../../state/app.svelte';
import type { JobDoc, OffStock } from '../../state/job-doc';
import { hoseLong } from '../../words/spec';
import { Read } from '../parts/read.svelte';
import type { Build } from './build.svelte';

export type Need = Answer<'stock.need'>;
/** What goes into one hose, whole: what of it there is none is an empty list. */
export type Used = Required<Need['used'][number]>;

/** What the first hose asked about takes; null while something is not there or not known. */
export function usedOf({ used: [used] }: Need): Used | null {
  return used ? { store: used.store, pieces: used.pieces ?? [], items: used.items ?? [] } : null;
}

/** Whether stock is kept at all: where none is, nothing of it stands on the bench's sheet. */
export function isKept(need: Need): boolean {
  return need.lines.some(({ state, elsewhere }) => state === 'there' || state === 'short' || elsewhere.length > 0);
}

/** What goes off the stock as it is wanted now, with the piece and the fate of its rest as the person chose them. */
export function stillUsed(used: Used | null, chosen: OffStock | null, hose: string | null): OffStock | null {
  if (!used || !chosen || chosen.hose !== hose) return null;
  const pieces = used.pieces.map((one, index) => ({ ...one, ...fate(chosen.used.pieces[index]) }));
  return { hose: chosen.hose, used: { ...used, pieces } };
}

const fate = (piece: Used['pieces'][number] | undefined) =>
  piece && { piece: piece.piece, ...(piece.scrap_rest && { scrap_rest: true }) };

/** Takes another hose, or an adapter, into the job: what was read and entered for the one before no longer holds. */
export function takeSpec(doc: JobDoc, spec: JobDoc['spec']): void {
  doc.spec = { ...spec, ends: spec.ends.map((end) => ({ ...end, cutoff_mm: null })) };
  doc.settings = [];
  doc.cutoffs = { A: [], B: [] };
  doc.stock = null;
  doc.checked = false;
  doc.step = 'check';
}

/** The need of the job in hand, kept up to date while the component stands. */
export function useNeed(app: App, job: () => JobDoc, build: Build): Read<'stock.need'> {
  const need = new Read(app.backend, 'stock.need');
  const asked = $derived.by(() => {
    const { question } = build;
    const { store } = app.settings.now;
    // Where no store is named nothing is kept.
    if (!question || !build.sheet || store === '') return null;
    const make = { question, settings: $state.snapshot(job().settings) };
    return JSON.stringify({ make, store });
  });
  $effect(() => {
    if (asked) void need.ask(JSON.parse(asked) as Question<'stock.need'>);
  });
  $effect(() => {
    const doc = job();
    if (!need.value || !doc.stock || doc.written.made) return;
    const next = stillUsed(usedOf(need.value), doc.stock, hoseLong(doc.spec.hose));
    if (JSON.stringify(next) !== JSON.stringify(doc.stock)) doc.stock = next;
  });
  return need;
}
