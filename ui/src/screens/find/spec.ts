// From what was found to the spec that Check looks at.
import type { Given } from '../../backend';
import type {
  EndCandidate,
  EndFound,
  EndName,
  Found,
  HoseCandidate,
  HoseRef,
  Part,
  Role,
  Settled,
  Spec,
} from '../../backend/types';
import type { Finding, JobDoc, Named } from '../../state/job-doc';
import { draftOf, mmOf } from './readings';

type EndGiven = Given<Spec>['ends'][number];

/** An end of the spec with another name. What was measured or entered for the old one goes with it. */
export function endNamed(
  before: EndGiven | undefined,
  role: Role,
  end: Pick<EndCandidate, 'family' | 'size' | 'gender'>,
  form: string | undefined,
): EndGiven {
  // A form that nobody said stays unsaid, so that Check asks for it.
  const shape = form ?? before?.form ?? null;
  const same = before?.family === end.family && before.size === end.size && (before.form ?? null) === shape;
  return {
    ...(same ? before : {}),
    role,
    family: end.family,
    size: end.size,
    ...(shape ? { form: shape } : {}),
    ...(end.gender ? { gender: end.gender } : {}),
  };
}

/** Puts an end in its place: A before B. */
export function withEnd(spec: Given<Spec>, end: EndGiven): Given<Spec> {
  const ends = [...spec.ends.filter((one) => one.role !== end.role), end];
  return { ...spec, ends: ends.sort((a, b) => a.role.localeCompare(b.role)) };
}

const hoseRef = ({ standard, type, dn }: Pick<HoseCandidate, 'standard' | 'type' | 'dn'>) => ({ standard, type, dn });

/** The spec of what was found: the likeliest of each part, but never over what the person named. */
export function specOf(doc: Pick<JobDoc, 'spec' | 'readings' | 'finding'>, found: Found): Given<Spec> {
  const { chosen, forms } = doc.finding;
  let spec: Given<Spec> = { ...doc.spec };
  const [hose] = found.hose;
  if (hose && doc.readings.hose && !chosen.includes('hose')) spec.hose = hoseRef(hose);
  for (const { role, candidates } of found.ends) {
    const before = spec.ends.find((one) => one.role === role);
    const end = chosen.includes(role) && before ? before : candidates[0];
    if (end) spec = withEnd(spec, endNamed(before, role, { ...end, gender: end.gender ?? null }, forms[role]));
  }
  const overall = mmOf('overall_length_mm', draftOf(doc.readings, 'hose', 'overall_length_mm'));
  // A fraction of an inch leaves no dust of binary arithmetic on a tag.
  if (overall !== null) spec.overall_length_mm = Math.round(overall * 100) / 100;
  const cover = doc.readings.hose?.cover;
  if (cover) spec.cover = cover;
  return spec;
}

/** The spec and the parts named, after the person named one: evidence stays as it is, so doubt still shows. */
export function named(
  doc: Pick<JobDoc, 'spec' | 'finding'>,
  part: Part,
  pick: EndCandidate | HoseCandidate,
): { spec: Given<Spec>; chosen: Finding['chosen']; named: Named } {
  const { chosen, forms, named } = doc.finding;
  const isEnd = 'family' in pick;
  const spec = isEnd
    ? withEnd(
        doc.spec,
        endNamed(
          doc.spec.ends.find((one) => one.role === part),
          part as Role,
          pick,
          forms[part as Role],
        ),
      )
    : { ...doc.spec, hose: hoseRef(pick) };
  const name = isEnd ? { family: pick.family, size: pick.size } : hoseRef(pick);
  return { spec, chosen: [...chosen.filter((one) => one !== part), part], named: { ...named, [part]: name } };
}

/**
 * What a part is by the person's own word; null where nobody named it, or where the readings settled it: then they
 * speak for it, or against it.
 */
export function ownWord({ named }: Finding, settled: Settled | null, part: Part): EndName | HoseRef | null {
  return settled?.[part] ? null : (named?.[part] ?? null);
}

/** What was found of an end; null while nothing was read of it. */
export const foundEnd = (found: Found | null, role: Role): EndFound | null =>
  found?.ends.find((end) => end.role === role) ?? null;
