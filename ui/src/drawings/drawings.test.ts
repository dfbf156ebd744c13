import { render, screen } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import Assembly from './Assembly.svelte';
import EndSection from './EndSection.svelte';
import FormSymbol from './FormSymbol.svelte';
import ReinforcementSymbol from './ReinforcementSymbol.svelte';
import SeatSymbol from './SeatSymbol.svelte';
import { bendOf, layEnd, type AssemblyEnd } from './assembly';
import { placeBalloons, spread } from './balloons';
import { stack } from './dots';
import { ticks, wholeScale } from './geometry';
import { reachOf } from './limit';
import { machines, type MachineKind } from './machines';
import { sealLines } from './seal';
import { section, type EndShape, type Seal } from './section';
import { coneDepth, threadLine } from './thread';

const jic: EndShape = {
  gender: 'female',
  thread: { majorMm: 22.22, minorMm: 20.26, pitchMm: 1.814, flankDeg: 60 },
  seat: { angleDeg: 74, cone: 'concave' },
  seals: ['cone'],
  hexMm: 25.4,
  boreMm: 12,
};
const nut = (form: string, settled = true): AssemblyEnd => ({ form, head: 'nut', settled });

describe('an assembly', () => {
  const name = 'Assembly: end A JIC 37 flare -10 elbow 45, hose EN 853 2SN DN16, end B ORFS -10. Overall 1240.';

  it('carries its sentence as its name and the figures in it', () => {
    render(Assembly, {
      name,
      a: nut('elbow45'),
      b: nut('elbow90'),
      turnDeg: 90,
      overall: { figure: '1240', plus: '+12', minus: '−4' },
      cut: 'cut 1155',
    });
    const drawing = screen.getByRole('img', { name });
    for (const text of ['A', 'B', '1240', '+12', '−4', 'cut 1155']) {
      expect(
        [...drawing.querySelectorAll('text')].map((it) => it.textContent?.trim()),
        text,
      ).toContain(text);
    }
    expect(drawing.textContent).not.toContain('?');
  });

  it('draws what is not settled broken and with a question mark', () => {
    render(Assembly, { name, a: nut('elbow45', false), b: nut('straight'), turnDeg: null, overall: null });
    const marks = [...screen.getByRole('img').querySelectorAll('text')].filter((it) => it.textContent?.trim() === '?');
    expect(marks, 'end A and the length').toHaveLength(2);
    expect(screen.getByRole('img').querySelectorAll('.brokenf').length).toBeGreaterThan(0);
  });

  it('marks the turn between two elbows that nobody has said, and doubts no end that is settled', () => {
    const open = { name, a: nut('elbow45'), b: nut('elbow90'), turnDeg: null, overall: { figure: '1240' } };
    const { unmount } = render(Assembly, open);
    const drawing = screen.getByRole('img');
    expect([...drawing.querySelectorAll('text')].filter((it) => it.textContent?.trim() === '?')).toHaveLength(1);
    expect(drawing.querySelectorAll('.brokenf')).toHaveLength(0);
    expect(drawing.querySelectorAll('.broken')).toHaveLength(1);
    unmount();
    render(Assembly, { ...open, a: nut('straight') });
    expect(screen.getByRole('img').textContent, 'one elbow has no turn').not.toContain('?');
  });

  it('points A up and B where the turn puts it', () => {
    expect(layEnd(nut('elbow90'), -1, 0).seal[1], 'A, up the page').toBeLessThan(-30);
    expect(layEnd(nut('elbow90'), 1, 180).seal[1], 'B turned 180, down the page').toBeGreaterThan(30);
    const towards = layEnd(nut('elbow90'), 1, 90);
    expect(towards.seal[1]).toBeCloseTo(0, 6);
    expect(towards.near, 'towards the viewer').toBe(true);
    expect(towards.rings.length, 'the bore is seen').toBeGreaterThan(0);
    const away = layEnd(nut('elbow90'), 1, 270);
    expect(away.near).toBe(false);
    expect(away.rings, 'the bore is hidden').toHaveLength(0);
  });

  it('reads the bend off the form’s name', () => {
    expect(['straight', 'elbow45', 'elbow67.5', 'compact90', 'banjo', null].map(bendOf)).toEqual([
      0, 45, 67.5, 90, 0, 0,
    ]);
  });
});

