import type { Assembly, TagContent } from '../../backend/types';

/** What the label of a recorded hose says: the same code over what the record has of it. */
export function tagOf(assembly: Assembly): TagContent {
  const { proof, service } = assembly;
  return {
    code: assembly.code,
    spec: assembly.spec,
    pressure_bar: assembly.pressure_bar,
    line: service.line,
    fluid: service.fluid,
    duties: service.duties,
    assembled: assembly.assembled,
    proof:
      proof.state === 'proved'
        ? { state: 'proved', pressure_bar: proof.pressure_bar }
        : { state: proof.state === 'not-proved' && proof.why === 'no-rig' ? 'no-rig' : 'not-proved' },
    catalogue: assembly.catalogue,
  };
}
