import type { Seal } from '../drawings/section';
import type { Seat } from '../drawings/thread';

/** A candidate on the ruler: its band of the reading asked, in mm, and how likely it is. */
export interface Candidate {
  id: string;
  /** Family, such as `JIC 37 flare`, and size, such as `-10`. */
  name: string;
  size: string;
  /** The seat in the hand, drawn small; null where there is none or the candidate is a hose. */
  seat: Seat | null;
  seal?: Seal;
  /** Null: no table gives a band for this reading; a side that is null has no limit. */
  band: readonly [min: number | null, max: number | null] | null;
  probability: number;
}

/** A row of the ruler. */
export type RulerRow = { kind: 'candidate'; candidate: Candidate } | { kind: 'none'; probability: number };

/** Likeliest first; whatever its probability, "none of these" stands last. */
export function rulerRows(candidates: readonly Candidate[], unknown: number): RulerRow[] {
  return [
    ...[...candidates]
      .sort((a, b) => b.probability - a.probability)
      .map((candidate): RulerRow => ({ kind: 'candidate', candidate })),
    { kind: 'none', probability: unknown },
  ];
}

/** The span the ruler shows: every band and the reading with its error, with a little air. */
export function rulerSpan(
  candidates: readonly Candidate[],
  reading: { value: number; error: number } | null,
): [number, number] | null {
  const ends = candidates.flatMap((candidate) => [...(candidate.band ?? [])].filter((end) => end !== null));
  if (reading) ends.push(reading.value - reading.error, reading.value + reading.error);
  if (ends.length === 0) return null;
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const air = Math.max((high - low) * 0.12, 0.05);
  return [low - air, high + air];
}