describe('an end in section', () => {
  it('has crests and roots at the table’s diameters, a pitch apart', () => {
    const line = threadLine({ majorMm: 22, minorMm: 20, pitchMm: 2, flankDeg: 60 }, 0, 8);
    const radii = line.map(([radius]) => radius);
    expect(Math.min(...radii)).toBe(10);
    expect(Math.max(...radii)).toBe(11);
    const crests = line.filter(([radius]) => radius === 10).map(([, y]) => y);
    expect((crests[2] ?? 0) - (crests[0] ?? 0)).toBeCloseTo(2, 9);
  });

  it('widens a taper thread 1 in 16 on the diameter', () => {
    const line = threadLine({ majorMm: 20.9, minorMm: 18.3, pitchMm: 1.814, flankDeg: 60, taper: true }, 0, 16.5);
    const crests = line.filter((_, index) => index % 4 === 2);
    const [first, last] = [crests[0], crests.at(-1)];
    expect(((last?.[0] ?? 0) - (first?.[0] ?? 0)) * 2).toBeCloseTo(((last?.[1] ?? 0) - (first?.[1] ?? 0)) / 16, 6);
  });

  it('cuts the cone at half the included angle each side', () => {
    // 37 degrees a side: 3 mm of radius in 3 / tan 37 of depth.
    expect(coneDepth(10, 7, 74)).toBeCloseTo(3.98113, 4);
    const { seat } = section(jic);
    const slope = (Math.atan2(seat[0][0] - seat[1][0], seat[1][1] - seat[0][1]) * 180) / Math.PI;
    expect(slope).toBeCloseTo(37, 6);
  });

  it('opens a hollow seat towards the face and lets a raised one stand proud', () => {
    const hollow = section(jic).seat;
    expect(hollow[0][1], 'outer edge nearer the face').toBeLessThan(hollow[1][1]);
    const raised = section({ ...jic, seat: { angleDeg: 60, cone: 'convex' } }).seat;
    expect(raised[0][1], 'inner edge nearer the face').toBeGreaterThan(raised[1][1]);
  });

  it('sets the jaws by the reading typed, not by the table', () => {
    const jaws = (readingMm: number) => {
      const { container, unmount } = render(EndSection, { name: 'x', shape: jic, lit: 'thread', readingMm });
      const d = container.querySelector('.mo')?.getAttribute('d');
      unmount();
      return d;
    };
    expect(jaws(20.6)).not.toBe(jaws(20.2));
    expect(jaws(20.6)).toMatch(/^M\d/);
  });

  it('draws an unknown thread broken and never with a number', () => {
    const { container } = render(EndSection, { name: 'x', shape: { ...jic, thread: null, seat: null } });
    expect(container.querySelectorAll('.broken').length).toBeGreaterThan(0);
    expect([...container.querySelectorAll('text')].map((it) => it.textContent)).toEqual(['?']);
  });
});

describe('the limit line', () => {
  it('is where the numbers say: 250 of at least 280 stops short of it, 185 of at most 206 in the last tenth', () => {
    expect(reachOf(250, 280)).toBeCloseTo(0.89286, 5);
    expect(reachOf(185, 206)).toBeCloseTo(0.89806, 5);
    expect(reachOf(0, 200)).toBe(0);
  });
});

