// When a hose was made, as its print says; a date code that can be read in several ways is told with all of them.
import type { Made, Printed } from '../../backend/types';
import { month } from '../../words/date';
import { number } from '../../words/number';
import { say } from '../../words/words';

/** `made 3rd quarter 2019, or 2009`; empty where the print names no date. */
export function madeText({ made, made_or }: Pick<Printed, 'made' | 'made_or'>): string {
  if (!made) return '';
  const when = whenText(made);
  const others = made_or.map((other) => (isSamePart(made, other) ? yearText(other) : whenText(other)));
  return others.length > 0
    ? say('find-print-made-or', { when, other: others.join(', ') })
    : say('find-print-made', { when });
}

/** The part of the year that is named; what is not named may be left out of the answer. */
const partOf = ({ quarter, month, week }: Made) => [quarter ?? null, month ?? null, week ?? null] as const;

/** Whether two readings differ in nothing but the year. */
const isSamePart = (one: Made, other: Made): boolean => partOf(one).join() === partOf(other).join();

const yearText = ({ year }: Made): string => number(year, 0);

function whenText(made: Made): string {
  const year = yearText(made);
  const [quarter, of, week] = partOf(made);
  if (quarter !== null) return say('find-made-quarter', { quarter, year });
  if (of !== null) return month(made.year, of);
  return week === null ? year : say('find-made-week', { week: number(week, 0), year });
}
