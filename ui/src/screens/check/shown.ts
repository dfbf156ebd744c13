// The fields of a job's spec and service as they are written.
import type { ServiceCell } from '../../components/ServiceCells.svelte';
import type { JobDoc } from '../../state/job-doc';
import { number } from '../../words/number';
import { coverWords, lineWords, formWords, genderWords, sizeWords } from '../../words/spec';
import { say } from '../../words/words';
import * as fields from './fields';

const SERVICE = [
  'working_pressure_bar',
  'relief_bar',
  'surge_pressure_bar',
  'fluid',
  'fluid_min_c',
  'fluid_max_c',
  'ambient_max_c',
  'flow_l_min',
  'line',
  'bend_radius_mm',
  'vacuum_kpa_abs',
  'duties',
].map((key) => `service.${key}`);
const END = ['', '.gender', '.form', '.drop_mm', '.cutoff_mm', '.rating_bar'];

/** A field as it is written; null is not known. */
export function shown(doc: JobDoc, id: fields.FieldId, units: fields.Units): string | null {
  if (id === 'service.duties') return doc.service.duties.map(coverWords).join(', ') || '–';
  if (id === 'adapters') return doc.spec.adapters?.map((one) => one.name).join(', ') || '–';
  if (id === 'hose') {
    const { hose } = doc.spec;
    return hose ? `${hose.standard} ${hose.type} DN${number(hose.dn, 1)}` : null;
  }
  if (id === 'A' || id === 'B') {
    const end = fields.endOf(doc.spec, id);
    return end ? `${end.family} ${sizeWords(end.size)}` : null;
  }
  const value = fields.numberIn(doc, id);
  if (value === null) return inWords(id, fields.wordIn(doc, id));
  const written = fields.writtenIn(id, value, units);
  return estimated(doc, id, value) ? say('check-estimated', { value: written }) : written;
}

/** Whether a figure of the service was worked out and not measured. */
function estimated(doc: JobDoc, id: fields.FieldId, value: number): boolean {
  const { bend_radius_mm, surge_pressure_bar } = doc.service.estimated ?? {};
  return (
    (id === 'service.bend_radius_mm' && value === bend_radius_mm) ||
    (id === 'service.surge_pressure_bar' && value === surge_pressure_bar)
  );
}

function inWords(id: fields.FieldId, word: string | null): string | null {
  if (word === null) return null;
  if (id === 'service.line') return lineWords(word as 'pilot');
  if (id.endsWith('.form')) return formWords(word);
  if (id.endsWith('.gender')) return genderWords(word as 'male');
  return id === 'cover' ? coverWords(word as 'plain') : word;
}

const cell = (doc: JobDoc, units: fields.Units) => (id: string) => ({
  id,
  label: fields.fieldLabel(id),
  value: shown(doc, id, units),
});

/** What the place asks, to be changed with a tap. */
export function serviceCells(doc: JobDoc, units: fields.Units): ServiceCell[] {
  return SERVICE.map(cell(doc, units));
}

/** What is made, to be changed with a tap; of an end that is not named only the end. */
export function specCells(doc: JobDoc, units: fields.Units): ServiceCell[] {
  const ends = (['A', 'B'] as const).flatMap((role) =>
    (fields.endOf(doc.spec, role) ? END : ['']).map((key) => `${role}${key}`),
  );
  const hose = doc.spec.hose ? ['hose', 'hose.min_bend_radius_mm', 'hose.vacuum_kpa_abs'] : ['hose'];
  return [...hose, 'cover', 'overall_length_mm', 'turn_deg', ...ends, 'adapters'].map(cell(doc, units));
}

/** The adapter whose rating is to be said first: the first without one. */
export function unratedAdapter(doc: JobDoc): fields.FieldId {
  const at = doc.spec.adapters?.findIndex((one) => (one.rating_bar ?? null) === null) ?? -1;
  return at < 0 ? 'adapters' : `adapters.${at}.rating_bar`;
}

/** `not known`, as it stands where a choice is set back. */
export const notKnown = (): string => say('check-not-known');
