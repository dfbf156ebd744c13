// What the oil is worked out from: the numbers beside the service, and the question.
import type { Answer, Given, Question } from '../../backend';
import type { Checked, Finding, OilQuestion } from '../../backend/types';
import type { Sign } from '../../components/VerdictSign.svelte';
import type { Quantity } from '../../components/keypad.svelte';
import type { JobDoc, Oil } from '../../state/job-doc';
import type { WordId } from '../../words/ids';
import { number, withUnit } from '../../words/number';
import { bendOf } from '../../drawings/assembly';
import type { Units } from '../check/fields';
import { taped } from '../make/lengths';

/** More elbows than a line has. */
const MOST = 50;

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
  const own = spec.ends.flatMap((end) => short(bendOf(end.form ?? null)));
  const bends = [...own, ...times(45, elbows_45), ...times(90, elbows_90)];
  return {
    spec,
    service,
    elbows: bends.map((angle_deg) => ({ angle_deg, radius_ratio: null, loss_coefficient: null })),
    ...(length_mm !== null && { length_m: length_mm / 1000 }),
    ...(iso_vg !== null && { fluid: { iso_vg } }),
    ...(closing_ms !== null && { closure_time_s: closing_ms / 1000 }),
  };
}

/** The question whether the parts bear that peak, which is an estimate. It is the peak that is judged here, and not the relief valve beside it. */
export function peakAsked({ spec, service }: Pick<JobDoc, 'spec' | 'service'>, peak: number): Question<'check'> {
  const surge_pressure_bar = Math.ceil(peak);
  // The tolerance of its length says nothing of pressure: either practice will do.
  return {
    spec,
    service: {
      ...service,
      relief_bar: null,
      surge_pressure_bar,
      estimated: { ...service.estimated, surge_pressure_bar },
    },
    overrides: [],
    length_practice: 'din-20066',
  };
}

/** What a check says of the peak where it does not pass: each part against it, and that nobody measured it. */
export function held({ findings }: Checked): Finding[] {
  const ofPeak = ({ rule, case: which }: Finding) => rule === 'pressure' || which === 'surge-reckoned';
  return findings.filter((finding) => ofPeak(finding) && finding.verdict !== 'pass');
}

/** What stands at the head: the gravest of all that the screen shows. */
export interface Head {
  sign: Sign;
  /** What it is about: the speed, a part under the peak, or a peak that nobody can reckon. */
  about: 'speed' | 'peak' | 'no-peak';
}

const GRAVITY = ['pass', 'caution', 'stop'] as const;

/** The speed leads unless the peak is graver. A rise whose peak is not known is never a pass. */
export function headOf({ verdict, surge }: Pick<Answer<'oil'>, 'verdict' | 'surge'>, peak: readonly Finding[]): Head {
  const grave = GRAVITY.findLast((one) => peak.some((finding) => finding.verdict === one)) ?? 'pass';
  if (GRAVITY.indexOf(grave) > GRAVITY.indexOf(verdict)) return { sign: grave, about: 'peak' };
  const open = surge !== null && surge.pressure_rise_bar !== null && surge.peak_bar === null;
  return open && verdict === 'pass' ? { sign: 'caution', about: 'no-peak' } : { sign: verdict, about: 'speed' };
}

const times = (angle: number, count: number | null): number[] =>
  Array.from({ length: Math.min(MOST, Math.round(count ?? 0)) }, () => angle);

/** An end's own bend in short elbows of 45 and 90 degrees, the only ones with a figure; another counts as the next. */
function short(bend: number): number[] {
  if (bend <= 0) return [];
  if (bend <= 45) return [45];
  return bend <= 90 ? [90] : [90, 45];
}
