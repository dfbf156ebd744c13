import { describe, expect, it } from 'vitest';
import type { EndCandidate, EndEntry, HalfEntry, Tables } from '../../backend/types';
import { readingName, told } from './why';

const half = (gender: HalfEntry['gender'], low: number, high: number): HalfEntry =>
  ({ gender, cone: null, dimensions: { thread_diameter_mm: [low, high] } }) as unknown as HalfEntry;
const row = (family: string, size: string, more: Partial<EndEntry>): EndEntry =>
  ({ family, size, seals: ['cone'], taper: false, thread: '7/8-14 UNF', tpi: 14, halves: [], ...more }) as EndEntry;
const tables = {
  ends: [
    row('JIC 37 flare', '-10', { halves: [half('female', 20.3, 20.6), half('male', 21.9, 22.2)] }),
    row('BSPP 60 cone', '5/8', { halves: [half('female', 20.6, 21.1), half('male', 22.7, 22.9)] }),
    row('Metric 24 cone', '22', { tpi: undefined, pitch_mm: 1.5 } as Partial<EndEntry>),
  ],
  flanges: [],
  hoses: [],
} as unknown as Tables;
const end = (family: string, size: string): EndCandidate => ({
  family,
  size,
  standard: '',
  dash: null,
  thread: null,
  gender: 'female',
  probability: 0.5,
  also: [],
});
const pair = [end('JIC 37 flare', '-10'), end('BSPP 60 cone', '5/8')] as const;
const readings = {
  ends: [{ role: 'A' as const, gender: 'female' as const, thread_diameter_mm: '13/16 in', tpi: 14 }],
  mates: [{ role: 'A' as const, gender: 'male' as const, thread_diameter_mm: '22.1 mm' }],
};

describe('what stands behind a reading', () => {
  it('is what was read, beside what the rows of both give', () => {
    expect(told(readings, tables, pair, 'A', 'thread_diameter_mm')).toEqual([
      { what: 'Thread Ø, inside', read: '13/16\u00a0in', table: '20.3–20.6\u00a0mm', rival: '20.6–21.1\u00a0mm' },
    ]);
  });

  it('of the machine’s half is all that was read there, held against the other half of the row', () => {
    const lines = told(readings, tables, pair, 'A', 'mate');
    expect(lines.map(({ what, read }) => `${what} ${read}`)).toEqual([
      'Which half Male',
      'Thread Ø, outside 22.1\u00a0mm',
    ]);
    expect(lines[1]?.table).toBe('21.9–22.2\u00a0mm');
  });

  it('gives a gauge in threads an inch where the row is named so, else as a pitch', () => {
    const of = (one: EndCandidate) => told(readings, tables, [one, null], 'A', 'pitch_mm')[0];
    expect(of(pair[0])).toMatchObject({ read: '14 /in', table: '14 /in', rival: '' });
    expect(of(end('Metric 24 cone', '22'))?.table).toBe('1.5\u00a0mm');
  });

  it('leaves blank what the tables do not give', () => {
    expect(told(readings, tables, [end('unheard of', '1'), pair[1]], 'A', 'thread_diameter_mm')[0]).toMatchObject({
      table: '',
      rival: '20.6–21.1\u00a0mm',
    });
  });

  it('has a name for every reading, the machine’s half among them', () => {
    expect(readingName(readings, 'A', 'mate')).toBe('The machine’s half');
    expect(readingName(readings, 'A', 'thread_diameter_mm')).toBe('Thread Ø, inside');
    expect(readingName(readings, 'hose', 'print')).toBe('Print on the cover');
  });
});
