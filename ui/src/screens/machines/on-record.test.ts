import { expect, it } from 'vitest';
import type { Place, TagContent, Versioned } from '../../backend/types';
import { onRecord } from './on-record';

const place = {
  place: 'p1',
  version: 'd/1',
  spec: { ends: [] },
  service: { relief_bar: 204, duties: [] },
} as unknown as Versioned<Place>;
const tag = { code: 'AAAAA-AAAAA-0', spec: { ends: [] }, pressure_bar: 206, catalogue: 't' } as unknown as TagContent;
const found = { place, tag, assembled: null, fitted: null, today: '2026-11-26', program: 'p' };

it('a hose of which no day is known was found there today, made elsewhere and not proved', () => {
  const [made, fitted] = onRecord(found).map(({ body }) => body);
  expect(made).toMatchObject({ pressure_bar: 206, assembled: null, proof: { why: 'made-elsewhere' } });
  expect(made).not.toHaveProperty('verdict');
  expect(fitted).toMatchObject({ place: 'p1', date: '2026-11-26', already_there: true });
});

it('a day that is known is kept as such', () => {
  const [made, fitted] = onRecord({ ...found, assembled: '2024-01-02', fitted: '2024-02-03' }).map(({ body }) => body);
  expect(made).toMatchObject({ assembled: '2024-01-02', service: { relief_bar: 204 } });
  expect(fitted).toMatchObject({ date: '2024-02-03', already_there: false });
});

it('what belongs at a place that does not say it is what was found there', () => {
  const [belongs] = onRecord({ ...found, place: { ...place, spec: null } });
  expect(belongs).toMatchObject({ body: { kind: 'place-set', spec: tag.spec }, builds_on: ['d/1'] });
  expect(belongs?.body).not.toHaveProperty('version');
});