describe('many marks', () => {
  it('leave no hose out and keep both sides of the limit apart', () => {
    const ages = Array.from({ length: 900 }, (_, index) => (index % 100) / 12);
    const dots = ages.map((age, index) => ({ age, stop: index === 3 }));
    const field = stack(dots, { end: 8, limit: 6, width: 350, height: 124 });
    expect(field.marks).toHaveLength(900);
    expect(
      field.marks.filter(({ stop }) => stop),
      'one hose that is stopped stops no other',
    ).toHaveLength(1);
    expect(field.over).toBe(ages.filter((age) => age > 6).length);
    const line = (6 / 8) * 350;
    for (const mark of field.marks) expect(mark.x < line, `over ${mark.over} at ${mark.x}`).toBe(!mark.over);
  });

  it('keep balloons a target apart and inside the drawing', () => {
    const points = Array.from({ length: 9 }, (_, index) => [180 + index, 60 + (index % 3)] as const);
    const placed = placeBalloons(points, { width: 366, top: 22, bottom: 200, edge: 24 }, 54);
    for (const [index, a] of placed.entries()) {
      expect(a.at[0]).toBeGreaterThanOrEqual(24);
      expect(a.at[0]).toBeLessThanOrEqual(342);
      for (const b of placed.slice(index + 1)) {
        expect(Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]), `${a.at} and ${b.at}`).toBeGreaterThan(52);
      }
    }
    expect(spread([10, 12, 200], 0, 100, 30)).toEqual([10, 40, 100]);
  });

  it('have a drawing for every kind of machine', () => {
    const kinds: MachineKind[] = [
      'excavator',
      'loader',
      'forwarder',
      'crane',
      'press',
      'drill',
      'harvester',
      'tractor',
      'truck-mounted',
      'other',
    ];
    expect(Object.keys(machines).sort()).toEqual([...kinds].sort());
    for (const kind of kinds) {
      for (const shape of machines[kind]) expect(shape.d, `${kind}: ${shape.d}`).not.toMatch(/NaN|undefined/);
    }
  });
});

describe('things to pick', () => {
  const drawn = (container: HTMLElement) => container.querySelector('svg')?.innerHTML.replaceAll(/<!--.*?-->/g, '');

  it('have a drawing for each seal, no two alike', () => {
    const seals = Object.keys(sealLines) as Seal[];
    const all = seals.map((seal) => drawn(render(SeatSymbol, { seat: null, seal }).container));
    expect(seals).toHaveLength(8);
    expect(new Set(all).size).toBe(seals.length);
  });

  it('have a drawing for each way to carry the pressure, no two alike', () => {
    const kinds = [
      ...(['wire-braid', 'wire-spiral', 'textile-braid', 'thermoplastic-textile'] as const),
      ...(['ptfe-steel-braid', 'suction-helix'] as const),
    ];
    const all = kinds.map((kind) => drawn(render(ReinforcementSymbol, { kind }).container));
    expect(new Set(all).size).toBe(kinds.length);
    for (const svg of all) expect(svg).not.toMatch(/NaN|undefined/);
  });

  it('have a drawing for each form, no two alike', () => {
    const forms = ['straight', 'elbow45', 'elbow90', 'compact90', 'standpipe', 'banjo'];
    const all = forms.map((form) => {
      const head = form === 'standpipe' || form === 'banjo' ? form : 'nut';
      return drawn(render(FormSymbol, { end: { form, head, settled: true } }).container);
    });
    expect(new Set(all).size).toBe(forms.length);
    for (const svg of all) expect(svg).not.toMatch(/NaN|undefined/);
  });
});

describe('scales', () => {
  it('are whole pixels a millimetre where they can be', () => {
    expect(wholeScale(136, 25.4)).toBe(5);
    expect(wholeScale(108, 40)).toBe(2.5);
    expect(wholeScale(100, 240)).toBe(0.25);
  });

  it('tick at round values', () => {
    expect(ticks(0, 8, 4)).toEqual([0, 2, 4, 6, 8]);
    expect(ticks(20.2, 21.2, 2).map((at) => at.toFixed(1))).toEqual(['20.5', '21.0']);
  });
});
