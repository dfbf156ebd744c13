// How long hoses last, for drawing. Curves, bounds and what is too little to tell come from the register.
import type { Group, Life, LivesOf } from '../../backend/types';
import type { CurveStep } from '../../drawings/curve';
import { number } from '../../words/number';
import { lineWords } from '../../words/spec';
import { say } from '../../words/words';

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
    default:
      return say('due-life-not-known');
  }
}

/** How many, and how many of them failed. */
export function groupCount({ life }: LivesOf): string {
  return say('due-life-count', { count: life.n, shown: number(life.n, 0), failed: number(life.failures, 0) });
}

/** A span of years with its bounds; one that the history does not set is open. */
export function span(years: number, [low, high]: readonly (number | null)[]): string {
  const side = (bound: number | null | undefined) => (bound == null ? '?' : number(bound, 1));
  return say('due-life-span', { years: number(years, 1), low: side(low), high: side(high) });
}
