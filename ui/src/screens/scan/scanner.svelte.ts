import type { Backend, CallError } from '../../backend';
import type { Hose, PlaceAt, Scan, TagCode, TagContent } from '../../backend/types';
import { beginnings, fits, grouped, isWhole } from './code';

/** What a picture or a code turned out to be, where it is no hose of this register. */
export type Result =
  /** A picture that could not be read; `why` where it is no picture that can be opened. */
  | { kind: 'unread'; why: string | null }
  /** A code that is no hose tag. */
  | { kind: 'other'; text: string; why: string }
  | { kind: 'which'; scans: Scan[] }
  /** A whole tag of a hose that is not in the register. */
  | { kind: 'foreign'; tag: TagContent }
  /** A code alone, of a hose that is not in the register. */
  | { kind: 'unknown'; code: TagCode; why: string };

/** A hose whose code may be the one typed in part. */
export interface Fit {
  code: TagCode;
  at: PlaceAt | null;
  /** Read only where one hose alone fits. */
  hose: Hose | null;
}

/** From a picture or typed letters to a hose. */
export class Scanner {
  result: Result | null = $state.raw(null);
  /** The picture that was read last, as an address; it stays on the screen. */
  picture: string | null = $state.raw(null);
  reading = $state(false);
  /** Why the way to the use cases or the register failed. */
  problem: CallError | null = $state.raw(null);
  typed = $state('');
  /** What is wrong with the typed code. */
  wrong: string | null = $state.raw(null);
  fits: Fit[] = $state.raw([]);

  constructor(
    readonly backend: Backend,
    readonly onhose: (code: TagCode) => void,
  ) {}

  /** Reads a photograph. Whatever comes of it, the picture stays. */
  async photo(file: Blob): Promise<void> {
    this.#show(file);
    this.reading = true;
    await this.#read(file);
    this.reading = false;
  }

  /** Reads a frame of the live camera; true once there is something to show. A frame without a code says nothing. */
  async frame(file: Blob): Promise<boolean> {
    const reply = await this.backend.call('tag.read', { raw: true }, await bytesOf(file));
    if (!reply.ok) return false;
    this.#show(file);
    await this.#sort(reply.value.codes);
    return true;
  }

  /** Opens the hose of a code that was read, or says what is known of it. */
  async take(scan: Scan): Promise<void> {
    if (!scan.code) return;
    const reply = await this.backend.call('register.show', { code: scan.code });
    if (reply.ok) return this.onhose(reply.value.code);
    if (reply.error.code !== 'nothing') {
      this.problem = reply.error;
      return;
    }
    const tag = wholeTag(scan);
    this.result = tag ? { kind: 'foreign', tag } : { kind: 'unknown', code: scan.code, why: reply.error.message };
  }

  /** Takes in what was typed: a whole code is looked up at once, half a code is held against the register. */
  async type(typed: string): Promise<void> {
    this.typed = typed;
    this.wrong = null;
    this.fits = [];
    if (isWhole(typed)) await this.#lookUp(typed);
    else await this.#fit(typed);
  }

  /** Back to the ways in; what was typed stays. */
  again(): void {
    this.#show(null);
    this.result = null;
    this.problem = null;
  }

  #show(file: Blob | null): void {
    if (this.picture) URL.revokeObjectURL(this.picture);
    this.picture = file ? URL.createObjectURL(file) : null;
    this.result = null;
    this.problem = null;
  }

  async #read(file: Blob): Promise<void> {
    const reply = await this.backend.call('tag.read', { raw: true }, await bytesOf(file));
    if (reply.ok) return this.#sort(reply.value.codes);
    if (reply.error.code === 'nothing') this.result = { kind: 'unread', why: null };
    else if (reply.error.code === 'file') this.result = { kind: 'unread', why: reply.error.message };
    else this.problem = reply.error;
  }

  async #sort(scans: Scan[]): Promise<void> {
    const tags = scans.filter((scan) => scan.code !== null);
    const [first] = tags;
    const [other] = scans;
    if (tags.length > 1) this.result = { kind: 'which', scans: tags };
    else if (first) await this.take(first);
    else if (other) this.result = { kind: 'other', text: other.text, why: other.problem ?? '' };
    else this.result = { kind: 'unread', why: null };
  }

  async #lookUp(typed: string): Promise<void> {
    const reply = await this.backend.call('register.show', { code: grouped(typed) });
    if (this.typed !== typed) return;
    if (reply.ok) this.onhose(reply.value.code);
    else if (reply.error.code === 'nothing') {
      this.result = { kind: 'unknown', code: grouped(typed), why: reply.error.message };
    } else this.wrong = reply.error.message;
  }

  async #fit(typed: string): Promise<void> {
    const words = beginnings(typed);
    if (!words) return;
    const reply = await this.backend.call('register.search', { words });
    if (!reply.ok || this.typed !== typed) return;
    const found = reply.value.hits.flatMap((hit) =>
      hit.what === 'hose' && fits(typed, hit.code) ? [{ code: hit.code, at: hit.at, hose: null }] : [],
    );
    const [only] = found;
    if (found.length !== 1 || !only) {
      this.fits = found;
      return;
    }
    const hose = await this.backend.call('register.show', { code: only.code });
    if (this.typed === typed) this.fits = [{ ...only, hose: hose.ok ? hose.value : null }];
  }
}

async function bytesOf(file: Blob): Promise<Uint8Array> {
  return new Uint8Array(await file.arrayBuffer());
}

/** All that a tag carries; null for a code alone. */
function wholeTag({ code, spec, proof, catalogue, ...more }: Scan): TagContent | null {
  if (!code || !spec || !proof || catalogue === undefined) return null;
  const { pressure_bar, line, fluid, duties, assembled } = more;
  return { code, spec, proof, catalogue, pressure_bar, line, fluid, duties, assembled };
}
