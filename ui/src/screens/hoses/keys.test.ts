import { expect, it } from 'vitest';
import { deedOf } from './keys';

const press = (key: string, held: Partial<Record<'shiftKey' | 'ctrlKey' | 'metaKey', boolean>> = {}) =>
  deedOf({ key, shiftKey: false, ctrlKey: false, metaKey: false, ...held }, 5, 20, 8);

it.each([
  ['ArrowDown', { do: 'go', to: 6 }],
  ['ArrowUp', { do: 'go', to: 4 }],
  ['PageDown', { do: 'go', to: 13 }],
  ['PageUp', { do: 'go', to: 0 }],
  ['Home', { do: 'go', to: 0 }],
  ['End', { do: 'go', to: 19 }],
  [' ', { do: 'toggle' }],
  ['Enter', { do: 'open' }],
  ['Escape', { do: 'none' }],
  ['x', null],
])('%s', (key, deed) => expect(press(key)).toEqual(deed));

it('with shift chooses what lies between, with control all', () => {
  expect(press('ArrowDown', { shiftKey: true })).toEqual({ do: 'span', to: 6 });
  expect(press('End', { shiftKey: true })).toEqual({ do: 'span', to: 19 });
  expect(press('a', { ctrlKey: true })).toEqual({ do: 'all' });
  expect(press('a', { metaKey: true })).toEqual({ do: 'all' });
  expect(press('c', { ctrlKey: true })).toBeNull();
});

it('of an empty table goes nowhere', () => {
  expect(deedOf({ key: 'End', shiftKey: false, ctrlKey: false, metaKey: false }, 0, 0, 8)).toEqual({ do: 'go', to: 0 });
});
