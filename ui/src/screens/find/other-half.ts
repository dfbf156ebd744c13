// A reading that was said of one half of an end and looks as if the jaws had been on the other.
import type { EndCandidate, Tables } from '../../backend/types';
import type { Session } from './session.svelte';
import { isMate, kindOf, roleOf, type Half, type Key } from './keys';
import { draftOf, mmOf } from './readings';
import { band, isEnd, type Band } from './tables';

/** A caliper is seldom out by more than so many of its standard errors. */
const SELDOM = 3;

export interface OtherHalf {
  key: Key;
  /** The half it would belong to. */
  to: Half;
  candidate: EndCandidate;
}

/**
 * The first reading of the part in hand that lies outside what the likeliest end has there by more than the caliper
 * errs, and inside what its mating half has. Nothing while the half it would belong to was read itself.
 */
export function otherHalf(session: Session, tables: Tables | null): OtherHalf | null {
  const { half, doc } = session;
  const role = roleOf(half);
  const [candidate] = session.candidates;
  if (role === null || isMate(half) || !candidate || !isEnd(candidate) || !candidate.gender) return null;
  const to: Half = `mate-${role}`;
  const room = SELDOM * session.caliper();
  const fits = (at: Half, key: Key, mm: number): boolean | null => {
    const limits = band(tables, candidate, at, key);
    return limits && inside(limits, mm, room);
  };
  const key = session.listed.find((one) => {
    const mm = kindOf(one) === 'length' ? mmOf(one, draftOf(doc.readings, half, one)) : null;
    if (mm === null || draftOf(doc.readings, to, one)) return false;
    return fits(half, one, mm) === false && fits(to, one, mm) === true;
  });
  return key ? { key, to, candidate } : null;
}

const inside = ([low, high]: Band, mm: number, room: number): boolean =>
  mm >= (low ?? -Infinity) - room && mm <= (high ?? Infinity) + room;
