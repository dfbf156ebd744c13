// A thumb in a glove often taps twice. Where the first tap changed what lies under it, the second was never meant for
// what came: it is let fall, here, for the whole program.

/** How long after a tap, by the time that each was made: a slow device handles the second one later. */
const DEAD_MS = 350;
/** How far a second tap of the same thumb lands from the first, in px: about half a button. */
const REACH_PX = 40;

interface Tap {
  at: number;
  x: number;
  y: number;
  control: Element | null;
  text: string;
}

const CONTROL = 'button, a, input, label, textarea';
const controlAt = (x: number, y: number) => document.elementFromPoint(x, y)?.closest(CONTROL) ?? null;

/** Lets second taps fall where the first changed what lies there. Answers how to stop. */
export function guardSecondTaps(): () => void {
  let last: Tap | null = null;

  function guard(event: MouseEvent): void {
    // A key press or a program clicks without a place.
    if (event.detail === 0) return;
    const { clientX: x, clientY: y, timeStamp: at } = event;
    const control = event.target instanceof Element ? event.target.closest(CONTROL) : null;
    const second =
      last !== null && at - last.at < DEAD_MS && Math.hypot(x - last.x, y - last.y) < REACH_PX ? last : null;
    if (second && changed(second)) {
      event.preventDefault();
      event.stopImmediatePropagation();
      return;
    }
    last = { at, x, y, control, text: control?.textContent ?? '' };
  }

  addEventListener('click', guard, true);
  return () => removeEventListener('click', guard, true);
}

/** Whether something else lies now where a tap was: another control, or the same that says another thing. */
function changed({ x, y, control, text }: Tap): boolean {
  const here = controlAt(x, y);
  return here !== control || (here?.textContent ?? '') !== text;
}
