// Everything of a job's spec and service that can be changed with a tap: its name, its words, how it is typed.
import type { Adapter, EndSpec, Role, Spec } from '../../backend/types';
import type { Given } from '../../backend';
import type { Quantity } from '../../components/keypad.svelte';
import type { JobDoc } from '../../state/job-doc';
import type { WordId } from '../../words/ids';
import { angle, length, lengthInches, number, psi, quantity, withUnit } from '../../words/number';
import { say } from '../../words/words';

/** A field by its path: `service.relief_bar`, `A.drop_mm`, `A` (the end itself), `hose`, `adapters.0.rating_bar`. */
export type FieldId = string;

/** How a field is changed. */
export type Kind =
  | 'number'
  | 'turn'
  | 'hose'
  | 'family'
  | 'gender'
  | 'form'
  | 'cover'
  | 'fluid'
  | 'line'
  | 'duties'
  | 'adapters'
  | 'source';

interface About {
  kind: Kind;
  label: WordId;
  /** How it is measured or where it is read. */
  how?: WordId;
  quantity?: Quantity;
  /** The unit of a plain number. */
  unit?: string;
}

/** By the whole path where that says more, else by its last part. */
const ABOUT: Record<string, About> = {
  working_pressure_bar: { kind: 'number', label: 'check-working', how: 'check-working-how', quantity: 'pressure' },
  relief_bar: { kind: 'number', label: 'check-relief', how: 'check-relief-how', quantity: 'pressure' },
  surge_pressure_bar: { kind: 'number', label: 'check-surge', how: 'check-surge-how', quantity: 'pressure' },
  fluid: { kind: 'fluid', label: 'check-fluid', how: 'check-fluid-how' },
  fluid_min_c: { kind: 'number', label: 'check-cold', how: 'check-cold-how', quantity: 'temperature' },
  fluid_max_c: { kind: 'number', label: 'check-hot', how: 'check-hot-how', quantity: 'temperature' },
  ambient_max_c: { kind: 'number', label: 'check-air', how: 'check-air-how', quantity: 'temperature' },
  flow_l_min: { kind: 'number', label: 'check-flow', how: 'check-flow-how', quantity: 'flow' },
  line: { kind: 'line', label: 'check-line', how: 'check-line-how' },
  bend_radius_mm: { kind: 'number', label: 'check-bend', how: 'check-bend-how', quantity: 'length' },
  vacuum_kpa_abs: {
    kind: 'number',
    label: 'check-vacuum',
    how: 'check-vacuum-how',
    quantity: 'plain',
    unit: 'kPa abs',
  },
  duties: { kind: 'duties', label: 'check-duties', how: 'check-duties-how' },
  hose: { kind: 'hose', label: 'check-hose' },
  A: { kind: 'family', label: 'check-end-a', how: 'check-end-how' },
  B: { kind: 'family', label: 'check-end-b', how: 'check-end-how' },
  'hose.min_bend_radius_mm': {
    kind: 'number',
    label: 'check-hose-bend',
    how: 'check-hose-bend-how',
    quantity: 'length',
  },
  'hose.vacuum_kpa_abs': {
    kind: 'number',
    label: 'check-hose-vacuum',
    how: 'check-hose-vacuum-how',
    quantity: 'plain',
    unit: 'kPa abs',
  },
  gender: { kind: 'gender', label: 'check-gender', how: 'check-gender-how' },
  form: { kind: 'form', label: 'check-form' },
  drop_mm: { kind: 'number', label: 'check-drop', how: 'check-drop-how', quantity: 'length' },
  cutoff_mm: { kind: 'number', label: 'check-cutoff', how: 'check-cutoff-how', quantity: 'length' },
  rating_bar: { kind: 'number', label: 'check-rating', how: 'check-rating-how', quantity: 'pressure' },
  rating_from: { kind: 'source', label: 'check-rating-from', how: 'check-rating-from-how' },
  adapters: { kind: 'adapters', label: 'check-adapters', how: 'check-adapters-how' },
  overall_length_mm: { kind: 'number', label: 'check-length', how: 'check-length-how', quantity: 'length' },
  turn_deg: { kind: 'turn', label: 'check-turn', how: 'check-turn-how', quantity: 'plain', unit: '°' },
  cover: { kind: 'cover', label: 'check-cover', how: 'check-cover-how' },
};

