// What is typed on the bench: which field, how it is typed, and where in the job it is kept.
import type { Given } from '../../backend';
import type { BuildSheet, EndSettings, Missing, Role, Skive, WhyGivenUp } from '../../backend/types';
import type { Quantity } from '../../components/keypad.svelte';
import type { WordId } from '../../words/ids';
import type { JobDoc } from '../../state/job-doc';
import { angle, number, pressure, withUnit } from '../../words/number';
import { say } from '../../words/words';
import { crimped, taped, type LengthUnit } from './lengths';

/** Fields of one end, in the order they are needed. */
export const endKeys = [
  'cutoff_mm',
  'insertion_mm',
  'skive',
  'ferrule',
  'lubricant',
  'die_set',
  'crimp_diameter_mm',
  'crimp_tolerance_mm',
  'source',
] as const;
export type EndKey = (typeof endKeys)[number];

/** What is read at the rig. */
export const proofKeys = ['pressure_bar', 'hold_s', 'gauge'] as const;
export type ProofKey = (typeof proofKeys)[number];

/** What is measured of the finished hose at a step of its own. */
export const finishedKeys = ['length_mm', 'turn_deg'] as const;
export type FinishedKey = (typeof finishedKeys)[number];

/** A field that can be typed, as it stands in the job's `typing`. */
export type Field =
  | { of: 'end'; role: Role; key: EndKey }
  | { of: 'crimp'; role: Role; index: number }
  | { of: 'cutoff'; role: Role; index: number }
  | { of: 'finished'; key: FinishedKey | 'cut_mm' }
  | { of: 'proof'; key: ProofKey };

/** How a field is typed. */
export type Kind = { by: 'number'; quantity: Quantity } | { by: 'text' } | { by: 'skive' };

const AREA = 'make';

/** The field's name under which half a number is kept. */
export function fieldName(field: Field): string {
  switch (field.of) {
    case 'end':
      return `${AREA}.${field.role}.${field.key}`;
    case 'crimp':
    case 'cutoff':
      return `${AREA}.${field.of}.${field.role}.${field.index}`;
    case 'finished':
    case 'proof':
      return `${AREA}.${field.of}.${field.key}`;
  }
}

/** The field of that name; null for a field of another screen. */
export function fieldOf(name: string): Field | null {
  const [area, first, second, third] = name.split('.');
  if (area !== AREA) return null;
  const end = endKeys.find((key) => key === second);
  if ((first === 'A' || first === 'B') && end) return { of: 'end', role: first, key: end };
  if ((first === 'crimp' || first === 'cutoff') && (second === 'A' || second === 'B') && third)
    return { of: first, role: second, index: Number(third) };
  const finished = (['cut_mm', ...finishedKeys] as const).find((key) => key === second);
  if (first === 'finished' && finished) return { of: 'finished', key: finished };
  const proof = proofKeys.find((key) => key === second);
  return first === 'proof' && proof ? { of: 'proof', key: proof } : null;
}

export function kindOf(field: Field): Kind {
  if (field.of === 'crimp' || field.of === 'cutoff') return { by: 'number', quantity: 'length' };
  switch (field.key) {
    case 'source':
    case 'ferrule':
    case 'lubricant':
    case 'die_set':
    case 'gauge':
      return { by: 'text' };
    case 'skive':
      return { by: 'skive' };
    case 'pressure_bar':
      return { by: 'number', quantity: 'pressure' };
    case 'hold_s':
    case 'turn_deg':
      return { by: 'number', quantity: 'plain' };
    default:
      return { by: 'number', quantity: 'length' };
  }
}

const LABELS: Record<EndKey | FinishedKey | ProofKey | 'cut_mm', WordId> = {
  cutoff_mm: 'make-cutoff',
  insertion_mm: 'make-insertion',
  skive: 'make-skive',
  ferrule: 'make-ferrule',
  lubricant: 'make-lubricant',
  die_set: 'make-die-set',
  crimp_diameter_mm: 'make-crimp-diameter',
  crimp_tolerance_mm: 'make-crimp-tolerance',
  source: 'make-source',
  cut_mm: 'make-finished-cut',
  length_mm: 'make-finished-length',
  turn_deg: 'make-finished-turn',
  pressure_bar: 'make-proof-pressure',
  hold_s: 'make-proof-hold',
  gauge: 'make-proof-gauge',
};

