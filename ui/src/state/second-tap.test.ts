import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { guardSecondTaps } from './second-tap';

let now = 0;
let stop: () => void;
const taken = vi.fn();
/** What lies under the thumb. */
let here: HTMLButtonElement;

function put(text: string): void {
  here?.remove();
  here = document.createElement('button');
  here.textContent = text;
  here.addEventListener('click', () => taken(here.textContent));
  document.body.append(here);
}
function tap(x = 100, detail = 1): void {
  const click = new MouseEvent('click', { bubbles: true, cancelable: true, clientX: x, clientY: 100, detail });
  Object.defineProperty(click, 'timeStamp', { value: now });
  here.dispatchEvent(click);
}

beforeEach(() => {
  now = 0;
  taken.mockClear();
  document.elementFromPoint = () => here;
  stop = guardSecondTaps();
});
afterEach(() => stop());

it('lets a second tap fall on what came under the thumb, and takes the next one', () => {
  put('Tick: flushed and capped');
  tap();
  put('No rig');
  now = 200;
  tap(110);
  expect(taken.mock.calls).toEqual([['Tick: flushed and capped']]);
  now = 360;
  tap(110);
  expect(taken).toHaveBeenLastCalledWith('No rig');
});

it('lets it fall on the same arrow that now says the next step', () => {
  put('Tick: at proof pressure');
  tap();
  here.textContent = 'Tick: held';
  now = 100;
  tap();
  expect(taken).toHaveBeenCalledTimes(1);
});

it('takes a key typed twice, a tap elsewhere, and a key of the keyboard', () => {
  put('5');
  tap();
  now = 100;
  tap();
  expect(taken).toHaveBeenCalledTimes(2);
  put('6');
  tap(200);
  expect(taken).toHaveBeenCalledTimes(3);
  put('7');
  tap(200, 0);
  expect(taken).toHaveBeenCalledTimes(4);
});
