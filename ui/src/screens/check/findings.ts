// What a finding is called, how its figures are written, and where a tap on its cure leads. What it says
// and how grave it is comes from the check.
import type { Finding, HoseRef, Part } from '../../backend/types';
import type { WordId } from '../../words/ids';
import { angle, number, unitSign, withUnit } from '../../words/number';
import { hoseLong } from '../../words/spec';
import { say } from '../../words/words';
import type { FieldId } from './fields';

/** Titles by the first case or rule that fits: the longest beginning counts. */
const TITLES: Record<string, WordId> = {
  hose: 'check-title-hose',
  end: 'check-title-end',
  line: 'check-title-line',
  pressure: 'check-title-pressure',
  'working-pressure': 'check-title-working',
  relief: 'check-title-relief',
  surge: 'check-title-surge',
  circuit: 'check-title-circuit',
  failed: 'check-title-failed',
  heat: 'check-title-heat',
  'fluid-heat': 'check-title-fluid-heat',
  cold: 'check-title-cold',
  frost: 'check-title-frost',
  'fluid-temperature': 'check-title-heat',
  ambient: 'check-title-ambient',
  fluid: 'check-title-fluid',
  'out-of-scope': 'check-title-fluid',
  scope: 'check-title-fluid',
  bend: 'check-title-bend',
  duty: 'check-title-duty',
  vacuum: 'check-title-vacuum',
  'suction-helix': 'check-title-helix',
  flow: 'check-title-flow',
  'route-travel': 'check-title-route-travel',
  'route-rigid': 'check-title-route-rigid',
  'route-drop': 'check-title-end-drop',
  'route-change': 'check-title-route-change',
  'route-near-limit': 'check-title-bend',
  'route-straight-line': 'check-title-bend',
  'route-rival': 'check-title-route-rival',
  'route-behind': 'check-title-route-behind',
  'route-twist': 'check-title-route-twist',
  'route-turn': 'check-title-turn',
  'route-too-short': 'check-title-length',
  'route-no-length': 'check-title-length',
  'route-unsettled': 'check-title-length',
  'end-ok': 'check-title-end-read',
  'end-not-read': 'check-title-end-read',
  'end-unsettled': 'check-title-end-read',
  'end-differs': 'check-title-end-read',
  'end-gender': 'check-title-end-gender',
  'end-form': 'check-title-end-form',
  'end-drop': 'check-title-end-drop',
  size: 'check-title-size',
  original: 'check-title-original',
  'original-pressure': 'check-title-original-pressure',
  'printed-pressure': 'check-title-printed-pressure',
  'original-bore': 'check-title-original-bore',
  'original-heat': 'check-title-original-heat',
  'original-cold': 'check-title-original-cold',
  'original-bend': 'check-title-original-bend',
  'original-vacuum': 'check-title-original-vacuum',
  length: 'check-title-length',
  cutoff: 'check-title-cutoff',
  'cut-length': 'check-title-cut',
  'length-tolerance': 'check-title-tolerance',
  turn: 'check-title-turn',
  override: 'check-title-override',
};

/** The value that the longest beginning of a case stands for. */
function byBeginning<T>(table: Record<string, T>, code: string): T | undefined {
  const parts = code.split('-');
  for (let count = parts.length; count > 0; count -= 1) {
    const known = table[parts.slice(0, count).join('-')];
    if (known !== undefined) return known;
  }
  return undefined;
}

/** Once somebody took it on the case says that alone; then the rule tells what it is about. */
const about = (finding: Finding): string => (finding.case === 'override-taken' ? finding.rule : finding.case);

/** Which part or end a finding is about. */
export function partOf(finding: Finding): string {
  return finding.names['part'] ?? finding.names['end'] ?? '';
}

/** What it is called: `Pressure, end A`. */
export function titleOf(finding: Finding): string {
  const id = byBeginning(TITLES, about(finding)) ?? byBeginning(TITLES, finding.rule);
  return id ? say(id, { part: partOf(finding), name: finding.names['name'] ?? '' }) : finding.rule;
}

/** Cases whose limit is the least it may be. */
const LEAST =
  /^(bend|route-(near|rival|behind)|vacuum|original-(pressure|heat|vacuum)|printed-pressure|(relief|surge)-below)-?/;
/** Limits with a scale of their own, on which an arrow can be drawn to the limit or past it. */
const DRAWN =
  /^(pressure|heat|fluid-heat|ambient|bend|route-(near|rival|behind|twist)|vacuum|flow|printed-pressure|original-pressure)(-|$)/;

