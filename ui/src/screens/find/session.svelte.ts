import type { Draft } from '../../components/keypad.svelte';
import type { LookalikeFound, Reach } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { isSettled, keysOf, nextAsked, nextKey, type Asked, type State } from './asking';
import type { Finder } from './finder.svelte';
import { genderOf, isKey, isMate, kindOf, nameOf, parseName, roleOf, type Half, type Key } from './keys';
import { countOf, draftOf, erase, isWhole, keep, picked, question, textOf, unitOf, type Typing } from './readings';
import { foundEnd, named, ownWord, specOf } from './spec';
import { candidateName, candidatesOf, countLikely, type AnyCandidate } from './tables';

/** What is seen of an end by looking at it. What is measured is measured at each end. */
const SEEN: readonly Key[] = ['kind', 'gender', 'seal', 'cone'];

/** As many likely candidates can be told apart by their names: what could be confused with them is said. */
const FEW = 12;

/** The reading in hand and what can be done with it. All that must last is written into the job. */
export class Session {
  /** What was answered last. */
  #last = $state.raw<Asked | null>(null);

  constructor(
    readonly doc: JobDoc,
    readonly finder: Finder,
    /** Standard error in mm of the caliper that reads. */
    readonly caliper: () => number,
  ) {}

  get half(): Half {
    return this.doc.finding.part as Half;
  }

  /** The reading asked; null where nothing more is worth asking of the part. */
  get key(): Key | null {
    const { asked } = this.doc.finding;
    return asked !== null && isKey(asked) ? asked : nextKey(this.#state(this.doc.readings), this.half);
  }

  /** What stands on the pad and is not kept; null while nothing was touched. */
  get typing(): Draft | null {
    const { typing } = this.doc;
    return typing && this.key && typing.of === nameOf(this.half, this.key) ? typing.draft : null;
  }

  /** What was kept of the reading asked. */
  get kept(): Draft | null {
    return this.key ? this.keptOf(this.half, this.key) : null;
  }

  /** What stands: typed, or kept before. */
  get draft(): Draft | null {
    return this.typing ?? this.kept;
  }

  get whole(): boolean {
    return this.key !== null && isWhole(this.key, this.draft);
  }

  /** Whether keeping would change anything. */
  get changed(): boolean {
    const { typing, kept, key } = this;
    if (!typing || !key || !isWhole(key, typing)) return false;
    return !kept || kept.unit !== typing.unit || textOf(kept) !== textOf(typing);
  }

  /** The unit the next length starts in: the one last used, else that of the readings. */
  get unit(): string {
    return this.doc.finding.unit ?? unitOf(this.doc.readings);
  }

  /** The question as it stands with what is being typed. */
  get question() {
    const { key, typing } = this;
    return this.#question(key && typing ? { half: this.half, key, draft: typing } : null);
  }

  #question(typing: Typing | null) {
    const cannot_tell = this.doc.cannot.flatMap((name) => {
      const of = parseName(name);
      return of && !isMate(of.half) ? [{ of: roleOf(of.half) ?? ('hose' as const), reading: of.key }] : [];
    });
    return { ...question(this.doc.readings, typing), caliper_error_mm: this.caliper(), cannot_tell };
  }

  /** Whether the first answer is there; before it nothing is said of candidates, and nothing counts as open or settled. */
  get answered(): boolean {
    return this.finder.heard;
  }

  /** Whether the number that is being typed can not be: what was found before it says nothing of it. */
  get isRefused(): boolean {
    return this.typing !== null && this.finder.problem?.code === 'input';
  }

  /** What is asked after the reading in hand; null where all is done. */
  get next(): Asked | null {
    const { key, draft, half } = this;
    const state = this.#state(this.question);
    if (!key) return nextAsked(state, half);
    const role = roleOf(half);
    const forms = key === 'form' && role && draft ? { ...state.forms, [role]: textOf(draft) } : state.forms;
    // The reading in hand counts as answered, whatever comes of it.
    return nextAsked({ ...state, forms, cannot: [...state.cannot, nameOf(half, key)] }, half);
  }

  get candidates(): readonly AnyCandidate[] {
    return candidatesOf(this.finder.found, this.half);
  }

