import type { BuildSheet, Role, Tighten, TorqueValue } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { angle, number, withUnit } from '../../words/number';
import { say } from '../../words/words';

/** A figure's own name: no two of a table hold for the same by the same source. */
export function keyOf(value: TorqueValue): string {
  return [value.method, value.condition, value.source].join('|');
}

/** Whether another figure of the end has the same condition: then only the source tells them apart. */
export function hasTwin(value: TorqueValue, end: Tighten): boolean {
  const same = (one: TorqueValue) => one.method === value.method && one.condition === value.condition;
  return end.values.filter(same).length > 1;
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

/** The figures the person took, end by end; null while none is taken. */
export function takenOf(sheet: BuildSheet, doc: JobDoc): string | null {
  const of = (role: Role) => {
    const end = sheet.tighten.find((one) => one.role === role);
    const value = end && takenAt(end, doc);
    return value ? say('make-at-end', { end: role, step: figureOf(value) }) : null;
  };
  return (['A', 'B'] as const).map(of).filter(Boolean).join(' · ') || null;
}
