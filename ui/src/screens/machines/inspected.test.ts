import { expect, it } from 'vitest';
import type { Written } from '../../backend/types';
import { saidBy } from './history';
import { inspected, type Seen } from './inspected';

const worn = [{ sign: 'ABR', grade: 'caution' as const }];
const seen: Seen = { code: 'AAAAA-AAAAA-0', date: '2026-11-26', findings: worn, words: '' };
const names = { place: () => '', cause: () => 'abrasion' };
const said = (over: Partial<Seen>) =>
  inspected({ ...seen, ...over }).map(({ body }) => saidBy({ body } as unknown as Written, names));

it('an inspection is kept with what was seen, and says it again in its history', () => {
  expect(said({})).toEqual(['Inspected 26 Nov 2026\u00a0· abrasion, to watch']);
});

it('nothing found is said as such, never left blank', () => {
  expect(said({ findings: [] })).toEqual(['Inspected 26 Nov 2026\u00a0· nothing found']);
});

it('what a person says of it stands beside it as a remark', () => {
  expect(said({ words: ' rubs at the clamp ' })[1]).toBe('Note: rubs at the clamp');
});
