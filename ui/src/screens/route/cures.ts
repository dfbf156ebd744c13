// What is done about a finding of the routing, and what a cure changes in the job.
import type { Cure, FieldRouted, Finding } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { say } from '../../words/words';
import { endOf, putForm } from '../check/fields';
import { partOf } from '../check/findings';
import type { RouteField } from './ports';

/** Where a finding's cure is taken up on this sheet. */
export type Act =
  | { to: 'field'; field: RouteField; verb: string }
  | { to: 'travel'; verb: string }
  | { to: 'turn'; turn: number; verb: string }
  | { to: 'length'; length: number; verb: string };

/** Null where nothing of this sheet cures it. */
export function actOf(finding: Finding, answer: FieldRouted): Act | null {
  const part = partOf(finding);
  switch (finding.case) {
    case 'route-travel-missing':
      return { to: 'travel', verb: say('routing-go-travel') };
    case 'route-rigid-assumed':
      return part === 'A' || part === 'B'
        ? { to: 'field', field: `${part}.rigid_mm`, verb: say('routing-go-rigid', { end: part }) }
        : null;
    case 'route-turn-needed':
    case 'route-turn-differs':
      return finding.limit === null ? null : { to: 'turn', turn: finding.limit, verb: say('routing-go-turn') };
    case 'route-too-short':
      return answer.recommended
        ? { to: 'length', length: answer.recommended.overall_length_mm, verb: say('routing-go-length') }
        : null;
    default:
      return null;
  }
}

/** What was before a cure was tried, so that it can be taken back. */
export type Before = Pick<JobDoc, 'spec' | 'route' | 'sameForSame'>;

/** Makes the change that was routed. What of a new end is only in proportion stays to be measured. */
export function take(doc: JobDoc, cure: Cure): void {
  const { end, form, points } = cure;
  if (end && form && cure.change === 'form') {
    putForm(doc, end, form);
    const made = endOf(doc.spec, end);
    if (made && !cure.assumed) made.drop_mm = cure.drop_mm;
    doc.route.ends[end].rigid_mm = cure.assumed ? null : cure.rigid_mm;
  }
  if (end && points) doc.route.ends[end].points = points;
  doc.spec.overall_length_mm = cure.overall_length_mm;
  if (cure.turn_deg !== null) doc.spec.turn_deg = cure.turn_deg;
  doc.sameForSame = false;
}
