import { expect, it } from 'vitest';
import { endWords } from './spec';

it('says an end by its family, size, half and form', () => {
  const words = (form: string) => endWords({ role: 'A', family: 'ORFS', size: '-10', gender: 'female', form });
  expect(words('elbow67.5')).toBe('ORFS \u221210, female, 67.5° elbow');
  expect(words('compact90')).toBe('ORFS \u221210, female, compact 90° elbow');
  expect(words('straight')).toBe('ORFS \u221210, female, straight');
});
