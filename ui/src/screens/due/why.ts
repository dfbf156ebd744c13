// What counts of a row that falls due, and why, in words. All figures are the register's.
import type { DueLine as Due } from '../../backend/types';
import { day } from '../../words/date';
import { number, percentFigure } from '../../words/number';
import { say, sayCode } from '../../words/words';
import { years } from '../machines/ages';

/** The clock that counts: what was found, hours, or the calendar. */
export function countsText(due: Due, on: string): string {
  if (due.seen) {
    const { name, seen_on } = due.seen;
    return say('due-row-finding', { name, day: day(seen_on) });
  }
  if (due.by === 'hours' && due.hours) {
    const { limit, run, per_day } = due.hours;
    return say('due-row-hours', {
      limit: number(limit, 0),
      known: run === null ? 'no' : 'yes',
      run: number(run ?? 0, 0),
      rated: per_day === null ? 'no' : 'yes',
      rate: number(per_day ?? 0, 1),
    });
  }
  if (due.what === 'asked') return say('due-row-asked');
  const from = say('due-row-from', { from: due.counted_from });
  return due.since ? `${say('due-years', { years: number(years(due.since, on), 1) })} ${from}` : from;
}

/** Whose limit it is held against. */
export function ruleText({ by, hours, rule, years: limit }: Due): string | null {
  if (by === 'hours' && hours) return say(hours.rule.stop ? 'policies-is-stop' : 'policies-is-caution');
  if (!rule || limit === null) return null;
  const values = { count: limit, years: number(limit, 1) };
  if (rule.whose === 'yours') return say('due-row-yours', { ...values, stop: rule.stop ? 'yes' : 'no' });
  return say('due-row-guide', values);
}

/** What the guides of these rows rest on, each once. */
export function guideSources(rows: readonly Due[]): string[] {
  const guides = rows.flatMap(({ rule }) => (rule?.whose === 'guide' ? [rule.source] : []));
  return [...new Set(guides)].sort();
}

/** Why hours do not count where the owner set a limit of hours: never said by silence. */
export function hoursWhyNot({ hours }: Due): string | null {
  return hours?.why_not ? sayCode(`due-hours-${hours.why_not}`) : null;
}

/**
 * Why it stands where it stands: the chance as a percentage, or the part of its limit that is used up, which is none,
 * times what a failure would do; and why that is so grave.
 */
export function riskText(due: Due): { figure: string; consequence: string } | null {
  if (!due.risk) return null;
  const { chance, from, consequence, why } = due.risk;
  return {
    figure: say('due-row-risk', {
      chance: say('due-row-chance', { from, part: percentFigure(chance) }),
      of: number(consequence, 0),
    }),
    consequence: say('due-row-consequence', {
      of: number(consequence, 0),
      why: why.map((one) => say(`due-stake-${one}`)).join(', '),
    }),
  };
}
