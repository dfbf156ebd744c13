/** Where the one limit line stands, as a share of a row's width. */
export const LIMIT_AT = 0.78;
/** The last tenth before a limit is a caution. */
export const NEAR = 0.9;

/** How far an arrow goes, as a share of the way to the limit; a least value is turned over. */
export function reachOf(value: number, limit: number, least: boolean): number {
  if (least) return value > 0 ? limit / value : Infinity;
  return limit > 0 ? value / limit : value > 0 ? Infinity : 0;
}
