// Of the answer of a check: which sign stands first, in which order the findings stand, what the one Go does.
import type { Sign } from '../../components/VerdictSign.svelte';
import type { Finding, Verdict } from '../../backend/types';
import { cureOf, otherCureOf, type Cure } from './findings';

/** What the hose or an end is has not been said or read. */
const UNSETTLED = /^(hose-missing|end-missing|end-unsettled|end-not-read)$/;

const stops = (findings: readonly Finding[]) => findings.filter((one) => one.verdict === 'stop');

/** The sign over all. A broken square where it is not known what the parts are; a limit overstepped stays a stop. */
export function signOf(verdict: Verdict, findings: readonly Finding[]): Sign {
  const grave = stops(findings);
  const unsettled = grave.some((one) => UNSETTLED.test(one.case)) && grave.every((one) => one.open);
  return verdict === 'stop' && unsettled ? 'unsettled' : verdict;
}

/**
 * Stops, then cautions to be weighed; passes to be folded away. First of the stops what settles the parts; among the
 * others a limit that is overstepped stands before what is not known.
 */
export function inOrder(findings: readonly Finding[]): { grave: Finding[]; passes: Finding[] } {
  const settles = (one: Finding) => one.verdict === 'stop' && UNSETTLED.test(one.case);
  const doubt = (one: Finding) => (one.open ? 1 : 0);
  const rank = (one: Finding) => (settles(one) ? 0 : (one.verdict === 'caution' ? 3 : 1) + doubt(one));
  return {
    grave: findings.filter((one) => one.verdict !== 'pass').toSorted((a, b) => rank(a) - rank(b)),
    passes: findings.filter((one) => one.verdict === 'pass'),
  };
}

/** A caution that says nothing but that something was not entered. A stop stands among the stops. */
export const isOpen = ({ verdict, open, case: code }: Finding): boolean =>
  verdict === 'caution' && open && /-missing$/.test(code);

/** Without these there is no build sheet, though the hose itself may be made. */
const FOR_THE_SHEET = /^(length-missing|turn-missing)$/;

/**
 * What the Go does: the cure of the first stop that has one, then what the build sheet can not be made without, then
 * making it. Nothing while a stop has no cure here.
 */
export function nextOf(
  findings: readonly Finding[],
  hoseSettled = true,
): { to: 'cure'; cure: Cure; other: Cure | null } | { to: 'make' } | null {
  const grave = stops(inOrder(findings).grave);
  const sheet = findings.filter((one) => one.verdict === 'caution' && FOR_THE_SHEET.test(one.case));
  const first = grave.length > 0 ? grave : sheet;
  if (first.length === 0) return { to: 'make' };
  for (const one of first) {
    const cure = cureOf(one);
    if (cure) return { to: 'cure', cure, other: otherCureOf(one, hoseSettled) };
  }
  return null;
}
