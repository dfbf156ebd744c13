import { fireEvent, render, screen, waitFor } from '@testing-library/svelte';
import { describe, expect, it, vi } from 'vitest';
import { fake } from '../../backend/fake';
import type { Finding, HoseOverride, TagContent } from '../../backend/types';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import type { BenchQuestion } from '../make/bench';
import { benchSheet, judge } from '../make/bench.fixture';
import Host from '../make/Host.fixture.svelte';
import Tag from './Tag.svelte';
import { takenOn } from './taken-on';
import { corrected } from './tagging.svelte';
import { tagOf } from './again';
import { Recorded } from './recorded.svelte';
import { sizesFor } from './sizes';

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
        written: { made: 'd.1', taken: true, fitted: null },
        spec: { turn_deg: null, overall_length_mm, adapters: [], ends: [] },
      });
    expect(recorded.differs(of(900))).toBe(false);
    expect(recorded.differs(of(950))).toBe(true);
  });

  it('is corrected on what stands there, with what was done on the bench', () => {
    const stands = {
      version: 'd.1',
      code: tag.code,
      bench: { settings: [] },
      proof: { state: 'not-proved', why: 'no-rig' },
    };
    const [event] = corrected(job(), made, { ...tag, spec: { ends: [], overall_length_mm: 950 } }, stands as never);
    expect(event).toMatchObject({
      builds_on: ['d.1'],
      body: {
        kind: 'assembly-made',
        code: tag.code,
        bench: stands.bench,
        spec: { overall_length_mm: 950 },
        verdict: 'pass',
      },
    });
  });

  it('prints its label again with the code it had', () => {
    const assembly = { ...tag, service: { duties: [], line: 'return' }, proof: { state: 'not-proved', why: 'no-rig' } };
    expect(tagOf(assembly as never)).toMatchObject({
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

  it('keeps the hose with all that was done on the bench, under the code of its tag', async () => {
    const recorded = vi.fn((_: unknown) => ({ code: tag.code, written: 'd.1', said: [] }));
    const ticks = { cut: { at: '2026-11-25T10:00:00.000Z', by: 'p' } };
    const proving = { rig: true, pressure_bar: 412, hold_s: 40, gauge: 'G1', calibrated: '2026-03-01' };
    let left: JobDoc | null = null;
    render(Host, {
      of: Tag,
      backend: fake({
        make: () => benchSheet(),
        'tag.make': () => made,
        'tag.preview': preview,
        'tag.label': () => ({ name: 'label.png', mime: 'image/png' }),
        'bench.judge': (asked) => judge(asked as BenchQuestion),
        'bench.record': recorded,
      }),
      doc: job({ ticks, proving, proof: { state: 'proved', pressure_bar: 412 }, crimps: { A: [28.5], B: [] } }),
      onchange: (next: JobDoc) => (left = next),
    });
    await fireEvent.click(await screen.findByRole('button', { name: /Save the label and keep the hose/ }));
    await waitFor(() => expect((left as JobDoc | null)?.written.made).toBe('d.1'));
    expect(recorded.mock.lastCall?.[0]).toMatchObject({
      code: tag.code,
      assembled: tag.assembled,
      bench: {
        crimps: [
          { role: 'A', readings_mm: [28.5], instrument: { error_mm: 0.1 } },
          { role: 'B', readings_mm: [] },
        ],
        proof: { rig: true, pressure_bar: 412, hold_s: 40, gauge: 'G1', gauge_calibrated: '2026-03-01' },
        steps: [{ code: 'cut', role: null, by: 'p' }],
      },
    });
    await waitFor(() => expect((left as JobDoc | null)?.step).toBe('fit'));
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
