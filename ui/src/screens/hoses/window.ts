// Which rows of a long list are drawn: those in sight and a few around, however many there are.

/** A browser draws nothing higher than some 17 to 33 million px; a list that would be is scrolled in larger steps. */
const HIGHEST_PX = 15_000_000;
/** Rows drawn beyond either edge, so that a turn of the wheel shows no gap. */
const AROUND = 8;

export interface Seen {
  /** Height of what is scrolled over, in px. */
  height: number;
  /** The rows drawn: from the first up to, without, the last. */
  from: number;
  to: number;
  /** Where the first drawn row lies in what is scrolled over, in px. */
  top: number;
}

/** How many px of the list one px of scrolling stands for: 1 until the list is too high for a browser. */
function stretch(rows: number, row: number, view: number): number {
  const whole = rows * row;
  return whole <= HIGHEST_PX ? 1 : (whole - view) / (HIGHEST_PX - view);
}

/** What is drawn of so many rows of that height, scrolled so far, in a view of that height. */
export function seen(rows: number, row: number, view: number, scrolled: number): Seen {
  const times = stretch(rows, row, view);
  const at = scrolled * times;
  const from = Math.max(0, Math.floor(at / row) - AROUND);
  const to = Math.min(rows, Math.ceil((at + view) / row) + AROUND);
  return { height: Math.min(rows * row, HIGHEST_PX), from, to: Math.max(from, to), top: scrolled - (at - from * row) };
}

/** How far to scroll so that a row is wholly in sight, moving as little as possible. */
export function scrolledTo(index: number, rows: number, row: number, view: number, scrolled: number): number {
  const times = stretch(rows, row, view);
  const at = scrolled * times;
  const top = index * row;
  if (top < at) return top / times;
  if (top + row > at + view) return (top + row - view) / times;
  return scrolled;
}
