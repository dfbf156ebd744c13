import { expect, it } from 'vitest';
import type { Contradiction, Told } from '../../backend/types';
import { placeAt } from '../place.fixture';
import { aboutWords, settledAt, toldWords } from './contradictions';

const told = (kind: string, by: string | null, hose: string | null = null): Told => ({
  kind,
  device: 'ab12cd34ef',
  by,
  hose,
  says: null,
});
const one = (more: Partial<Contradiction>): Contradiction => ({
  hose: null,
  at: null,
  machine: null,
  name: null,
  told: [],
  ...more,
});

it('names a contradiction by the hose, the place or the machine, and leads there', () => {
  expect(aboutWords(one({ hose: '7KQ4M-2XR9D-D' }))).toBe('7KQ4M-2XR9D-D');
  expect(settledAt(one({ hose: '7KQ4M-2XR9D-D' }))).toEqual({ at: 'hose', code: '7KQ4M-2XR9D-D' });
  expect(aboutWords(one({ at: placeAt }))).toBe('Excavator 3 \u00b7 14 \u00b7 Stick cylinder');
  expect(settledAt(one({ at: placeAt }))).toEqual({ at: 'place', place: 'p' });
  expect(settledAt(one({ machine: 'm', name: 'Excavator 3' }))).toEqual({ at: 'machine', machine: 'm' });
  expect(settledAt(one({ name: 'North yard' }))).toBeNull();
});

it('says the kind of each event and who wrote it, never an id alone', () => {
  const off = one({ hose: 'A', told: [told('taken-off', 'Van 1', 'A'), told('fitted', null, 'A')] });
  expect(toldWords(off).replace(/[\u2068\u2069]/g, '')).toBe(
    'taken off (Van 1); fitted (device without a name (ab12cd34))',
  );
  const place = one({ at: placeAt, told: [told('fitted', 'Van 1', 'A'), told('fitted', 'Van 2', 'B')] });
  expect(toldWords(place).replace(/[\u2068\u2069]/g, '')).toBe('A fitted (Van 1); B fitted (Van 2)');
});