const DECIMALS: Record<string, number> = { bar: 0, C: 0, mm: 1, 'm/s': 1, 'kPa abs': 1, DN: 1 };

/** A number as a row shows it; the unit stands once, at the limit. */
function written(value: number, unit: string, withIt: boolean): string {
  if (unit === 'deg') return angle(value, 1);
  const text = number(value, DECIMALS[unit] ?? 1);
  if (unit === 'DN') return withIt ? `DN${text}` : text;
  return withIt ? withUnit(text, unitSign(unit)) : text;
}

export interface Figures {
  value?: string;
  limit?: string;
  scale: { value: number; limit: number; least: boolean; zone: boolean } | null;
}

/** Value and limit as written, and the line they are drawn on. */
export function figuresOf(finding: Finding): Figures {
  const { unit } = finding;
  const value = finding.value ?? null;
  // A cut of more than nothing has no limit that a person would look for.
  // Nor has the number of failures from which on they are told as repeated.
  const limit = /^(length$|failed-)/.test(finding.rule) ? null : (finding.limit ?? null);
  const least = LEAST.test(finding.case);
  if (value === null && limit === null) return { scale: null };
  const bound = limit === null ? undefined : written(limit, unit, true);
  return {
    value: value === null ? undefined : written(value, unit, limit === null),
    limit: bound !== undefined && least ? say('check-at-least', { limit: bound }) : bound,
    scale:
      value !== null && limit !== null && value > 0 && limit > 0 && DRAWN.test(about(finding))
        ? { value, limit, least, zone: false }
        : null,
  };
}

/** Where a cure is taken up. */
export type Cure =
  | { to: 'field'; field: FieldId; verb: string }
  | { to: 'find'; part: Part; verb: string }
  /** A hose that passed the same check. */
  | { to: 'hose'; hose: HoseRef; verb: string }
  | { to: 'take-read'; end: 'A' | 'B'; verb: string };

const FIELDS: Record<string, FieldId> = {
  'hose-missing': 'hose',
  'line-missing': 'service.line',
  'working-pressure-missing': 'service.working_pressure_bar',
  'relief-missing': 'service.relief_bar',
  'surge-missing': 'service.surge_pressure_bar',
  'relief-below-working': 'service.relief_bar',
  'surge-below-working': 'service.surge_pressure_bar',
  'surge-reckoned': 'service.surge_pressure_bar',
  'surge-estimated': 'service.surge_pressure_bar',
  'surge-estimated-above': 'service.surge_pressure_bar',
  'heat-missing': 'service.fluid_max_c',
  'cold-missing': 'service.fluid_min_c',
  'ambient-missing': 'service.ambient_max_c',
  'fluid-missing': 'service.fluid',
  'fluid-unknown': 'service.fluid',
  'out-of-scope': 'service.fluid',
  'bend-missing': 'service.bend_radius_mm',
  'bend-estimated-near': 'service.bend_radius_mm',
  'vacuum-missing': 'service.vacuum_kpa_abs',
  'flow-missing': 'service.flow_l_min',
  'bend-limit-unknown': 'hose.min_bend_radius_mm',
  'bend-unverified': 'hose.min_bend_radius_mm',
  'vacuum-unrated': 'hose.vacuum_kpa_abs',
  'vacuum-unverified': 'hose.vacuum_kpa_abs',
  'length-missing': 'overall_length_mm',
  'cut-length-impossible': 'overall_length_mm',
  'turn-missing': 'turn_deg',
  'duty-cover-missing': 'cover',
  'original-heat-above': 'service.fluid_max_c',
  'original-cold-below': 'service.fluid_min_c',
  'original-bend-tighter': 'service.bend_radius_mm',
  'original-vacuum-deeper': 'service.line',
};

/** Of an end: the field behind the role. Without one it is the end itself. */
const END_FIELDS: Record<string, string> = {
  'end-missing': '',
  'end-gender-missing': '.gender',
  'end-form-missing': '.form',
  'end-drop-missing': '.drop_mm',
  'size-jump': '',
  'size-unknown': '',
  'cutoff-missing': '.cutoff_mm',
};

/** Cured by another hose. */
const OTHER_HOSE =
  /^(heat-(above|unverified)|fluid-(heat|excluded|not-named|tube|unrated|destroys|limited|unverified)|cold-(below|unverified)|frost|ambient-(above|unverified)|bend-too|duty-wire|vacuum-too|suction-helix|flow-too|original-(pressure|bore|heat|cold|bend|vacuum)|printed-pressure)/;

