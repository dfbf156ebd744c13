import { expect, it } from 'vitest';
import { doneSteps, emptyJob, resumed, type JobDoc } from './job-doc';

const done = (over: Partial<JobDoc>) => [...doneSteps({ ...emptyJob(), ...over })];
const spec: JobDoc['spec'] = {
  hose: { standard: 'EN 853', type: '2SN', dn: 16 },
  ends: [
    { role: 'A', family: 'ORFS', size: '-10' },
    { role: 'B', family: 'ORFS', size: '-10' },
  ],
};

it('a step that was only stepped past is not done', () => {
  expect(done({ step: 'fit' })).toEqual([]);
  expect(done({ step: 'fit', spec })).toEqual(['find']);
  expect(done({ step: 'tag', spec, checked: true, proof: { state: 'no-rig' } })).toEqual(['find', 'check']);
});

it('made is done once it is proved, or noted that it is not; tagged once it is on the record', () => {
  const made = { step: 'tag', spec, checked: true } as const;
  expect(done({ ...made, proof: { state: 'proved', pressure_bar: 412 } })).toEqual(['find', 'check', 'make']);
  expect(done({ ...made, proof: { state: 'no-rig' }, ticks: { 'no-rig': { at: '2026-11-25', by: null } } })).toContain(
    'make',
  );
  const written = { made: 'd/1', taken: true, fitted: null };
  expect(done({ ...made, step: 'check', written })).toEqual(['find', 'check', 'make', 'tag']);
});

it('a job that was kept when ticks were times alone goes on with them', () => {
  const kept = {
    step: 'make',
    ticks: { cut: '2026-11-25T10:00:00Z', 'crimp.A': { at: '2026-11-26T08:00:00Z', by: 'p' } },
  };
  const doc = resumed(kept as Parameters<typeof resumed>[0]);
  expect(doc.ticks).toEqual({
    cut: { at: '2026-11-25T10:00:00Z', by: null },
    'crimp.A': { at: '2026-11-26T08:00:00Z', by: 'p' },
  });
  expect(doc.crimps).toEqual({ A: [], B: [] });
});

it('a job whose proof leaked before scrap was kept apart is still scrap', () => {
  const proving = { rig: true, failed: true, pressure_bar: 300, hold_s: 5, gauge: 'G1', calibrated: null };
  const doc = resumed({ step: 'make', ticks: { 'raise-pressure': '2026-11-25T10:00:00Z' }, proving });
  expect(doc.scrap).toMatchObject({
    step: 'release-and-look',
    at: '2026-11-25T10:00:00Z',
    proving: { pressure_bar: 300 },
  });
  expect(doc.proving).not.toHaveProperty('failed');
});
