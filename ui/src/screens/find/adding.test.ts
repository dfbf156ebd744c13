import { expect, it } from 'vitest';
import { addingUp } from './adding';

it('figures come to their sum as they stand, and what says nothing goes on saying nothing', () => {
  expect(addingUp([4.36, -0.51], 1)).toEqual([4.4, -0.5]);
  expect(addingUp([4.36, -0.53], 1)).toEqual([4.3, -0.5]);
  expect(addingUp([4.44, 0, 4.44], 1)).toEqual([4.5, 0, 4.4]);
  expect(addingUp([-4.28, 0.01, 1], 1)).toEqual([-4.3, 0, 1]);
  expect(addingUp([], 1)).toEqual([]);
});