const VERBS: Record<string, WordId> = {
  hose: 'check-go-hose',
  'service.working_pressure_bar': 'check-go-working',
  'service.fluid': 'check-go-fluid',
  'service.fluid_max_c': 'check-go-heat',
  'service.fluid_min_c': 'check-go-cold',
  'service.bend_radius_mm': 'check-go-bend',
  'service.line': 'check-go-line',
  'hose.min_bend_radius_mm': 'check-go-hose-bend',
  'hose.vacuum_kpa_abs': 'check-go-hose-vacuum',
  overall_length_mm: 'check-go-length',
  turn_deg: 'check-go-turn',
  cover: 'check-go-cover',
  adapters: 'check-go-adapters',
};

const field = (id: FieldId, verb?: string): Cure => ({
  to: 'field',
  field: id,
  verb: verb ?? say(VERBS[id] ?? 'check-go-change'),
});

/** Where the cure of a finding is taken up; null where nothing in this job cures it. */
export function cureOf(finding: Finding, now?: HoseRef | null): Cure | null {
  const { case: code } = finding;
  const part = partOf(finding);
  const end = part === 'A' || part === 'B' ? part : null;
  if (finding.verdict === 'pass' || code === 'override-taken') return null;
  if (end && (code === 'end-unsettled' || code === 'end-not-read'))
    return { to: 'find', part: end, verb: say('check-go-read', { end }) };
  if (end && code === 'end-differs') return { to: 'take-read', end, verb: say('check-go-take-read', { end }) };
  if (code === 'original-missing' || code === 'original-unknown')
    return { to: 'find', part: 'hose', verb: say('check-go-read-hose') };
  const size = code === 'flow-too-fast-size' ? sizeOf(finding, now) : null;
  if (size) return { to: 'hose', hose: size, verb: say('check-go-size', { hose: hoseLong(size) ?? '?' }) };
  const ofEnd = END_FIELDS[code];
  if (end && ofEnd !== undefined)
    return field(`${end}${ofEnd}`, say(code === 'end-missing' ? 'check-go-end' : 'check-go-change-end', { end }));
  if (finding.rule === 'pressure') return pressureCure(finding, end, part);
  const known = FIELDS[code];
  if (known) return field(known);
  return OTHER_HOSE.test(code) ? field('hose', say('check-go-other-hose')) : null;
}

/** The size of the same type that a finding names as checked; null where it names another type. */
function sizeOf(finding: Finding, now: HoseRef | null | undefined): HoseRef | null {
  const dn = /^(.*) DN ([\d.]+)$/.exec(finding.names['hose'] ?? '');
  return now && dn?.[1] === `${now.standard} ${now.type}`
    ? { standard: now.standard, type: now.type, dn: Number(dn[2]) }
    : null;
}

/** A rating that a person gave over the table's. */
export const isOwn = (finding: Finding): boolean => finding.rule === 'pressure' && finding.basis === 'yours';

/** What another hose may have been asks more than the spec gives. */
const RIVAL = /^original-(pressure-above|bore-larger|bore-smaller|heat-above|cold-below|bend-tighter|vacuum-deeper)$/;

/**
 * The other way out of a finding that has two: another end may be no way at a port that is there, and a hose that the
 * readings did not settle may be read on instead of replaced by a better one.
 */
export function otherCureOf(finding: Finding, hoseSettled = true): Cure | null {
  if (!hoseSettled && RIVAL.test(finding.case)) return { to: 'find', part: 'hose', verb: say('check-go-settle-hose') };
  const end = partOf(finding);
  if (finding.case !== 'pressure-above-rating' || (end !== 'A' && end !== 'B') || isOwn(finding)) return null;
  return field(end, say('check-go-other-end', { end }));
}

function pressureCure(finding: Finding, end: 'A' | 'B' | null, part: string): Cure {
  const { case: code } = finding;
  if (part === 'hose') return field('hose', say('check-go-other-hose'));
  if (!end) return field('adapters', code === 'pressure-above-rating' ? say('check-go-adapter-change') : undefined);
  if (code !== 'pressure-above-rating') return field(`${end}.rating_bar`, say('check-go-rating', { end }));
  return isOwn(finding)
    ? field(end, say('check-go-other-end', { end }))
    : field(`${end}.rating_bar`, say('check-go-supplier-rating', { end }));
}
