import { expect, it } from 'vitest';
import type { EndEntry, Tables } from '../../backend/types';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import type { Key } from './keys';
import { otherHalf } from './other-half';
import type { Session } from './session.svelte';
import { draftOf } from './readings';

const row = {
  family: 'JIC 37 flare',
  size: '-10',
  halves: [
    { gender: 'female', dimensions: { thread_diameter_mm: [20.26, 20.67] } },
    { gender: 'male', dimensions: { thread_diameter_mm: [21.95, 22.19] } },
  ],
} as unknown as EndEntry;
const tables = { ends: [row], flanges: [], hoses: [] } as unknown as Tables;

/** A female end that reads so much; its likeliest is that row. */
function asked(mm: number, more: Partial<JobDoc['readings']> = {}) {
  const doc = emptyJob();
  doc.readings = { ends: [{ role: 'A', gender: 'female', thread_diameter_mm: mm }], mates: [], ...more };
  const candidates = [{ family: 'JIC 37 flare', size: '-10', gender: 'female' }];
  const listed: Key[] = ['gender', 'thread_diameter_mm'];
  return otherHalf({ half: 'A', doc, candidates, listed, caliper: () => 0.1 } as unknown as Session, tables);
}

it('a nut that reads as its male does is asked about, and only that', () => {
  expect(asked(22.1)).toMatchObject({ key: 'thread_diameter_mm', to: 'mate-A' });
  expect(asked(20.5), 'as a nut reads').toBeNull();
  expect(asked(20.9), 'a nut that is worn').toBeNull();
  expect(asked(24), 'as neither half reads').toBeNull();
});

it('nothing is asked where the machine’s half was read itself', () => {
  const mates = [{ role: 'A' as const, thread_diameter_mm: 22.1 }];
  expect(draftOf({ ends: [], mates }, 'mate-A', 'thread_diameter_mm')).not.toBeNull();
  expect(asked(22.1, { mates })).toBeNull();
});
