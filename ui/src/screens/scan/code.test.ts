import { expect, it } from 'vitest';
import { beginnings, fits, grouped, isWhole, letter, letters } from './code';

it('takes I and L for one and O for nought, and no letter that a code lacks', () => {
  expect([...'iLo7z?'].map(letter)).toEqual(['1', '1', '0', '7', 'Z', '?']);
  expect([...'Uu- .é'].map(letter)).toEqual([null, null, null, null, null, null]);
});

it('takes a pasted code with its dashes and no more than a code has', () => {
  expect(letters(' 7kq4m-2xr9d-d and more')).toBe('7KQ4M2XR9DD');
});

it('looks for what stands before a gap in each group', () => {
  expect(beginnings('7KQ4M2XR??')).toBe('7KQ4M 2XR');
  expect(beginnings('?KQ4M2XR9D')).toBe('2XR9D');
  expect(beginnings('7K')).toBeNull();
});

it('holds a code to the letters that stand', () => {
  expect(fits('7KQ4M2X?9', '7KQ4M-2XR9D-D')).toBe(true);
  expect(fits('7KQ4M2XS', '7KQ4M-2XR9D-D')).toBe(false);
});

it('is whole only with every letter', () => {
  expect(isWhole('7KQ4M2XR9DD')).toBe(true);
  expect(isWhole('7KQ4M2XR9D?')).toBe(false);
  expect(grouped('7KQ4M2XR')).toBe('7KQ4M-2XR');
});
