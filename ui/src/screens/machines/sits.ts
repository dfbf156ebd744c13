// What the check says of a hose that sits, for the person who looks after it. The verdicts are the check's.
import type { Question } from '../../backend';
import type { Checked, Finding } from '../../backend/types';
import type { Sign } from '../../components/VerdictSign.svelte';
import { titleOf } from '../check/findings';
import { serviceOf, type Ground } from './start-job';

/** Two figures of the place itself that can not both be right, whatever hose sits there. */
const CONTRADICTION = 'pressure-contradiction';

export interface Sits {
  /** `unsettled` where what sits there, or what the line does, is not known enough to say anything. */
  sign: Sign;
  /** What is asked too much of it, gravest first. */
  over: Finding[];
  /** What can not be said, by the names of the findings. */
  open: string[];
  /** The first thing to say; null where nothing known is too much. */
  why: string | null;
}

/** What a check of the hose that sits there comes to. */
export function sitsUnder(checked: Checked): Sits {
  const grave = checked.findings.filter((one) => one.verdict !== 'pass');
  const asked = grave.filter((one) => one.asked_by === 'line');
  const over = asked.filter((one) => !one.open);
  const doubt = asked.filter((one) => one.open);
  const blind = over.length === 0 ? grave.find((one) => one.verdict === 'stop') : undefined;
  return {
    sign: over[0]?.verdict ?? (blind ? 'unsettled' : doubt.length > 0 ? 'caution' : 'pass'),
    over,
    open: [...new Set(doubt.map(titleOf))],
    why: (over[0] ?? blind)?.why ?? null,
  };
}

/** Of a place where nothing sits only what contradicts itself. */
export function contradictions(checked: Checked): Finding[] {
  return checked.findings.filter((one) => one.rule === CONTRADICTION);
}

/** What the check is asked of a place: what sits there with what the place asks; without a hose what belongs there. */
export function askedOf(ground: Omit<Ground, 'again'>): Question<'check'> {
  const spec = (ground.replaces ? ground.assembly?.spec : null) ?? ground.place?.spec ?? { ends: [] };
  // The tolerance of its length says nothing of a hose that sits: either practice will do.
  return { spec, service: serviceOf(ground), overrides: [], length_practice: 'din-20066' };
}
