import { afterEach, describe, expect, it, vi } from 'vitest';
import { byDigit, onKey, takesFocus } from './keyboard';

const press = (key: string, at: EventTarget = document.body, more: KeyboardEventInit = {}) => {
  const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more });
  at.dispatchEvent(event);
  return event;
};
const put = <E extends HTMLElement>(html: string): E => {
  document.body.innerHTML = html;
  return document.body.firstElementChild as E;
};
afterEach(() => (document.body.innerHTML = ''));

describe('a key of a screen', () => {
  it('is taken from the page, and never from what has the focus', () => {
    const act = vi.fn();
    const enter = onKey('Enter', act);
    addEventListener('keydown', enter);
    press('Enter', put('<button></button>'));
    press('Enter', put('<input>'));
    press('Enter', document.body, { repeat: true });
    press('Enter', document.body, { ctrlKey: true });
    expect(act).not.toHaveBeenCalled();
    expect(press('Enter').defaultPrevented).toBe(true);
    expect(act).toHaveBeenCalledOnce();
    removeEventListener('keydown', enter);
  });

  it('goes back from a field too, but a search that holds words is emptied first', () => {
    const act = vi.fn();
    const escape = onKey('Escape', act);
    addEventListener('keydown', escape);
    press('Escape', put('<input type="search" value="boom">'));
    expect(act).not.toHaveBeenCalled();
    press('Escape', put('<input>'));
    expect(act).toHaveBeenCalledOnce();
    removeEventListener('keydown', escape);
  });
});

it('digits press the buttons of a list, and are typed where a field has the focus', () => {
  const list = put<HTMLElement>('<ul><li><button>one</button></li><li><button>two</button></li></ul>');
  const picked = vi.fn();
  list.addEventListener('click', (event) => picked((event.target as HTMLElement).textContent));
  const off = byDigit(list) as () => void;
  press('2');
  press('3');
  const field = document.createElement('input');
  document.body.append(field);
  press('1', field);
  off();
  press('1');
  expect(picked.mock.calls).toEqual([['two']]);
});

it('what opens takes the focus from who works with keys, and from nobody else', () => {
  const opened = put<HTMLElement>('<main tabindex="0"></main>');
  dispatchEvent(new Event('pointerdown'));
  takesFocus(opened);
  expect(document.activeElement).toBe(document.body);
  press('Enter');
  takesFocus(opened);
  expect(document.activeElement).toBe(opened);
});
