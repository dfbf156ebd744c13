// What the oil is worked out from: the numbers beside the service, and the question.
import type { Given } from '../../backend';
import type { OilQuestion } from '../../backend/types';
import type { Quantity } from '../../components/keypad.svelte';
import type { JobDoc, Oil } from '../../state/job-doc';
import type { WordId } from '../../words/ids';
import { number, withUnit } from '../../words/number';
import type { Units } from '../check/fields';
import { taped } from '../make/lengths';

export type OilField = keyof Oil;

interface About {
  label: WordId;
  how: WordId;
  quantity: Quantity;
  unit: string;
}

export const OIL: Record<OilField, About> = {
  length_mm: { label: 'flowing-length', how: 'flowing-length-how', quantity: 'length', unit: 'mm' },
  elbows_45: { label: 'flowing-elbows-45', how: 'flowing-elbows-how', quantity: 'plain', unit: '' },
  elbows_90: { label: 'flowing-elbows-90', how: 'flowing-elbows-how', quantity: 'plain', unit: '' },
  iso_vg: { label: 'flowing-vg', how: 'flowing-vg-how', quantity: 'plain', unit: '' },
  closing_ms: { label: 'flowing-closing', how: 'flowing-closing-how', quantity: 'plain', unit: 'ms' },
};

export const oilFields = Object.keys(OIL) as OilField[];
export const isOilField = (name: string): name is OilField => name in OIL;

/** A number as it is written; null is not said. */
export function oilWritten(oil: Oil, field: OilField, units: Units): string | null {
  const value = oil[field];
  if (value === null) return null;
  return field === 'length_mm'
    ? taped(value, units.length === 'in' ? 'inch' : 'mm')
    : withUnit(number(value, 1), OIL[field].unit);
}

/** The question of flow and surge, from the spec, the service and what was said beside them. */
export function oilAsked({ spec, service, oil }: Pick<JobDoc, 'spec' | 'service' | 'oil'>): Given<OilQuestion> {
  const { closing_ms, elbows_45, elbows_90, iso_vg, length_mm } = oil;
  return {
    spec,
    service,
    length_mm,
    iso_vg,
    elbows_45: elbows_45 ?? 0,
    elbows_90: elbows_90 ?? 0,
    closing_s: closing_ms === null ? null : closing_ms / 1000,
  };
}
