// A build sheet for tests, as the core answers it for a hose with two elbows.
import type { BuildSheet, Figure, Role, SheetStep, Step } from '../../backend/types';

const figure = (value: number, unit: string): Figure => ({ value, unit, source: 'a table', basis: 'published' });
const step = (part: Step, code: string, role: Role | null = null, ...cautions: string[]): SheetStep => ({
  step: part,
  code,
  role,
  cautions: cautions.map((caution) => ({ id: caution, caution, why: '', source: '', basis: 'published' })),
});

/** Cut 1155 of 1240, turn 90, proof at 412; what is given stands over it. */
export function benchSheet(over: Partial<BuildSheet> = {}): BuildSheet {
  return {
    verdict: 'pass',
    cautions: [],
    cleanliness: [],
    parts: [],
    cut: {
      overall_length_mm: 1240,
      cutoff_a_mm: 41,
      cutoff_b_mm: 44,
      cut_length_mm: 1155,
      aim: figure(2, 'mm'),
      out_of_square: figure(1.6, 'mm'),
      length_tolerance_mm: [-4, 12],
    },
    turn: { turn_deg: 90, tolerance: figure(5, 'deg') },
    settings: [
      { role: 'A', crimp_diameter_mm: 28.5, crimp_tolerance_mm: 0.1, source: 'a supplier' },
      { role: 'B', crimp_diameter_mm: 28.5, crimp_tolerance_mm: 0.1 },
    ],
    missing: [],
    steps: [
      step('before', 'lock-out'),
      step('make', 'fetch-parts'),
      step('make', 'cut', null, 'Wear glasses and gloves against wire ends.'),
      step('make', 'crimp', 'A', 'Keep fingers out of the dies while the press moves.'),
      step('make', 'measure-crimp', 'A'),
      step('prove', 'close-guard'),
      step('prove', 'release-and-look'),
      step('prove', 'no-rig'),
      step('tag', 'mark-ferrule'),
      step('fit', 'tighten'),
      step('fit', 'log-hours'),
    ],
    proof: {
      working_pressure_bar: 206,
      proof_pressure_bar: 412,
      ratio: figure(2, ''),
      hold_from: figure(30, 's'),
      hold_to: figure(60, 's'),
    },
    tighten: [
      { role: 'A', values: [] },
      { role: 'B', values: [] },
    ],
    catalogue: 'tables',
    ...over,
  };
}
