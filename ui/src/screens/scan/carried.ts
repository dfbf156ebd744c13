// What a tag carries, in words and as a record.
import type { Given } from '../../backend';
import type { EndSpec, Service, Spec, TagContent, TagProof } from '../../backend/types';
import { angle, length, pressure } from '../../words/number';
import { endWords, hoseLong } from '../../words/spec';
import { say, sayCode } from '../../words/words';
import type { Fact } from '../parts/FactList.svelte';

/** The hose that a tag names. */
export function hoseWords(spec: Spec): string {
  return hoseLong(spec.hose) ?? say('scan-not-carried');
}

/** A hose and its length: what to compare it by. */
export function briefly(spec: Spec): string {
  return [hoseWords(spec), ...(spec.overall_length_mm ? [length(spec.overall_length_mm, 1)] : [])].join(', ');
}

/** The end of that role as a tag names it. */
function endOf({ ends }: Spec, role: EndSpec['role']): string {
  const end = ends.find((one) => one.role === role);
  return end ? endWords(end) : say('scan-not-carried');
}

/** All that a tag says, in the order of the hose. */
export function facts(tag: TagContent): Fact[] {
  const { spec } = tag;
  const may = (what: string, says: string | null | undefined): Fact[] => (says ? [{ what, says }] : []);
  return [
    { what: say('scan-fact-hose'), says: hoseWords(spec) },
    { what: say('scan-fact-a'), says: endOf(spec, 'A') },
    { what: say('scan-fact-b'), says: endOf(spec, 'B') },
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
