import { expect, it } from 'vitest';
import type { SignEntry } from '../../backend/types';
import { grouped, withGrade, withSign } from './signs';

const sign = (code: string, group: SignEntry['group'], grade: SignEntry['grade']) =>
  ({ code, group, grade }) as SignEntry;
const scuffed = sign('ABR-SCUFF', 'cover', 'caution');
const leak = sign('LEAK-HOSE', 'leak', 'stop');

it('groups stand in the order of the eye, without empty ones', () => {
  expect(grouped([leak, scuffed]).map(({ group }) => group)).toEqual(['cover', 'leak']);
});

it('a sign is taken with the grade of its table and let go again; then nothing is answered', () => {
  const one = withSign(null, scuffed);
  expect(one).toEqual([{ sign: 'ABR-SCUFF', grade: 'caution' }]);
  expect(withSign(one, leak)).toEqual([...(one ?? []), { sign: 'LEAK-HOSE', grade: 'stop' }]);
  expect(withSign(one, scuffed)).toBeNull();
  expect(withSign([], leak)).toEqual([{ sign: 'LEAK-HOSE', grade: 'stop' }]);
});

it('may be made graver and never lighter than the table has it', () => {
  expect(withGrade(withSign(null, scuffed), scuffed, 'stop')).toEqual([{ sign: 'ABR-SCUFF', grade: 'stop' }]);
  expect(withGrade(withSign(null, leak), leak, 'caution')).toEqual([{ sign: 'LEAK-HOSE', grade: 'stop' }]);
  expect(withGrade(withSign(null, scuffed), scuffed, 'pass')).toEqual([{ sign: 'ABR-SCUFF', grade: 'caution' }]);
});
