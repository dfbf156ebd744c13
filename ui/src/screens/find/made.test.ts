import { expect, it } from 'vitest';
import type { Made } from '../../backend/types';
import { madeText } from './made';

/** As it comes: what the print does not name is left out. */
const when = (year: number, part: Partial<Made> = {}) => ({ year, ...part }) as Made;

it('says when a hose was made, and how else its date can be read', () => {
  const said = (made: Made | null, ...made_or: Made[]) => madeText({ made, made_or });
  expect(said(when(2019, { quarter: 3 }), when(2009, { quarter: 3 }))).toBe('made 3rd quarter 2019, or 2009');
  expect(said(when(2024, { month: 12 }), when(2024, { week: 12 }))).toBe('made December 2024, or week 12 of 2024');
  expect(said(when(2007, { quarter: 4 }))).toBe('made 4th quarter 2007');
  expect(said(when(2018))).toBe('made 2018');
  expect(said(null)).toBe('');
});
