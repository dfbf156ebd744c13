import type { Backend, CallError, Question } from '../../backend';
import type { HoseShown, PlaceAt, PlaceId, Scan, TagCode, TagContent } from '../../backend/types';
import type { CameraFrame } from './camera.svelte';
import { beginnings, fits, grouped, isWhole } from './code';
import { isTag, opensAtOnce, type TagScan } from './judged';

/** What a picture or a code turned out to be, where it does not lead straight to its hose. */
export type Result =
  /** A picture that could not be read; `why` where it is no picture that can be opened. */
  | { kind: 'unread'; why: string | null }
  /** A code that is no hose tag. */
  | { kind: 'other'; text: string; why: string }
  | { kind: 'which'; scans: TagScan[] }
  /** A tag, and what is to be said of it. */
  | { kind: 'tag'; scan: TagScan };

/** A hose whose code may be the one typed in part. */
export interface Fit {
  code: TagCode;
  at: PlaceAt | null;
  /** Read only where one hose alone fits. */
  hose: HoseShown | null;
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
    /** Opens a hose; `says` is what its tag was found to be. */
    readonly onhose: (code: TagCode, says: string) => void,
    /** The place that the person stands at; null where nobody said. */
    readonly place: () => PlaceId | null = () => null,
  ) {}

  /** Reads a photograph. Whatever comes of it, the picture stays. */
  async photo(file: Blob): Promise<void> {
    this.#show(file);
    this.reading = true;
    await this.#read(file);
    this.reading = false;
  }

  /** Reads a frame of the live camera; true once there is something to show. A frame without a code says nothing. */
  async frame({ width, height, light, picture }: CameraFrame): Promise<boolean> {
    const question = { raw: true, frame: { width, height }, ...this.#here() };
    const reply = await this.backend.call('tag.read', question, light);
    if (!reply.ok) return false;
    this.#show(await picture());
    this.#sort(reply.value.codes);
    return true;
  }

  /** Opens the hose of a tag that was read, or says first what is to be said of it. */
  take(scan: TagScan): void {
    if (scan.code && opensAtOnce(scan.judged)) this.onhose(scan.code, scan.judged.says);
    else this.result = { kind: 'tag', scan };
  }

  /** Opens the tag of a code that stands whole. */
  async open(code: TagCode): Promise<void> {
    const { typed } = this;
    const reply = await this.backend.call('tag.open', { code, ...this.#here() });
    if (this.typed !== typed) return;
    if (reply.ok) this.#sort([reply.value]);
    else this.wrong = reply.error.message;
  }

  /** Takes in what was typed: a whole code is looked up at once, half a code is held against the register. */
  async type(typed: string): Promise<void> {
    this.typed = typed;
    this.wrong = null;
    this.fits = [];
    if (isWhole(typed)) await this.open(grouped(typed));
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
    const reply = await this.backend.call('tag.read', { raw: true, ...this.#here() }, await bytesOf(file));
    if (reply.ok) return this.#sort(reply.value.codes);
    if (reply.error.code === 'nothing') this.result = { kind: 'unread', why: null };
    else if (reply.error.code === 'file') this.result = { kind: 'unread', why: reply.error.message };
    else this.problem = reply.error;
  }

  #here(): Pick<Question<'tag.read'>, 'place'> {
    const place = this.place();
    return place === null ? {} : { place };
  }

  #sort(scans: readonly Scan[]): void {
    const tags = scans.filter(isTag);
    const [first] = tags;
    const [other] = scans;
    if (tags.length > 1) this.result = { kind: 'which', scans: tags };
    else if (first) this.take(first);
    else if (other) this.result = { kind: 'other', text: other.text, why: other.problem ?? '' };
    else this.result = { kind: 'unread', why: null };
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

/** All that a tag carries; null for a code alone and for one that is not as it was made. */
export function wholeTag({ code, spec, proof, catalogue, ...more }: Scan): TagContent | null {
  if (!code || !spec || !proof || catalogue === undefined) return null;
  const { pressure_bar, line, fluid, duties, assembled } = more;
  return { code, spec, proof, catalogue, pressure_bar, line, fluid, duties, assembled };
}