/** The name of a field without its end. */
export function labelOf(key: keyof typeof LABELS): string {
  return say(LABELS[key]);
}

/** The name of a field with its end. */
export function titleOf(field: Field): string {
  switch (field.of) {
    case 'end':
      return say('make-field-at', { field: labelOf(field.key), end: field.role });
    case 'crimp':
      return say('make-crimp-reading', { end: field.role, number: String(field.index + 1) });
    case 'cutoff':
      return say('make-cutoff-reading', { end: field.role, number: String(field.index + 1) });
    case 'finished':
    case 'proof':
      return labelOf(field.key);
  }
}

/** Codes of what a sheet misses that can be typed here. */
const BY_MISSING: Record<string, EndKey> = {
  cutoff: 'cutoff_mm',
  insertion: 'insertion_mm',
  skive: 'skive',
  ferrule: 'ferrule',
  lubricant: 'lubricant',
  'die-set': 'die_set',
  'crimp-diameter': 'crimp_diameter_mm',
  'crimp-tolerance': 'crimp_tolerance_mm',
};

/** The field that fills a gap of the sheet; null for what is not typed on the bench. */
export function fieldFor(missing: Missing): Field | null {
  const key = BY_MISSING[missing.code];
  return key && missing.role ? { of: 'end', role: missing.role, key } : null;
}

/** What stands in a field; null while it is not known. */
export function valueOf(doc: JobDoc, field: Field): number | string | Skive | null {
  if (field.of === 'crimp') return doc.crimps[field.role][field.index] ?? null;
  if (field.of === 'cutoff') return doc.cutoffs[field.role][field.index] ?? null;
  if (field.of === 'finished') return doc.finished[field.key];
  if (field.of === 'proof') return doc.proving[field.key] || null;
  const { role, key } = field;
  if (key === 'cutoff_mm') return doc.spec.ends.find((end) => end.role === role)?.cutoff_mm ?? null;
  return doc.settings.find((settings) => settings.role === role)?.[key] ?? null;
}

/** A setting of an end: the job's own, or what the sheet took from the one supplier's row that suits. */
export function settingAt(sheet: BuildSheet, doc: JobDoc, role: Role, key: EndKey): number | string | Skive | null {
  const own = valueOf(doc, { of: 'end', role, key });
  if (own !== null || key === 'cutoff_mm') return own;
  return sheet.settings.find((one) => one.role === role)?.[key] ?? null;
}

/** The step that each measure of the finished hose is taken at: what was ticked rested on it as it stood. */
export const FINISHED_STEPS: Record<FinishedKey, string> = { length_mm: 'measure-length', turn_deg: 'measure-turn' };

/** Writes a reading of a crimp, or strikes it. What was ticked rested on the readings as they stood. */
export function putReading(doc: JobDoc, role: Role, index: number, mm: number | null): void {
  const readings = doc.crimps[role];
  const before = readings[index] ?? null;
  if (before !== null && before !== mm) giveUp(doc, role, before, mm === null ? 'struck' : 'read-again');
  readings[index] = mm;
  while (readings.at(-1) === null) readings.pop();
  delete doc.ticks[`measure-crimp.${role}`];
}

function giveUp(doc: JobDoc, role: Role, mm: number, why: WhyGivenUp): void {
  doc.givenUp[role].push({ mm, by: doc.crimpedBy[role], why });
}

/** Gives all readings of a crimp up: it is pressed once more, or read again with something else. */
export function readAnew(doc: JobDoc, role: Role, why: WhyGivenUp): void {
  for (const mm of doc.crimps[role]) if (mm !== null) giveUp(doc, role, mm, why);
  doc.crimps[role] = [];
  delete doc.ticks[`measure-crimp.${role}`];
}

