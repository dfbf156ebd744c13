import { expect, it } from 'vitest';
import { doneSteps, emptyJob, type JobDoc } from './job-doc';

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
  expect(done({ ...made, proof: { state: 'no-rig' }, ticks: { 'no-rig': '2026-11-25' } })).toContain('make');
  const written = { made: { device: 'd', seq: 1 }, fitted: null } as unknown as JobDoc['written'];
  expect(done({ ...made, step: 'check', written })).toEqual(['find', 'check', 'make', 'tag']);
});
