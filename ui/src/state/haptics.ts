// What a thumb in a glove feels of what it did, on a device that can shake; anywhere else nothing happens.

/** A key that was taken, one that was not, a step that was ticked: each is told from the others without a look. */
export type Felt = 'taken' | 'refused' | 'ticked';

/** Milliseconds of shaking and rest by turns. */
const PATTERNS: Record<Felt, number[]> = { taken: [12], refused: [30, 60, 30], ticked: [45] };

/** Lets it be felt, unless the device was told that little should move. */
export function feel(what: Felt): void {
  if (!('vibrate' in navigator) || matchMedia('(prefers-reduced-motion: reduce)').matches) return;
  navigator.vibrate(PATTERNS[what]);
}
