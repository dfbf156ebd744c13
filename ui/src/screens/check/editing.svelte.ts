import { Keypad } from '../../components/keypad.svelte';
import type { Beside, JobDoc } from '../../state/job-doc';
import * as fields from './fields';

/** Before a field's name where half its number is kept, so that it is no reading's. */
const TYPING = 'check:';

/** The field that is open and what has been said of it so far. */
export class Editing {
  open: fields.FieldId | null = $state(null);
  keypad: Keypad | null = $state.raw(null);
  /** First half of a choice in two steps: the DN of a hose, the family of an end. */
  half: string | null = $state(null);
  /** A rating of one's own that was typed: it is kept once it is said from where it is. */
  rated: number | null = $state(null);
  /** An end was just named, so what else is asked of it comes next. */
  #naming = false;

  /** Goes on with the number that was half typed when the job was put away. */
  constructor(
    readonly doc: JobDoc,
    readonly units: () => fields.Units,
  ) {
    const of = doc.typing?.of;
    if (of?.startsWith(TYPING) && fields.aboutField(of.slice(TYPING.length))) this.edit(of.slice(TYPING.length));
  }

  edit(id: fields.FieldId): void {
    this.open = id;
    this.half = null;
    this.rated = null;
    const about = fields.aboutField(id);
    const typing = this.doc.typing;
    this.keypad = null;
    // A turn is mostly a quarter: it is picked, and typed only where it is another.
    if (about?.kind !== 'turn' || typing?.of === TYPING + id) this.type();
  }

  /** Types the open field, from where it was left. */
  type(): void {
    const id = this.open ?? '';
    const quantity = fields.aboutField(id)?.quantity;
    const typing = this.doc.typing;
    const draft =
      typing?.of === TYPING + id
        ? typing.draft
        : quantity && { unit: fields.firstUnit(quantity, this.units()), typed: {} };
    this.keypad = quantity ? new Keypad(quantity, draft) : null;
  }

  /** Back to the check; half a number goes. */
  close(): void {
    if (this.doc.typing?.of.startsWith(TYPING)) this.doc.typing = null;
    this.open = null;
    this.keypad = null;
    this.rated = null;
    this.#naming = false;
  }

  /** To the sheet beside the check that works the open field out. */
  leaveTo(sheet: Beside): void {
    this.close();
    this.doc.beside = sheet;
  }

  /** After each key: half a number is part of the job. */
  typed(): void {
    if (this.open && this.keypad) this.doc.typing = { of: TYPING + this.open, draft: this.keypad.draft };
  }

  /** Takes a value; null is not known. */
  keep(value: number | string | null): void {
    const id = this.open;
    if (!id) return;
    const role = fields.roleOf(id);
    if (role && id === `${role}.rating_bar`) {
      if (typeof value === 'number') return this.#askFrom(role, value);
      delete this.doc.ratingFrom[role];
    }
    if (id === 'hose' && value === null) this.doc.spec.hose = null;
    else if (role && id === role && value === null) fields.dropEnd(this.doc, role);
    else if (role && id.endsWith('.form')) fields.putForm(this.doc, role, value === null ? null : String(value));
    else fields.put(this.doc, id, typeof value === 'number' ? Math.round(value * 1e4) / 1e4 : value);
    this.#goOn();
  }

  /** Half a rating stays typed until its source is said. */
  #askFrom(role: 'A' | 'B', bar: number): void {
    this.open = `${role}.rating_from`;
    this.keypad = null;
    this.rated = bar;
  }

  /** Keeps the rating with where it is from: without that it is nobody's. */
  keepFrom(text: string): void {
    const role = this.open && fields.roleOf(this.open);
    if (!role || this.rated === null || text.trim() === '') return;
    fields.put(this.doc, `${role}.rating_bar`, Math.round(this.rated * 1e4) / 1e4);
    this.doc.ratingFrom[role] = text.trim();
    this.#goOn();
  }

  hose(hose: { standard: string; type: string; dn: number }): void {
    fields.putHose(this.doc, hose);
    this.close();
  }

  end(family: string, size: string): void {
    const role = this.open && fields.roleOf(this.open);
    if (!role) return;
    fields.putEnd(this.doc, role, { family, size });
    this.#naming = true;
    this.#goOn();
  }

  addAdapter(name: string): void {
    fields.addAdapter(this.doc, name);
    this.edit(`adapters.${(this.doc.spec.adapters?.length ?? 1) - 1}.rating_bar`);
  }

  /** On to what is still asked of an end just named; else back, from an adapter's rating to the adapters. */
  #goOn(): void {
    const naming = this.#naming;
    const next = this.open ? (naming ? fields.askedNext(this.doc, this.open) : null) : null;
    const up = this.open?.startsWith('adapters.') ? 'adapters' : null;
    this.close();
    this.#naming = naming && next !== null;
    if (next ?? up) this.edit(next ?? up ?? '');
  }
}
