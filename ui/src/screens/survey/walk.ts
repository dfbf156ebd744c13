// A machine looked over in place, one place after the other: what is written of each, and how far it has come.
import type { Answer, Question } from '../../backend';
import type { Graded, Surveyed } from '../../backend/types';
import { inspected } from '../machines/inspected';

export type Stop = Answer<'register.survey'>['places'][number];
/** How a place was found: its hose was looked at in place, none was there, or nobody got to it. */
export type Found = Exclude<Surveyed['state'], 'opened'>;
export const FOUND: readonly Found[] = ['not-opened', 'no-hose', 'not-reached'];

/** What can be read of a hose that stays on. */
export interface InPlace {
  /** As it stands on the cover. */
  print: string;
  cover_od_mm: number | null;
  hex_a_mm: number | null;
  hex_b_mm: number | null;
}
export const nothingRead = (): InPlace => ({ print: '', cover_od_mm: null, hex_a_mm: null, hex_b_mm: null });

/** The sizes that are read with a caliper or a spanner, by their key. */
export const SIZES = ['cover_od_mm', 'hex_a_mm', 'hex_b_mm'] as const;
export type Size = (typeof SIZES)[number];

type Readings = NonNullable<
  Extract<Question<'register.record'>['events'][number]['body'], { kind: 'surveyed' }>['readings']
>;

/** Those readings as `find` takes them; null where nothing was read. */
export function readings({ print, cover_od_mm, hex_a_mm, hex_b_mm }: InPlace): Readings | null {
  const hose = {
    ...(print.trim() === '' ? {} : { print: print.trim() }),
    ...(cover_od_mm === null ? {} : { cover_od_mm }),
  };
  const ends = (
    [
      ['A', hex_a_mm],
      ['B', hex_b_mm],
    ] as const
  ).flatMap(([role, swivel_hex_mm]) => (swivel_hex_mm === null ? [] : [{ role, swivel_hex_mm }]));
  if (Object.keys(hose).length === 0 && ends.length === 0) return null;
  return { ...(Object.keys(hose).length > 0 ? { hose } : {}), ends, mates: [], reach: 'in-place' };
}

export interface Looked {
  stop: Pick<Stop, 'place' | 'code'>;
  date: string;
  found: Found;
  /** Of a hose on record; null where none is, or where it was not looked at. */
  findings: readonly Graded[] | null;
  read: InPlace;
  words: string;
}

/** What stands on the record of one place, all or none: how it was found, and of a hose on record what was seen on it. */
export function surveyed({ stop, date, found, findings, read, words }: Looked): Question<'register.record'>['events'] {
  const { place, code } = stop;
  const there = found === 'not-opened';
  const taken = there ? readings(read) : null;
  const note = words.trim();
  return [
    {
      body: {
        kind: 'surveyed',
        place,
        date,
        state: found,
        ...(there && code !== null && { code }),
        ...(taken && { readings: taken }),
        ...(note !== '' && { note }),
      },
    },
    ...(there && code !== null && findings !== null ? inspected({ code, date, findings, words: '' }) : []),
  ];
}

/** Whether enough was answered of a place to go on: of a hose on record, what was seen on it. */
export function answered(stop: Pick<Stop, 'code'>, found: Found | null, findings: readonly Graded[] | null): boolean {
  if (found === null) return false;
  return found !== 'not-opened' || stop.code === null || findings !== null;
}

/** The first place that was not looked at that day; where all were, the first. */
export function firstOpen(stops: readonly Stop[], date: string): number {
  return Math.max(
    0,
    stops.findIndex(({ last }) => last?.date !== date),
  );
}

/** How the places of one day were found. */
export function tally(stops: readonly Stop[], date: string): Record<Found, number> & { left: number } {
  const all = { 'not-opened': 0, 'no-hose': 0, 'not-reached': 0, left: 0 };
  for (const { last } of stops) {
    if (last?.date !== date) all.left += 1;
    else if (last.state === 'opened') all['not-opened'] += 1;
    else all[last.state] += 1;
  }
  return all;
}