/** What a field is; null for a path that is none. */
export function aboutField(id: FieldId): About | null {
  return ABOUT[id] ?? ABOUT[id.split('.').at(-1) ?? ''] ?? null;
}

/** The end or adapter a field belongs to, as words before its label. */
export function fieldLabel(id: FieldId): string {
  const about = aboutField(id);
  const label = about ? say(about.label) : id;
  const [of, ...rest] = id.split('.');
  return rest.length > 0 && (of === 'A' || of === 'B') ? say('check-of-end', { end: of, label }) : label;
}

export function endOf(spec: Given<Spec>, role: Role): Given<EndSpec> | undefined {
  return spec.ends.find((end) => end.role === role);
}

/** The end a field is of. */
export function roleOf(id: FieldId): Role | null {
  const [of] = id.split('.');
  return of === 'A' || of === 'B' ? of : null;
}

/** Which part of the drawing a field belongs to. */
export function litBy(id: FieldId): 'A' | 'B' | 'hose' | 'overall' | null {
  if (id === 'overall_length_mm') return 'overall';
  if (id === 'hose' || id.startsWith('hose.') || id === 'cover') return 'hose';
  return roleOf(id);
}

function holder(doc: JobDoc, id: FieldId): Record<string, unknown> | null {
  const [of = '', at] = id.split('.');
  if (of === 'service') return doc.service;
  if (of === 'hose' && at) return (doc.spec.hose as Record<string, unknown> | null | undefined) ?? null;
  if (of === 'adapters') return (doc.spec.adapters?.[Number(at)] as Record<string, unknown> | undefined) ?? null;
  const role = roleOf(id);
  const part = role ? endOf(doc.spec, role) : doc.spec;
  return (part as Record<string, unknown> | undefined) ?? null;
}

/** The number that stands in a field; null is not known. */
export function numberIn(doc: JobDoc, id: FieldId): number | null {
  const value = holder(doc, id)?.[id.split('.').at(-1) ?? ''];
  return typeof value === 'number' ? value : null;
}

/** The word that stands in a field; null is not known. */
export function wordIn(doc: JobDoc, id: FieldId): string | null {
  const value = holder(doc, id)?.[id.split('.').at(-1) ?? ''];
  return typeof value === 'string' ? value : null;
}

/** Writes a field; null is not known. */
export function put(doc: JobDoc, id: FieldId, value: number | string | null): void {
  const into = holder(doc, id);
  if (into) into[id.split('.').at(-1) ?? ''] = value;
}

/** Names an end. What belonged to another end (its drop, cut-off and rating) goes with it. */
export function putEnd(
  doc: JobDoc,
  role: Role,
  what: { family: string; size?: string; gender?: EndSpec['gender'] },
): void {
  const known = endOf(doc.spec, role);
  if (known && known.family === what.family && known.size === (what.size ?? known.size)) {
    if (what.gender !== undefined) known.gender = what.gender;
    return;
  }
  doc.sameForSame = false;
  delete doc.ratingFrom[role];
  const end = {
    role,
    family: what.family,
    size: what.size ?? '',
    gender: what.gender ?? null,
    form: known?.form ?? null,
  };
  doc.spec.ends = [...doc.spec.ends.filter((one) => one.role !== role), end].toSorted((a, b) =>
    a.role.localeCompare(b.role),
  );
}

/** From where the rating of an end is that stands over the table's; null for a part that has none of its own. */
export function ratingFrom(doc: JobDoc, part: string): string | null {
  if ((part !== 'A' && part !== 'B') || endOf(doc.spec, part)?.rating_bar == null) return null;
  return doc.ratingFrom[part] ?? say('check-rating-unsaid');
}

