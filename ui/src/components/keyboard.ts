// A keyboard at the desk: which keys a screen may take for itself, and what has the focus when a question opens.
import type { Attachment } from 'svelte/attachments';

/** Whether the last thing a person touched was a key. */
let last: 'key' | 'pointer' = 'pointer';
if (typeof window !== 'undefined') {
  addEventListener('keydown', () => (last = 'key'), true);
  addEventListener('pointerdown', () => (last = 'pointer'), true);
}

const isField = (target: EventTarget | null): target is HTMLInputElement | HTMLTextAreaElement =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;

/** Whether a key belongs to what has the focus, or to the program around: a field takes what is typed, a button its Enter and space. */
export function taken(event: KeyboardEvent): boolean {
  const { key, target } = event;
  if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return true;
  // A search that holds words is emptied first.
  if (key === 'Escape') return target instanceof HTMLInputElement && target.type === 'search' && target.value !== '';
  return isField(target) || (target instanceof HTMLButtonElement && (key === 'Enter' || key === ' '));
}

/** Takes one key, wherever the focus is, unless it belongs to what has the focus. A key that is held down counts once. */
export function onKey(wanted: string, act: () => void): (event: KeyboardEvent) => void {
  return (event) => {
    if (event.key !== wanted || event.repeat || taken(event)) return;
    event.preventDefault();
    act();
  };
}

/** The digits 1 to 9 press the first nine buttons of a list. */
export const byDigit: Attachment<HTMLElement> = (list) => {
  const press = (event: KeyboardEvent) => {
    if (!/^[1-9]$/.test(event.key) || event.repeat || taken(event)) return;
    const button = list.querySelectorAll('button')[Number(event.key) - 1];
    if (!button) return;
    event.preventDefault();
    button.click();
  };
  addEventListener('keydown', press);
  return () => removeEventListener('keydown', press);
};

/** Whoever works with keys goes on in what just opened, where the focus was lost with what closed. */
export const takesFocus: Attachment<HTMLElement> = (opened) => {
  if (last === 'key' && document.activeElement === document.body) {
    // It was put there by no one: the ring would say that something was picked.
    opened.classList.add('lent');
    opened.addEventListener('blur', () => opened.classList.remove('lent'), { once: true });
    opened.focus({ preventScroll: true });
  }
};
