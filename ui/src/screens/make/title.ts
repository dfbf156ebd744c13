import type { JobDoc } from '../../state/job-doc';
import { number } from '../../words/number';
import { say } from '../../words/words';

/** Machine and place of a job, over what is done at them. */
export function contextOf(doc: JobDoc): string {
  if (!doc.at) return say('make-hose-in-hand');
  const { machine_name, place_name, number: at } = doc.at;
  if (at === null) return [machine_name, place_name].filter(Boolean).join(' · ');
  return say('make-place', { machine: machine_name ?? '', number: number(at, 0) });
}

/** What the place is called; the step's own words where there is none. */
export function placeOf(doc: JobDoc, step: string): string {
  return doc.at?.place_name ?? step;
}

/** What a paper is about. */
export function subjectOf(doc: JobDoc): string {
  return [doc.at?.machine_name, doc.at?.place_name, doc.code].filter(Boolean).join(', ');
}
