// Figures that are shown rounded and add up as they stand.

/** Away from nought, as figures are written. */
const rounded = (value: number) => Math.sign(value) * Math.round(Math.abs(value));

/** Each rounded, so that together they come to their rounded sum: what rounding left over goes where it left most. */
export function addingUp(values: readonly number[], decimals: number): number[] {
  const units = values.map((value) => value * 10 ** decimals);
  const shown = units.map(rounded);
  const sum = (of: readonly number[]) => of.reduce((total, one) => total + one, 0);
  const over = rounded(sum(units)) - sum(shown);
  const left = (index: number) => ((units[index] ?? 0) - (shown[index] ?? 0)) * Math.sign(over);
  const most = [...units.keys()].sort((one, other) => left(other) - left(one)).slice(0, Math.abs(over));
  return shown.map((one, index) => (one + (most.includes(index) ? Math.sign(over) : 0)) / 10 ** decimals);
}
