import { expect, it } from 'vitest';
import { parseDanger } from './danger';

it('says which nut starts on which male, and then what happens', () => {
  expect(
    parseDanger(
      'female 37 deg -10 nut starts on male 45 deg -10: same thread 7/8-14 UNF: full thread, overlap 1.96 mm, screws home by hand; cones differ 8 deg a side: line contact, leaks',
    ),
  ).toEqual({
    starts: 'Female 37 deg -10 nut starts on male 45 deg -10.',
    danger: 'Cones differ 8 deg a side: line contact, leaks.',
  });
});

it('tells a line whole that is written otherwise', () => {
  expect(parseDanger('blows off')).toEqual({ starts: '', danger: 'Blows off' });
});
