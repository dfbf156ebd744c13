import type { BuildSheet, Role, Tighten, TorqueValue } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { angle, number, withUnit } from '../../words/number';
import { say, sayCode } from '../../words/words';

/** A figure's own name: no two of a table hold for the same by the same source. */
export function keyOf(value: TorqueValue): string {
  return [value.method, value.condition, value.source].join('|');
}

/** The figures of an end, table by table: no two tables are mixed. */
export function tablesOf(end: Tighten): { from: string; values: TorqueValue[] }[] {
  const tables = new Map<string, TorqueValue[]>();
  for (const value of end.values) {
    const from = sourceOf(value);
    tables.set(from, [...(tables.get(from) ?? []), value]);
  }
  return [...tables].map(([from, values]) => ({ from, values }));
}

/** The figure as it is written: a torque, flats from finger tight, or an angle. */
export function figureOf(value: TorqueValue): string {
  const decimals = value.method === 'flats-from-finger-tight' ? 2 : 0;
  const [low, high] = [value.min, value.max].map((one) => (one === null ? null : number(one, decimals)));
  const range = low === null || low === high ? (high ?? '') : say('make-hold', { from: low ?? '', to: high ?? '' });
  if (value.method === 'angle') return value.min === null ? angle(value.max) : `${range}\u00b0`;
  return value.method === 'torque' ? withUnit(range, value.unit) : say('fit-flats', { flats: range, count: value.max });
}

/** The figure the person took for an end. */
export function takenAt(end: Tighten, doc: JobDoc): TorqueValue | undefined {
  return end.values.find((one) => keyOf(one) === doc.tighten[end.role]);
}

/** Said of an end that goes by its maker's own figure, which stands in no table here. */
export const BY_MAKER = 'maker';

/** Said of an end that goes by no figure at all. */
export const BY_FEEL = 'feel';

/** Ends of which nothing is said yet: no figure is taken, nor that the maker's own or none is gone by. */
export function unsaid(sheet: BuildSheet, doc: JobDoc): Role[] {
  return withoutFigure(sheet, doc).filter((role) => doc.tighten[role] !== BY_FEEL);
}

/** Ends that go by no figure, said or not. */
export function withoutFigure(sheet: BuildSheet, doc: JobDoc): Role[] {
  return sheet.tighten
    .filter((end) => !takenAt(end, doc) && doc.tighten[end.role] !== BY_MAKER)
    .map(({ role }) => role);
}

/** What each end is tightened by. A figure that is gone by was not measured, and no end is left out. */
export function tightenedBy(sheet: BuildSheet, doc: JobDoc): string {
  const without = withoutFigure(sheet, doc);
  const ends = sheet.tighten.map((end) => {
    const taken = takenAt(end, doc);
    const by = taken ? figureOf(taken) : say(without.includes(end.role) ? 'fit-by-nothing' : 'fit-by-maker');
    return say('make-at-end', { end: end.role, step: by });
  });
  return [...ends, say('fit-not-measured')].join(' · ');
}

/** Where a figure is from, and how that is known. */
export function sourceOf(value: TorqueValue): string {
  return say('finding-source', { source: value.source, basis: sayCode(`basis-${value.basis}`) ?? value.basis });
}
