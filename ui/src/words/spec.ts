// A spec in the trade's words.
import type { Cover, EndSpec, Gender, HoseRef, Line, Spec } from '../backend/types';
import type { Given } from '../backend';
import type { AssemblyEnd, Head } from '../drawings/assembly';
import type { WordId } from './ids';
import { length, number } from './number';
import { say, sayCode } from './words';

type SomeSpec = Given<Spec>;
type SomeEnd = Given<EndSpec>;

/** `2SN DN16`, short for rows. */
export function hoseShort(hose: HoseRef | null | undefined): string | null {
  return hose ? `${hose.type} DN${number(hose.dn, 1)}` : null;
}

/** `EN 853 2SN DN16`. */
export function hoseLong(hose: HoseRef | null | undefined): string | null {
  return hose ? `${hose.standard} ${hoseShort(hose)}` : null;
}

/** `JIC 37 flare −10, female, 45° elbow`. */
export function endWords(end: SomeEnd): string {
  const parts = [
    `${end.family} ${sizeWords(end.size)}`,
    end.gender ? genderWords(end.gender) : null,
    end.form ? formWords(end.form) : null,
    end.drop_mm ? say('machines-drop', { drop: length(end.drop_mm, 1) }) : null,
  ];
  return parts.filter((part) => part).join(', ');
}

/** How an end leaves the hose: `45° elbow`, `straight`. A form we have no words for stands as it is. */
export function formWords(form: string): string {
  const [, degrees] = /^elbow(\d+(?:\.\d+)?)$/.exec(form) ?? [];
  if (degrees !== undefined) return say('form-elbow', { angle: number(Number(degrees), 1) });
  return sayCode(`form-${form}`) ?? form;
}

/** Which half of a connection. */
export function genderWords(gender: Gender): string {
  return sayCode(`gender-${gender}`) ?? gender;
}

/** A size as it is written, with a true minus. */
export function sizeWords(size: string): string {
  return size.replace(/^-/, '\u2212');
}

/** One line for a list: `2SN DN16 · JIC 37 flare −10 · ORFS −10 · 1240 mm`. */
export function specLine(spec: SomeSpec): string {
  const ends = spec.ends.map((end) => `${end.family} ${sizeWords(end.size)}`);
  const both = ends.length === 2 && ends[0] === ends[1] ? [say('machines-both-ends', { end: ends[0] ?? '' })] : ends;
  const parts = [hoseShort(spec.hose), ...both, spec.overall_length_mm ? length(spec.overall_length_mm, 0) : null];
  return parts.filter((part) => part).join(' · ');
}

/** What closes an end, for its drawing. */
export function headOf(end: SomeEnd | undefined): Head {
  if (!end) return 'nut';
  if (end.form === 'banjo' || end.form === 'standpipe') return end.form;
  if (end.family.startsWith('flange')) return 'flange';
  return end.gender === 'male' ? 'male' : 'nut';
}

/** An end for its drawing: one that the spec does not name is drawn broken. */
export function drawnEnd(spec: SomeSpec, role: 'A' | 'B'): AssemblyEnd {
  const end = spec.ends.find((one) => one.role === role);
  return { form: end?.form ?? null, head: headOf(end), settled: end !== undefined };
}

const LINES: Record<Line, WordId> = {
  pressure: 'line-pressure',
  return: 'line-return',
  suction: 'line-suction',
  'case-drain': 'line-case-drain',
  pilot: 'line-pilot',
  cylinder: 'line-cylinder',
};
export const lines = Object.keys(LINES) as Line[];
/** What a line does. */
export const lineWords = (line: Line): string => say(LINES[line]);

const COVERS: Record<Cover, WordId> = {
  plain: 'find-is-cover-plain',
  'non-conductive': 'find-is-cover-non-conductive',
  'flame-resistant': 'find-is-cover-flame-resistant',
  antistatic: 'find-is-cover-antistatic',
};
export const covers = Object.keys(COVERS) as Cover[];
/** A cover, and the duty it is for. */
export const coverWords = (cover: Cover): string => say(COVERS[cover]);