/** Takes an end back: it is not known. */
export function dropEnd(doc: JobDoc, role: Role): void {
  doc.spec.ends = doc.spec.ends.filter((one) => one.role !== role);
  delete doc.ratingFrom[role];
}

/** What is asked of an end after a field of it: its half (of a flange none), its form, and of a bent one its drop. */
export function askedNext(doc: JobDoc, id: FieldId): FieldId | null {
  const role = roleOf(id);
  const end = role ? endOf(doc.spec, role) : undefined;
  if (!role || !end) return null;
  const after = id.split('.')[1];
  if (after === undefined && !end.family.startsWith('flange')) return `${role}.gender`;
  if (after === undefined || after === 'gender') return `${role}.form`;
  return after === 'form' && bends(end.form ?? '') ? `${role}.drop_mm` : null;
}

/** Takes a duty on, or off again. */
export function toggleDuty(doc: JobDoc, duty: JobDoc['service']['duties'][number]): void {
  const { duties } = doc.service;
  doc.service.duties = duties.includes(duty) ? duties.filter((one) => one !== duty) : [...duties, duty];
}

/** Gives an end its form. Drop and cut-off were those of the other form. */
export function putForm(doc: JobDoc, role: Role, form: string | null): void {
  const end = endOf(doc.spec, role);
  if (!end || end.form === form) return;
  Object.assign(end, { form, drop_mm: null, cutoff_mm: null });
}

/**
 * Takes a hose; what is made is then no longer the same as the record's. The supplier's bend and vacuum are of their hose and no other; cut-offs belong to ends of one size, so
 * another size takes them along.
 */
export function putHose(doc: JobDoc, hose: NonNullable<Spec['hose']>): void {
  const now = doc.spec.hose;
  if (now?.standard === hose.standard && now.type === hose.type && now.dn === hose.dn) return;
  if (now && now.dn !== hose.dn) for (const end of doc.spec.ends) end.cutoff_mm = null;
  doc.spec.hose = hose;
  doc.sameForSame = false;
}

/** Adds an adapter whose rating is still to be said. */
export function addAdapter(doc: JobDoc, name: string): void {
  doc.spec.adapters = [...(doc.spec.adapters ?? []), { name, rating_bar: null } satisfies Given<Adapter>];
}

export function removeAdapter(doc: JobDoc, at: number): void {
  doc.spec.adapters = (doc.spec.adapters ?? []).filter((_, index) => index !== at);
}

/** Units that are written first, by this device's settings. */
export interface Units {
  pressure: 'bar' | 'psi';
  length: 'mm' | 'in';
}

/** A number of a field in the unit that is written first. */
export function writtenIn(id: FieldId, value: number, units: Units): string {
  const about = aboutField(id);
  switch (about?.quantity) {
    case 'pressure':
      return units.pressure === 'psi' ? withUnit(psi(value), 'psi') : withUnit(number(value, 0), 'bar');
    case 'temperature':
      return quantity(value, 'C');
    case 'flow':
      return withUnit(number(value, 1), 'l/min');
    case 'length':
      return units.length === 'in' ? lengthInches(value, 32) : length(value, 1);
    default:
      return about?.unit === '°' ? angle(value, 1) : withUnit(number(value, 1), about?.unit ?? '');
  }
}

/** The unit a keypad begins with. */
export function firstUnit(quantity: Quantity, units: Units): string {
  if (quantity === 'length') return units.length;
  if (quantity === 'reel') return units.length === 'in' ? 'ft' : 'm';
  if (quantity === 'pressure') return units.pressure;
  return { temperature: 'C', flow: 'l/min', plain: '' }[quantity];
}

/** Whether a form is bent, so that it has a drop: the check asks for it. */
export function bends(form: string): boolean {
  return /^(elbow|compact|block)\d/.test(form);
}
