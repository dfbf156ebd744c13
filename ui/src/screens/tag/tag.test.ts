import { render, screen, waitFor } from '@testing-library/svelte';
import { describe, expect, it, vi } from 'vitest';
import { fake } from '../../backend/fake';
import type { Finding, HoseOverride, TagContent } from '../../backend/types';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import { benchSheet } from '../make/bench.fixture';
import Host from '../make/Host.fixture.svelte';
import Tag from './Tag.svelte';
import { tagOf } from './again';
import { Recorded } from './recorded.svelte';
import { sizesFor } from './sizes';
import { takenOn } from './taken-on';
import { madeEvents, recordedProof } from './tagging.svelte';

const tag: TagContent = {
  code: '7KQ4M-2XR9D-D',
  spec: { ends: [] },
  pressure_bar: 206,
  assembled: '2026-11-25',
  proof: { state: 'no-rig' },
  catalogue: 'tables',
};
const made = {
  verdict: 'pass' as const,
  service_checked: true,
  tag,
  text: 'HOSE TAG 1',
  stops: [],
  catalogue: 'tables',
  program: 'p',
};
const job = (over: Partial<JobDoc> = {}): JobDoc => ({
  ...emptyJob(),
  step: 'tag',
  proof: { state: 'no-rig' },
  ...over,
});

describe('the record of a hose', () => {
  it('carries what was held, by which gauge', () => {
    const doc = job({
      proof: { state: 'proved', pressure_bar: 412 },
      proving: { rig: true, failed: false, pressure_bar: 412, hold_s: 40, gauge: 'G1', calibrated: '2026-03-01' },
    });
    expect(recordedProof(doc)).toEqual({
      state: 'proved',
      pressure_bar: 412,
      hold_s: 40,
      gauge: 'G1',
      gauge_calibrated: '2026-03-01',
    });
    expect(recordedProof(job())).toEqual({ state: 'not-proved', why: 'no-rig' });
  });

  it('has the verdict, the rating and the tables of the tag', () => {
    expect(madeEvents(job(), made, tag)[0]?.body).toMatchObject({
      kind: 'assembly-made',
      code: '7KQ4M-2XR9D-D',
      verdict: 'pass',
      pressure_bar: 206,
      assembled: '2026-11-25',
      catalogue: 'tables',
    });
  });

  it('builds a correction on what stands there', () => {
    expect(madeEvents(job(), made, tag, 'd.1')[0]).toMatchObject({ builds_on: ['d.1'] });
    expect(madeEvents(job(), made, tag)[0]).not.toHaveProperty('builds_on');
  });

  it('has what a person took on, by the id of the name, once', async () => {
    const added = vi.fn((_: unknown) => ({ person: 'new' }));
    const backend = fake({
      check: () => ({
        findings: ['bend', 'flow'].map((rule) => ({ case: 'override-taken', rule })) as unknown as Finding[],
      }),
      'people.list': () => ({ people: [{ id: 'known', name: 'First', ms: 0 }] }),
      'people.add': added,
    });
    const over = (rule: string, by: string) => ({ rule, by, reason: `why ${rule}` });
    const question = {
      spec: { ends: [] },
      service: { duties: [] },
      length_practice: 'din-20066' as const,
      overrides: [over('bend', 'First'), over('flow', 'Second'), over('old', 'First')],
    };
    const taken = await takenOn(backend, question, tag.code, []);
    expect(taken.ok && taken.events.map((event) => event.body)).toEqual([
      { kind: 'overridden', code: tag.code, rule: 'bend', reason: 'why bend', by: 'known' },
      { kind: 'overridden', code: tag.code, rule: 'flow', reason: 'why flow', by: 'new' },
    ]);
    expect(added).toHaveBeenCalledExactlyOnceWith({ name: 'Second' });
    const stands = [{ rule: 'bend', reason: 'why bend' }] as HoseOverride[];
    const again = await takenOn(backend, question, tag.code, stands);
    expect(again.ok && again.events).toHaveLength(1);
  });

  it('differs from the job once its spec was changed, and not by what is merely left out', async () => {
    const backend = fake({
      'register.show': () => ({
        assembly: { version: 'd.1', spec: { ends: [], overall_length_mm: 900 } } as never,
        overrides: [],
      }),
    });
    const recorded = new Recorded(backend);
    await recorded.read(tag.code);
    const of = (overall_length_mm: number) =>
      job({
        written: { made: 'd.1', fitted: null },
        spec: { turn_deg: null, overall_length_mm, adapters: [], ends: [] },
      });
    expect(recorded.differs(of(900))).toBe(false);
    expect(recorded.differs(of(950))).toBe(true);
  });

  it('prints its label again with the code it had', () => {
    const { body } = madeEvents(job(), made, tag)[0] ?? {};
    expect(tagOf({ ...body, service: { duties: [], line: 'return' } } as never)).toMatchObject({
      code: tag.code,
      pressure_bar: 206,
      line: 'return',
      proof: { state: 'no-rig' },
      catalogue: 'tables',
    });
  });
});

describe('label sizes', () => {
  it('begin with the device’s own and name each once', () => {
    const sizes = sizesFor({ label_width_mm: 50, label_height_mm: 25, label_dpi: 300 });
    expect(sizes.map((size) => `${size.width_mm}x${size.height_mm}`)).toEqual(['50x25', '60x40', '100x50']);
    expect(sizes.every((size) => size.dpi === 300)).toBe(true);
  });
});

describe('the screen', () => {
  const preview = () => ({ svg: '<svg/>', full_text: true, text: '', module_mm: 0.5, module_dots: 4, left_off: 0 });

  it('gets one code and asks with it from then on', async () => {
    const asked = vi.fn((_: unknown) => made);
    let left: JobDoc | null = null;
    render(Host, {
      of: Tag,
      backend: fake({ make: () => benchSheet(), 'tag.make': asked, 'tag.preview': preview }),
      doc: job(),
      onchange: (next: JobDoc) => (left = next),
    });
    await waitFor(() => expect((left as JobDoc | null)?.code).toBe('7KQ4M-2XR9D-D'));
    await waitFor(() => expect(asked.mock.lastCall?.[0]).toMatchObject({ code: '7KQ4M-2XR9D-D' }));
    expect(screen.getByRole('button', { name: /Save the label and keep the hose/ })).toBeTruthy();
  });

  it('keeps no hose before it is said whether it was proved', async () => {
    render(Host, {
      of: Tag,
      backend: fake({ make: () => benchSheet(), 'tag.make': () => made, 'tag.preview': preview }),
      doc: job({ proof: { state: 'not-proved' } }),
    });
    await waitFor(() => screen.getByRole('button', { name: /Say whether it was proved/ }));
    expect(screen.queryByRole('button', { name: /keep the hose/ })).toBeNull();
  });
});
