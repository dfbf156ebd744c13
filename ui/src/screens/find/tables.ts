// Rows of the catalogue's tables behind the candidates: bands for the ruler, shapes for the drawings.
import type {
  EndCandidate,
  EndEntry,
  EndName,
  FlangeEntry,
  Found,
  HalfEntry,
  HoseCandidate,
  HoseEntry,
  HoseName,
  HoseSize,
  Limits,
  Tables,
} from '../../backend/types';
import type { Candidate } from '../../components/ruler';
import type { Seat } from '../../drawings/thread';
import { MM_PER_INCH } from '../../words/number';
import { isMate, roleOf, type Half, type Key } from './keys';
import { foundEnd } from './spec';

export type AnyCandidate = EndCandidate | HoseCandidate;
/** A side that is null has no limit in the tables. */
export type Band = Limits;

export const isEnd = (candidate: AnyCandidate): candidate is EndCandidate => 'family' in candidate;

/** A candidate as people say it. */
export function candidateName(candidate: AnyCandidate | EndName | Pick<HoseName, 'standard' | 'type' | 'dn'>): string {
  return 'family' in candidate
    ? `${candidate.family} ${candidate.size.replace(/^-/, '\u2212')}`
    : `${candidate.standard} ${candidate.type} DN${candidate.dn}`;
}

/** One name for each candidate of a list. */
export const idOf = (candidate: AnyCandidate): string =>
  isEnd(candidate)
    ? `${candidate.family}|${candidate.size}|${candidate.gender ?? ''}`
    : `${candidate.standard}|${candidate.type}|${candidate.dn}`;

export const endRow = (tables: Tables | null, end: Pick<EndCandidate, 'family' | 'size'>): EndEntry | null =>
  tables?.ends.find((row) => row.family === end.family && row.size === end.size) ?? null;

export const flangeRow = (tables: Tables | null, end: Pick<EndCandidate, 'family' | 'size'>): FlangeEntry | null =>
  tables?.flanges.find((row) => row.family === end.family && row.size === end.size) ?? null;

export function hoseRow(tables: Tables | null, hose: Pick<HoseCandidate, 'standard' | 'type' | 'dn'>): HoseSize | null {
  return hoseKind(tables, hose)?.sizes.find((size) => size.dn === hose.dn) ?? null;
}

export const hoseKind = (tables: Tables | null, hose: Pick<HoseCandidate, 'standard' | 'type'>): HoseEntry | null =>
  tables?.hoses.find((row) => row.standard === hose.standard && row.type === hose.type) ?? null;

/** The half of a row that was measured; of a mate it is the other one. */
export function halfRow(row: EndEntry, candidate: EndCandidate, half: Half): HalfEntry | null {
  const gender = candidate.gender ?? null;
  const wanted = !isMate(half) || !gender ? gender : gender === 'male' ? 'female' : 'male';
  return row.halves.find((one) => (one.gender ?? null) === wanted) ?? null;
}

const bandOf = (limits: Limits | undefined): Band | null => limits ?? null;

/** What the tables give for a reading of a candidate; null where they give none. */
export function band(tables: Tables | null, candidate: AnyCandidate, half: Half, key: Key): Band | null {
  if (!isEnd(candidate)) return bandOf(hoseRow(tables, candidate)?.dimensions[key]);
  const flange = flangeRow(tables, candidate);
  if (flange) return bandOf(flange.dimensions[key]);
  const row = endRow(tables, candidate);
  if (!row) return null;
  if (key === 'pitch_mm') {
    const pitch = row.tpi ? MM_PER_INCH / row.tpi : (row.pitch_mm ?? null);
    return pitch === null ? null : [pitch, pitch];
  }
  const measured = key === 'second_thread_diameter_mm' ? 'thread_diameter_mm' : key;
  return bandOf(halfRow(row, candidate, half)?.dimensions[measured]);
}

/** The seat of the half that is looked at; null where it has none or the tables do not say. */
export function seatOf(tables: Tables | null, candidate: AnyCandidate, half: Half): Seat | null {
  if (!isEnd(candidate)) return null;
  const row = endRow(tables, candidate);
  const angleDeg = row?.seat_included_angle_deg ?? null;
  const cone = row ? (halfRow(row, candidate, half)?.cone ?? null) : null;
  return angleDeg !== null && cone !== null ? { angleDeg, cone } : null;
}

/** Candidates of a part, likeliest first. */
export function candidatesOf(found: Found | null, half: Half): readonly AnyCandidate[] {
  const role = roleOf(half);
  if (!found) return [];
  return role === null ? found.hose : (foundEnd(found, role)?.candidates ?? []);
}

/** Probability that a part is none of the catalogue's. */
export function unknownOf(found: Found | null, half: Half): number {
  const role = roleOf(half);
  return (role === null ? found?.unknown.hose : foundEnd(found, role)?.unknown) ?? 0;
}

/** A candidate as the ruler draws it. */
export function rulerCandidate(tables: Tables | null, candidate: AnyCandidate, half: Half, key: Key | null): Candidate {
  const row = isEnd(candidate) ? endRow(tables, candidate) : null;
  return {
    id: idOf(candidate),
    name: isEnd(candidate) ? candidate.family : `${candidate.standard} ${candidate.type}`,
    size: isEnd(candidate) ? candidate.size.replace(/^-/, '\u2212') : `DN${candidate.dn}`,
    seat: seatOf(tables, candidate, half),
    seal: row?.seals[0],
    band: key ? band(tables, candidate, half, key) : null,
    probability: candidate.probability,
  };
}

/** Below this the first candidate is a name among many: one says to read on instead. */
export const STANDS_OUT = 0.1;

/** A candidate this much less likely than the first is not counted among the likely ones. */
const LIKELY = 1 / 20;

/** How many candidates are likely beside the first: the list comes likeliest first. */
export function countLikely(candidates: readonly AnyCandidate[]): number {
  const least = (candidates[0]?.probability ?? 0) * LIKELY;
  return candidates.filter((one) => one.probability >= least).length;
}