/** Writes a field. */
export function setValue(doc: JobDoc, field: Field, value: number | string | Skive): void {
  if (field.of === 'crimp') {
    putReading(doc, field.role, field.index, Number(value));
  } else if (field.of === 'cutoff') {
    doc.cutoffs[field.role][field.index] = Number(value);
  } else if (field.of === 'finished') {
    doc.finished[field.key] = Number(value);
    if (field.key !== 'cut_mm') delete doc.ticks[FINISHED_STEPS[field.key]];
  } else if (field.of === 'proof') {
    if (field.key === 'gauge') doc.proving.gauge = String(value);
    else doc.proving[field.key] = Number(value);
  } else if (field.key === 'cutoff_mm') {
    const end = doc.spec.ends.find((one) => one.role === field.role);
    if (end) end.cutoff_mm = Number(value);
  } else {
    const known = doc.settings.find((settings) => settings.role === field.role);
    // Another target is another's: whose it is, is asked anew.
    const before = known?.crimp_diameter_mm;
    if (known && field.key === 'crimp_diameter_mm' && before != null && before !== value) known.source = null;
    if (known) Object.assign(known, { [field.key]: value });
    else doc.settings.push({ role: field.role, [field.key]: value });
  }
}

/**
 * The settings of A that B lacks, with those that B has: ends of one kind on one hose go on alike. Ends of two kinds have a
 * row each, and figures of two sources are not mixed. What is measured, the cut-off too, is measured at each end.
 */
export function settingsForB(sheet: BuildSheet, doc: JobDoc): Given<EndSettings> | null {
  const [kindA, kindB] = (['A', 'B'] as const).map((role) => doc.spec.ends.find((one) => one.role === role));
  if (!kindA || kindA.family !== kindB?.family || kindA.size !== kindB.size) return null;
  const [a, b] = sheet.settings;
  const source = b.source ?? a.source;
  if (source == null || source !== a.source) return null;
  const taken = SETTING_KEYS.filter((key) => b[key] == null && a[key] != null);
  if (!taken.some((key) => key !== 'source')) return null;
  return { ...b, ...Object.fromEntries(taken.map((key) => [key, a[key]])), role: 'B' };
}

/** Takes them. */
export function takeForB(doc: JobDoc, taken: Given<EndSettings>): void {
  doc.settings = [...doc.settings.filter((one) => one.role !== 'B'), { ...taken }];
}

const SETTING_KEYS = endKeys.filter((key) => key !== 'cutoff_mm');

/** What is known of an end's settings, in a line. */
export function settingsOf(settings: Given<EndSettings>, unit: LengthUnit): string {
  const known = SETTING_KEYS.flatMap((key) => {
    const value = settings[key];
    return value == null ? [] : [`${labelOf(key)} ${written({ of: 'end', role: settings.role, key }, value, unit)}`];
  });
  return known.join(' · ');
}

/** A value as it is written. */
export function written(field: Field, value: number | string | Skive, unit: LengthUnit = 'mm'): string {
  if (typeof value === 'string') return value === 'none' ? say('make-skive-none') : value;
  if (typeof value === 'object') return skiveOf(value, unit);
  if (field.of === 'proof' && field.key === 'pressure_bar') return pressure(value);
  if (field.of === 'proof') return withUnit(number(value, 0), 's');
  if (field.of === 'finished' && field.key === 'turn_deg') return angle(value);
  if (field.of === 'cutoff') return taped(value, unit);
  return field.of === 'crimp' || field.key.startsWith('crimp') ? crimped(value, unit) : taped(value, unit);
}

function skiveOf(skive: Exclude<Skive, 'none'>, unit: LengthUnit): string {
  if ('outer' in skive) return say('make-skive-outer-by', { length: taped(skive.outer.length_mm, unit) });
  if ('inner' in skive) return say('make-skive-inner-by', { length: taped(skive.inner.length_mm, unit) });
  return say('make-skive-both-by', {
    outer: taped(skive.both.outer_mm, unit),
    inner: taped(skive.both.inner_mm, unit),
  });
}
