const KEY = 'hosewright-px-per-mm';
/** CSS pixels a millimetre on most phones; at the desk a CSS pixel is meant to be 1/96 inch (CSS Values 4). */
const PHONE = 6;
const DESK = 96 / 25.4;
/** Wider than any screen's: what lies outside was not kept by us. */
const RANGE = [2, 15] as const;

/** How large this screen draws a millimetre, kept from run to run. It is the screen's, so it stays out of the register. */
export class Scale {
  /** As it was set with a card; null until then. */
  kept: number | null = $state(read());

  /** CSS pixels a millimetre: set, or what is usual for such a screen. */
  get pxPerMm(): number {
    return this.kept ?? (matchMedia('(pointer: coarse)').matches ? PHONE : DESK);
  }

  set(pxPerMm: number): void {
    this.kept = pxPerMm;
    localStorage.setItem(KEY, String(pxPerMm));
  }
}

function read(): number | null {
  const kept = Number(localStorage.getItem(KEY) ?? Number.NaN);
  return kept >= RANGE[0] && kept <= RANGE[1] ? kept : null;
}
