/** Where the one limit line stands, as a share of a row's width. */
export const LIMIT_AT = 0.78;
/** The last tenth before a limit is a caution. */
export const NEAR = 0.9;

/** How far an arrow goes, as a share of the way to the limit: beyond it a most is overstepped and a least is kept. */
export function reachOf(value: number, limit: number): number {
  return limit > 0 ? value / limit : value > 0 ? Infinity : 0;
}
