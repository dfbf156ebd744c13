// What a job left on the record of a hose.
import type { Body, HoseShown, TagCode, Written } from '../../backend/types';

/** What stands of the hose that was made, in its order: that it is on record, and where it was fitted. */
const MADE: ReadonlySet<Body['kind']> = new Set(['assembly-made', 'overridden', 'fitted']);

/** The events of a job's own hose, or the one by which the other came off. */
export function doneOf(hose: HoseShown, made: TagCode): Written[] {
  const stands = hose.history.filter((one) => !one.void);
  if (hose.code === made) return stands.filter((one) => MADE.has(one.body.kind));
  return stands.filter((one) => one.body.kind === 'taken-off').slice(-1);
}
