// The labels that a user has, in the order they are offered.
import type { LabelStock } from '../../backend/types';

/** What a new one begins as: the size and printer that labels for hoses are commonly sold in (common practice). */
export function newStock(): LabelStock {
  return { name: '', width_mm: 60, height_mm: 40, dpi: 203, material: 'polyester', form: 'flag' };
}

/** With the one at that place as it is now; past the end it is a new one. */
export function kept(stocks: readonly LabelStock[], at: number, stock: LabelStock): LabelStock[] {
  const named = { ...stock, name: stock.name.trim() };
  return at < stocks.length ? stocks.map((one, index) => (index === at ? named : one)) : [...stocks, named];
}

/** With the one at that place offered first. */
export function first(stocks: readonly LabelStock[], at: number): LabelStock[] {
  return [...stocks.filter((_, index) => index === at), ...stocks.filter((_, index) => index !== at)];
}

export function without(stocks: readonly LabelStock[], at: number): LabelStock[] {
  return stocks.filter((_, index) => index !== at);
}

/** Whether another one has that name already: a label is chosen by its name. */
export function doubled(stocks: readonly LabelStock[], at: number, name: string): boolean {
  return stocks.some((one, index) => index !== at && one.name === name.trim());
}
