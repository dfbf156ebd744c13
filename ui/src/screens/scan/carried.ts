// What a tag carries, in words, as a drawing and as a record.
import type { Given } from '../../backend';
import type { Body, EndSpec, RecordEvent, Service, Spec, TagContent, TagProof } from '../../backend/types';
import type { AssemblyEnd, Head } from '../../drawings/assembly';
import { bendOf } from '../../drawings/assembly';
import { angle, length, number, pressure } from '../../words/number';
import { say, sayCode } from '../../words/words';

/** An end of a spec as it is drawn; one that the spec lacks is drawn broken. */
export function drawn(end: EndSpec | undefined): AssemblyEnd {
  return { form: end?.form ?? null, head: end ? headOf(end) : 'nut', settled: end !== undefined };
}

function headOf({ family, form, gender }: EndSpec): Head {
  if (form === 'banjo' || form === 'standpipe') return form;
  if (family.startsWith('flange')) return 'flange';
  return gender === 'male' ? 'male' : 'nut';
}

/** The end of that role. */
export function endOf(spec: Spec, role: EndSpec['role']): EndSpec | undefined {
  return spec.ends.find((end) => end.role === role);
}

/** A hose by its name: `EN 853 2SN DN16`. */
export function hoseWords(spec: Spec): string {
  const { hose } = spec;
  return hose ? `${hose.standard} ${hose.type} DN${number(hose.dn, 1)}` : say('scan-not-carried');
}

/** A hose and its length: what to compare it by. */
export function briefly(spec: Spec): string {
  return [hoseWords(spec), ...(spec.overall_length_mm ? [length(spec.overall_length_mm, 1)] : [])].join(', ');
}

/** An end: family and size, which half, its form. */
export function endWords(end: EndSpec | undefined): string {
  if (!end) return say('scan-not-carried');
  const gender = end.gender ? sayCode(`gender-${end.gender}`) : null;
  return [`${end.family} ${end.size.replace('-', '\u2212')}`, gender, formWords(end.form)].filter(Boolean).join(', ');
}

function formWords(form: string | null | undefined): string | null {
  if (!form) return null;
  const bend = bendOf(form);
  if (form === 'compact90' || bend === 0) return sayCode(`form-${form}`) ?? form;
  return say('form-elbow', { angle: number(bend, 1) });
}

/** A fact of the tag: what, and what it says. */
export interface Fact {
  what: string;
  says: string;
}

/** All that a tag says, in the order of the hose. */
export function facts(tag: TagContent): Fact[] {
  const { spec } = tag;
  const may = (what: string, says: string | null | undefined): Fact[] => (says ? [{ what, says }] : []);
  return [
    { what: say('scan-fact-hose'), says: hoseWords(spec) },
    { what: say('scan-fact-a'), says: endWords(endOf(spec, 'A')) },
    { what: say('scan-fact-b'), says: endWords(endOf(spec, 'B')) },
    ...may(say('scan-fact-length'), spec.overall_length_mm ? length(spec.overall_length_mm, 1) : null),
    ...may(say('scan-fact-turn'), typeof spec.turn_deg === 'number' ? angle(spec.turn_deg) : null),
    { what: say('scan-fact-pressure'), says: tag.pressure_bar ? pressure(tag.pressure_bar) : say('scan-not-carried') },
    { what: say('scan-fact-proof'), says: proofWords(tag.proof) },
    ...may(say('scan-fact-fluid'), tag.fluid),
    ...may(say('scan-fact-assembled'), tag.assembled),
  ];
}

function proofWords(proof: TagProof): string {
  const at = proof.state === 'proved' ? pressure(proof.pressure_bar) : '';
  return sayCode(`label-${proof.state}`, { pressure: at }) ?? proof.state;
}

/** The service that a tag carries: what the line does, never what presses in it. */
export function serviceOf({ line, fluid, duties }: TagContent): Given<Service> {
  return { line, fluid, duties: duties ?? [] };
}

/**
 * The record of a hose that was made elsewhere. A tag that names its month alone is taken as of the month's
 * first day, so that it falls due no later than it should. How long and by which gauge it was proved stands on
 * no tag, so what the tag says of it is kept as a remark.
 */
export function asRecord(tag: TagContent, program: string): Given<RecordEvent>[] {
  const { code, spec, pressure_bar, assembled, catalogue, proof } = tag;
  const made: Given<Body> = {
    kind: 'assembly-made',
    code,
    spec,
    service: serviceOf(tag),
    assembled: assembled?.length === 'yyyy-mm'.length ? `${assembled}-01` : assembled,
    proof: { state: 'not-proved', why: proof.state === 'no-rig' ? 'no-rig' : 'made-elsewhere' },
    pressure_bar,
    catalogue,
    program,
  };
  const remark: Given<Body> = {
    kind: 'noted',
    about: { hose: code },
    text: say('scan-remark', { proof: proofWords(proof) }),
  };
  return [{ body: made }, { body: remark }];
}
