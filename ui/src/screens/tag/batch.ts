/** The day so many days after another, as the register writes days. */
export function dayIn(from: string, days: number): string {
  return new Date(Date.parse(`${from}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 'yyyy-mm-dd'.length);
}
