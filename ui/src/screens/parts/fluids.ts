// Fluids to be picked from: what nearly every machine runs on stands first, by the name that stands on the drum.
import type { FluidEntry } from '../../backend/types';
import { say } from '../../words/words';

/** Mineral oil with anti-wear additives (ISO 11158). Its viscosity grades, 32, 46 and 68, are those of ISO 3448. */
const USUAL = 'HM';

/** The fluids in the order they are asked for, each with what people call it. */
export function offeredFluids(fluids: readonly FluidEntry[]): { id: string; note: string }[] {
  return fluids
    .toSorted((a, b) => Number(b.class === USUAL) - Number(a.class === USUAL))
    .map(({ class: id, name }) => ({ id, note: id === USUAL ? say('check-fluid-usual', { name }) : name }));
}
