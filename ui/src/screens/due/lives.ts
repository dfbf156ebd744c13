// How long hoses last, for drawing. Curves, bounds and what is too little to tell come from the register.
import type { Question } from '../../backend';
import type { Group, LeastCost, Life, LivesBy, LivesOf, PlaceLives } from '../../backend/types';
import type { CurveStep } from '../../drawings/curve';
import { counted, number } from '../../words/number';
import { lineWords } from '../../words/spec';
import { say } from '../../words/words';
import type { Fact } from '../parts/FactList.svelte';

/** Years as they are written: what they are counted by. */
const tenths = (years: number): number => Math.round(years * 10) / 10;

/** What hoses are put together by, in the order it is offered. */
export const BY = ['hose', 'line', 'load', 'machine', 'place'] as const satisfies readonly LivesBy[];

/** What only the owner knows, in one money. */
export interface Costs {
  failure: number;
  planned: number;
}

/** Two amounts as they were typed; none where they are none, or the failure is not the dearer one. */
export function costsOf(failure: string, planned: string): Costs | null {
  const [dear, cheap] = [failure, planned].map((text) => Number(text.trim().replace(',', '.'))) as [number, number];
  return cheap > 0 && dear > cheap && Number.isFinite(dear) ? { failure: dear, planned: cheap } : null;
}

/** What is asked of the register. */
export function livesQuestion(by: LivesBy, since: string, costs: Costs | null): Question<'register.life'> {
  return {
    by,
    ...(since && { since }),
    ...(costs && { failure_cost: costs.failure, planned_cost: costs.planned }),
  };
}

/** The steps of a curve with its bounds; where nothing is left they reach from nought to what they were. */
export function lifeSteps({ survival, survival_ci95 }: Life): CurveStep[] {
  let high = 1;
  return survival.map(([years, left], index) => {
    const bounds = survival_ci95[index];
    high = bounds?.[1] ?? high;
    return { years, left, low: bounds?.[0] ?? 0, high };
  });
}

/** Those of which something can be told, and those that are too few. */
export function parted(groups: readonly LivesOf[]): { told: LivesOf[]; few: LivesOf[] } {
  return {
    told: groups.filter(({ life }) => life.unfitted === null),
    few: groups.filter(({ life }) => life.unfitted !== null),
  };
}

/** Where the scale of all curves ends: whole even years. */
export function lifeEnd(groups: readonly LivesOf[]): number {
  return Math.max(2, Math.ceil(Math.max(0, ...groups.map(({ longest }) => longest)) / 2) * 2);
}

/** Which hoses, in words. */
export function groupName(of: Group): string {
  switch (of.by) {
    case 'hose':
      return `${of.standard} ${of.type}`;
    case 'line':
      return lineWords(of.line);
    case 'load':
      return say(`due-life-load-${of.load}`);
    case 'machine':
      return of.kind;
    case 'place':
      return `${of.name}, ${of.kind}`;
    default:
      return say('due-life-not-known');
  }
}

/** How many, and how many of them failed. */
export function groupCount({ life }: LivesOf): string {
  return say('due-life-count', { ...counted(life.n), failed: number(life.failures, 0) });
}

/** A span of years with its bounds; one that the history does not set is open. */
export function span(years: number, [low, high]: readonly (number | null)[]): string {
  return say('due-life-span', { years: number(years, 1), count: tenths(years), low: side(low), high: side(high) });
}

const side = (bound: number | null | undefined, digits = 1) => (bound == null ? '?' : number(bound, digits));

/** What the fit says, each with its bounds. */
export function lifeFacts({ life, expected }: LivesOf): Fact[] {
  const facts: Fact[] = [];
  if (life.b10 !== null) facts.push({ what: say('due-life-b10'), says: span(life.b10, life.b10_ci95) });
  if (life.shape !== null) {
    const [low, high] = life.shape_ci95.map((bound) => side(bound));
    const says = { shape: number(life.shape, 1), low: low ?? '?', high: high ?? '?', wears: life.wear };
    facts.push({ what: say('due-life-shape'), says: say('due-life-shape-says', says) });
  }
  if (expected) {
    const { failures, ci95 } = expected;
    const says = { failures: number(failures, 1), low: number(ci95[0], 0), high: number(ci95[1], 0) };
    facts.push({ what: say('due-life-next'), says: say('due-life-next-says', says) });
  }
  return facts;
}

/** When it costs least to replace, and what is nearly as good. */
export function costFacts({ age, age_ci95, near }: LeastCost): Fact[] {
  if (age === null) return [];
  const facts = [{ what: say('due-life-least'), says: span(age, age_ci95) }];
  if (near) {
    const [low, high] = near;
    const says =
      high == null
        ? say('due-life-least-from', { low: side(low) })
        : say('due-life-least-range', { low: side(low), high: side(high) });
    facts.push({ what: say('due-life-least-near'), says });
  }
  return facts;
}

/** When each kind costs least to replace, where costs were given. */
export function leastFacts(groups: readonly LivesOf[]): Fact[] {
  return groups.flatMap(({ of, least_cost: cost }) => {
    if (!cost) return [];
    return { what: groupName(of), says: costFacts(cost)[0]?.says ?? say('due-life-waiting') };
  });
}

/** How many failures more it takes to tell, and how long that may be. */
export function toTell({ life, years_to_tell }: LivesOf): string {
  const { more } = life.to_tell;
  const take = say('due-life-take', { more, shown: number(more, 0) });
  if (years_to_tell === null) return take;
  return `${take} ${say('due-life-take-years', { years: number(years_to_tell, 1), count: tenths(years_to_tell) })}`;
}

/** A place as people name it. */
export function placeTitle({ at }: PlaceLives): string {
  return [at.site_name, at.machine_name, at.place_name].filter(Boolean).join(', ');
}

/** What was seen there for what was expected, and whether that may be chance. */
export function placeNote({ excess, stands_out }: PlaceLives): string {
  const [low, high] = excess.ratio_ci95;
  const says = say('due-life-place-says', {
    seen: number(excess.seen, 0),
    expected: number(excess.expected, 1),
    ratio: number(excess.ratio, 1),
    low: number(low, 1),
    high: number(high, 1),
  });
  return `${says} ${say(stands_out ? 'due-life-place-out' : 'due-life-place-chance')}`;
}
