import { expect, it } from 'vitest';
import { happens, parseDanger } from './danger';

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

it('says in a few words what happens', () => {
  expect(happens('female BSPT 3/4 port starts on male NPT 3/4: diameters differ 0.23 mm: weeps along the flanks')).toBe(
    'Weeps along the flanks.',
  );
  expect(happens('blows off')).toBe('Blows off');
});
