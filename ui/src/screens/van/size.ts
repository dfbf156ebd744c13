import { number, withUnit } from '../../words/number';

const KILO = 1000;

/** A file's size as its shelf counts it. */
export function size(bytes: number): string {
  if (bytes < KILO * KILO) return withUnit(number(bytes / KILO, 0), 'kB');
  return withUnit(number(bytes / KILO / KILO, 1), 'MB');
}
