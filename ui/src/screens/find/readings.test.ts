import { describe, expect, it } from 'vitest';
import { emptyJob } from '../../state/job-doc';
import { countOf, draftOf, erase, isFlange, isWhole, keep, mmOf, picked, question } from './readings';

const inch = (typed: string) => ({ unit: 'in', typed: { in: typed } });
const mm = (typed: string) => ({ unit: 'mm', typed: { mm: typed } });

describe('readings of a job', () => {
  it('keeps a fraction in the trade’s writing, so that its step goes along as its error', () => {
    const { readings } = emptyJob();
    keep(readings, 'A', 'thread_diameter_mm', inch('1+1/16'));
    expect(readings.ends).toEqual([{ role: 'A', thread_diameter_mm: '1 1/16 in' }]);
    expect(draftOf(readings, 'A', 'thread_diameter_mm')).toEqual(inch('1+1/16'));
  });

  it('keeps each part apart, and the machine’s half from the end', () => {
    const { readings } = emptyJob();
    keep(readings, 'B', 'gender', picked('female'));
    keep(readings, 'mate-B', 'gender', picked('male'));
    keep(readings, 'hose', 'layers', picked('2'));
    expect(readings.ends).toEqual([{ role: 'B', gender: 'female' }]);
    expect(readings.mates).toEqual([{ role: 'B', gender: 'male' }]);
    expect(readings.hose).toEqual({ layers: 2 });
    expect([countOf(readings, 'A'), countOf(readings, 'B'), countOf(readings, 'hose')]).toEqual([0, 1, 1]);
  });

  it('writes a gauge leaf as threads an inch or as a pitch, never both', () => {
    const { readings } = emptyJob();
    keep(readings, 'A', 'pitch_mm', inch('14'));
    expect(readings.ends[0]).toEqual({ role: 'A', tpi: 14 });
    keep(readings, 'A', 'pitch_mm', mm('1.5'));
    expect(readings.ends[0]).toEqual({ role: 'A', pitch_mm: '1.5 mm' });
    expect(draftOf(readings, 'A', 'pitch_mm')).toEqual(mm('1.5'));
  });

  it('asks with what is half typed only once it stands as a number', () => {
    const { readings } = emptyJob();
    const asked = (typed: string) =>
      question(readings, { half: 'A', key: 'swivel_hex_mm', draft: inch(typed) }).ends[0]?.swivel_hex_mm;
    expect(asked('1+')).toBeUndefined();
    expect(asked('1+1/8')).toBe('1 1/8 in');
    expect(readings.ends).toEqual([]);
    expect(isWhole('swivel_hex_mm', mm('0.'))).toBe(false);
  });

  it('leaves nothing of a part whose last reading is taken back', () => {
    const { readings } = emptyJob();
    keep(readings, 'A', 'taper', picked('yes'));
    expect(readings.ends[0]?.taper).toBe(true);
    erase(readings, 'A', 'taper');
    expect(readings.ends).toEqual([]);
  });

  it('reads numbers as they stand in a document that came from elsewhere', () => {
    const readings = { ends: [{ role: 'A' as const, head_od_mm: 38.1, tpi: 14 }], mates: [], overall_length_mm: 1240 };
    expect(mmOf('head_od_mm', draftOf(readings, 'A', 'head_od_mm'))).toBe(38.1);
    expect(draftOf(readings, 'A', 'pitch_mm')).toEqual(inch('14'));
    expect(mmOf('overall_length_mm', draftOf(readings, 'hose', 'overall_length_mm'))).toBe(1240);
    expect(isFlange(readings, 'A')).toBe(true);
  });
});
