// A label: on which of the user's stocks, how it comes out, and the ways it goes out.
import type { Answer, CallError } from '../../backend';
import type { LabelKind, LabelStock, TagContent } from '../../backend/types';
import type { App } from '../../state/app.svelte';
import { share } from '../parts/paper';
import { printDrawing } from '../parts/print';

/** What a label is made of beside its stock. */
export interface Labelled {
  tag: TagContent;
  /** As measured over the hose's cover; without it the tables'. */
  coverOdMm: number | null;
}

export class Labelling {
  preview: Answer<'tag.preview'> | null = $state.raw(null);
  /** Why the last thing asked of the label was not done. */
  problem: CallError | null = $state.raw(null);
  /** Where the last file was left. */
  saved: string | null = $state(null);
  #picked: string | null = $state(null);
  #asked = 0;

  constructor(
    readonly app: App,
    readonly of: () => Labelled | null,
  ) {}

  get stocks(): readonly LabelStock[] {
    return this.app.settings.now.label_stocks;
  }

  /** The one it is made on: as chosen, else the first that is kept. */
  get stock(): LabelStock | null {
    return this.stocks.find(({ name }) => name === this.#picked) ?? this.stocks[0] ?? null;
  }

  get drawn() {
    return this.preview?.label ?? null;
  }

  get refused() {
    return this.preview?.refused ?? null;
  }

  pick(name: string): void {
    this.#picked = name;
    this.saved = null;
    this.problem = null;
  }

  /** Draws it as it would print; of answers that overtake each other the latest stands. */
  async draw(): Promise<void> {
    const question = this.#question('svg');
    if (!question) return;
    const mine = ++this.#asked;
    const reply = await this.app.backend.call('tag.preview', question);
    if (mine !== this.#asked) return;
    this.preview = reply.ok ? reply.value : null;
    this.problem = reply.ok ? null : reply.error;
  }

  /** Leaves it as a file; true once it is there. */
  async save(as: LabelKind): Promise<boolean> {
    const file = await this.#file(as);
    if (!file) return false;
    const kept = await this.app.backend.save(file.name, file.bytes, file.mime);
    this.saved = kept.ok ? kept.value : null;
    this.problem = kept.ok ? null : kept.error;
    return kept.ok;
  }

  async share(): Promise<void> {
    const file = await this.#file('png');
    if (file) await share(file.name, file.bytes, file.mime);
  }

  /** Opens the system's print dialogue over it. */
  async print(): Promise<void> {
    const { stock } = this;
    const file = await this.#file('svg');
    if (file && stock) printDrawing(new TextDecoder().decode(file.bytes), stock.width_mm, stock.height_mm);
  }

  #question(as: LabelKind) {
    const { stock } = this;
    const of = this.of();
    if (!stock || !of) return null;
    const { tag, coverOdMm } = of;
    return { tag, stock, as, ...(coverOdMm !== null && { cover_od_mm: coverOdMm }) };
  }

  /** The label as a file; null where there is none, and why. Of a hose on record it counts as printed from then on. */
  async #file(as: LabelKind) {
    const question = this.#question(as);
    if (!question) return null;
    const reply = await this.app.backend.call('tag.label', question);
    this.problem = reply.ok ? null : reply.error;
    return reply.ok ? { ...reply.value, bytes: reply.bytes } : null;
  }
}
