import { expect, it } from 'vitest';
import type { Place, Versioned } from '../../backend/types';
import { saidOf, toggled, withSaid } from './stakes';

const place = {
  place: 'p',
  machine: 'm',
  number: 14,
  name: 'Stick',
  service: { duties: [] },
  version: 'a/1',
} as unknown as Versioned<Place>;

it('nobody looked is not the same as none of them', () => {
  expect(saidOf(place).stakes).toBeNull();
  expect(toggled(null, 'hot-surface')).toEqual(['hot-surface']);
  expect(toggled(['hot-surface'], 'hot-surface')).toEqual([]);
});

it('is written with the rest of the place as it stands, over the version that was seen', () => {
  const said = { demand: 'harsh' as const, stakes: ['someone-beside' as const], consequence: 5 };
  expect(withSaid(place, said)).toMatchObject({
    body: { kind: 'place-set', place: 'p', number: 14, name: 'Stick', ...said },
    builds_on: ['a/1'],
  });
});