  /** Whether anything speaks of a part: its own readings, or for an end those of the machine's half. */
  read(half: Half): boolean {
    const role = roleOf(half);
    const parts: Half[] = role === null ? ['hose'] : [role, `mate-${role}`];
    return parts.some((part) => countOf(this.question, part) > 0);
  }

  /** The readings of the part in hand, in the order they are listed. */
  get listed(): readonly Key[] {
    return keysOf(this.#state(this.doc.readings), this.half);
  }

  settled(half: Half): boolean {
    return isSettled(this.finder.found, half);
  }

  /** What would screw on too and must not; none while nearly everything is still possible. */
  alikes(half: Half): readonly LookalikeFound[] {
    const role = roleOf(half);
    if (role === null || this.settled(half)) return [];
    const end = foundEnd(this.finder.found, role);
    return end && countLikely(end.candidates) <= FEW ? end.lookalikes : [];
  }

  /** The likeliest of a part of which anything was read; null where nothing was. */
  first(half: Half): AnyCandidate | null {
    return this.read(half) ? (candidatesOf(this.finder.found, half)[0] ?? null) : null;
  }

  keptOf(half: Half, key: Key): Draft | null {
    if (key !== 'form') return draftOf(this.doc.readings, half, key);
    const form = this.doc.finding.forms[roleOf(half) ?? 'A'];
    return form === undefined ? null : picked(form);
  }

  isCannot(half: Half, key: Key): boolean {
    return this.doc.cannot.includes(nameOf(half, key));
  }

  /** After each key, and each thing picked. */
  type(draft: Draft): void {
    const { key } = this;
    if (!key) return;
    if (kindOf(key) === 'length') this.doc.finding.unit = draft.unit;
    this.doc.finding.asked = key;
    this.doc.typing = { of: nameOf(this.half, key), draft };
  }

  /** Takes another part in hand. */
  turnTo(half: Half): void {
    this.doc.finding.part = half;
    this.doc.finding.asked = nextKey(this.#state(this.doc.readings), half);
  }

  /** Takes one reading in hand, to take it or to change it. */
  askFor(half: Half, key: Key): void {
    this.doc.finding.part = half;
    this.doc.finding.asked = key;
  }

  /** Keeps what was typed and goes on to the next reading. */
  async keep(): Promise<void> {
    const { key, draft, half } = this;
    if (!key || !draft) return;
    // The answer may still be on its way; a number that can not be is not kept.
    await this.finder.ask(this.question);
    if (this.finder.problem?.code === 'input') return;
    this.#answered(half, key);
    this.#last = { half, key };
    const role = roleOf(half);
    if (key === 'form' && role) this.doc.finding.forms[role] = textOf(draft);
    else if (key !== 'form') keep(this.doc.readings, half, key, draft);
    const gender = key === 'kind' ? genderOf(textOf(draft)) : null;
    if (gender) keep(this.doc.readings, half, 'gender', picked(gender));
    this.doc.readings.caliper_error_mm = this.caliper();
    await this.#moveOn();
  }

  /** A drawing that is touched is the answer: it is kept at once, and the way back leads to it. */
  async pick(option: string): Promise<void> {
    this.type(picked(option));
    await this.keep();
  }

  /** What was seen of A, where B is looked at next and nothing of it was answered: two ends are often of one kind. */
  get seenOfA(): { key: Key; draft: Draft }[] {
    if (this.half !== 'B' || this.key !== 'kind' || SEEN.some((key) => this.keptOf('B', key))) return [];
    return SEEN.flatMap((key) => {
      const draft = this.keptOf('A', key);
      return draft ? [{ key, draft }] : [];
    });
  }

  /** B looks the same as A. */
  async lookAsA(): Promise<void> {
    for (const { key, draft } of this.seenOfA) keep(this.doc.readings, 'B', key, draft);
    this.#last = { half: 'B', key: 'kind' };
    this.doc.typing = null;
    await this.#moveOn();
  }

  /** "Can't tell" is an answer: it is not asked again. */
  async cannot(): Promise<void> {
    const { key, half } = this;
    if (!key) return;
    this.remove(half, key);
    this.#last = { half, key };
    this.doc.cannot.push(nameOf(half, key));
    await this.#moveOn();
  }

  /** How far the hose is apart; null while nobody said, and all is asked. */
  get reach(): Reach | null {
    return this.doc.readings.reach ?? null;
  }

  /** Whether some part stays open only because the hose is not apart: more could be read. */
  get isOutOfReach(): boolean {
    return this.reach !== null && this.reach !== 'cut' && this.key === null && this.next === null && !this.allSettled;
  }

  get allSettled(): boolean {
    return (['hose', 'A', 'B'] as const).every((part) => this.settled(part));
  }

  /** Says how far the hose is apart, or the same again to take that back; what can not be reached is not asked. */
  async takeApart(reach: Reach): Promise<void> {
    if (this.reach === reach) delete this.doc.readings.reach;
    else this.doc.readings.reach = reach;
    if (!this.typing) await this.#moveOn();
  }

  /** Takes a reading back, and "can't tell" as well. */
  remove(half: Half, key: Key): void {
    this.#answered(half, key);
    const role = roleOf(half);
    if (key === 'form' && role) delete this.doc.finding.forms[role];
    else if (key !== 'form') erase(this.doc.readings, half, key);
  }

  /** Moves a reading to the half of the same end that it was taken of. */
  async moveTo(half: Half, key: Key, gender: 'male' | 'female'): Promise<void> {
    const draft = this.keptOf(this.half, key);
    if (!draft) return;
    this.remove(this.half, key);
    this.#answered(half, key);
    keep(this.doc.readings, half, key, draft);
    keep(this.doc.readings, half, 'gender', picked(gender));
    await this.#moveOn();
  }

  /** On to the next reading without an answer to this one. */
  goOn(): void {
    const { next } = this;
    this.doc.typing = null;
    if (next) this.askFor(next.half, next.key);
    else this.doc.finding.asked = null;
  }

  /** Names a candidate for the spec. What was read stays evidence. */
  name(candidate: AnyCandidate): void {
    const { spec, ...said } = named(this.doc, roleOf(this.half) ?? 'hose', candidate);
    this.doc.spec = spec;
    Object.assign(this.doc.finding, said);
  }

  unname(): void {
    const part = roleOf(this.half) ?? 'hose';
    this.doc.finding.chosen = this.doc.finding.chosen.filter((one) => one !== part);
    delete this.doc.finding.named?.[part];
  }

  /** The name that the person gave a part, while the readings do not settle it. */
  own(half: Half): string | null {
    const word = isMate(half)
      ? null
      : ownWord(this.doc.finding, this.finder.found?.settled ?? null, roleOf(half) ?? 'hose');
    return word && candidateName(word);
  }

  /** What was answered last and can be answered anew; null while it is in hand, or nothing was. */
  get last(): Asked | null {
    return this.#last && nameOf(this.#last.half, this.#last.key) !== (this.key && nameOf(this.half, this.key))
      ? this.#last
      : null;
  }

  /** Fills the spec with what was kept and goes to the check, settled or not: the check says what is open. */
  async use(): Promise<void> {
    await this.finder.ask(this.#question(null));
    const { found } = this.finder;
    if (found) this.doc.spec = specOf(this.doc, found);
    this.doc.typing = null;
    this.doc.step = 'check';
  }

  /** Leaves by the chain of steps: what the spec has not been given yet is filled, nothing is written over. */
  leave(): void {
    const { found } = this.finder;
    if (this.doc.step === 'find' || !found) return;
    const { spec } = this.doc;
    const filled = specOf(this.doc, found);
    this.doc.spec = {
      ...filled,
      ...spec,
      ends: filled.ends.map((end) => spec.ends.find((one) => one.role === end.role) ?? end),
    };
  }

  #answered(half: Half, key: Key): void {
    const name = nameOf(half, key);
    this.doc.cannot = this.doc.cannot.filter((one) => one !== name);
    if (this.doc.typing?.of === name) this.doc.typing = null;
  }

  async #moveOn(): Promise<void> {
    await this.finder.ask(this.#question(null));
    const next = nextAsked(this.#state(this.doc.readings), this.half);
    if (next) this.askFor(next.half, next.key);
    else this.doc.finding.asked = null;
  }

  #state(readings: State['readings']): State {
    return {
      readings,
      cannot: this.doc.cannot,
      forms: this.doc.finding.forms,
      found: this.finder.found,
    };
  }
}
