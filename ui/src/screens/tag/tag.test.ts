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
import { Recorded } from './recorded.svelte';
import { arc, spans } from './round';

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
  proof_from: 'given' as const,
  notices: [],
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
});

describe('a label round a hose', () => {
  const curve = { cover_od_mm: 20, od_from: 'given' as const, doubt: null, seen_mm: 10 };
  it('goes round by its height where its words run along the hose, and by its width where they run round it', () => {
    const stock = { width_mm: 40, height_mm: 20 };
    const degrees = (mm: number) => (mm / (Math.PI * 20)) * 360;
    expect(spans(stock, { ...curve, direction: 'along' })).toEqual({ label: degrees(20), seen: degrees(10) });
    expect(spans(stock, { ...curve, direction: 'around' }).label).toBeCloseTo(degrees(40));
  });

  it('that covers itself is drawn all round, and an arc is as long as it should be', () => {
    const all = spans({ width_mm: 200, height_mm: 100 }, { ...curve, direction: 'along' });
    expect(all.label).toBe(360);
    expect(arc(50, 50, 10, 180)).toBe('M40.00 50.00A10 10 0 0 1 60.00 50.00');
    expect(arc(0, 0, 10, 270)).toContain('A10 10 0 1 1');
  });
});

describe('the screen', () => {
  const drawn = {
    svg: '<svg/>',
    holds: 'full-text' as const,
    text: '',
    module_mm: 0.5,
    module_dots: 4,
    version: 9,
    level: 'M' as const,
    code_mm: 26.5,
    reads_from_mm: 265,
    left_off: 0,
    curve: null,
    reprint: false,
    sealed: false,
  };
  const preview = () => ({ label: drawn, refused: null });
  const BENCH = { make: () => benchSheet(), 'bench.judge': (asked: unknown) => judge(asked as BenchQuestion) };

  it('gets one code and asks with it from then on', async () => {
    const asked = vi.fn((_: unknown) => made);
    let left: JobDoc | null = null;
    render(Host, {
      of: Tag,
      backend: fake({ ...BENCH, 'tag.make': asked, 'tag.preview': preview }),
      doc: job(),
      onchange: (next: JobDoc) => (left = next),
    });
    await waitFor(() => expect((left as JobDoc | null)?.code).toBe('7KQ4M-2XR9D-D'));
    await waitFor(() => expect(asked.mock.lastCall?.[0]).toMatchObject({ code: '7KQ4M-2XR9D-D' }));
    expect(screen.getByRole('button', { name: /Save the label and keep the hose/ })).toBeTruthy();
  });

  it('keeps the hose with all that was done on the bench, under the code of its tag', async () => {
    const recorded = vi.fn((_: unknown) => ({ code: tag.code, written: 'd.1', said: [] }));
    const labelled = vi.fn((_: unknown) => ({ name: 'label.png', mime: 'image/png' }));
    const ticks = { cut: { at: '2026-11-25T10:00:00.000Z', by: 'p' } };
    const proving = { rig: true, pressure_bar: 412, hold_s: 40, gauge: 'G1', calibrated: '2026-03-01' };
    let left: JobDoc | null = null;
    render(Host, {
      of: Tag,
      backend: fake({
        make: () => benchSheet(),
        'tag.make': () => made,
        'tag.preview': preview,
        'tag.label': labelled,
        'tag.of': () => ({ tag: { ...tag, pressure_bar: 205 }, text: '', reprint: false }),
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
    // The label is that of the record, and comes after it.
    expect(recorded.mock.invocationCallOrder[0]).toBeLessThan(labelled.mock.invocationCallOrder[0] ?? 0);
    expect(labelled.mock.lastCall?.[0]).toMatchObject({ tag: { pressure_bar: 205 } });
  });

  it.each([
    [
      'while a crimp is open, and leads to the step in hand',
      { why_not: ['crimp-b'], tag: false },
      [],
      /Finish it on the bench/,
    ],
    [
      'before it is said whether it was proved',
      {},
      ['fetch-parts', 'cut', 'crimp.A', 'measure-crimp.A', 'measure-length'],
      /Say whether it was proved/,
    ],
  ] as const)('keeps no hose and shows no label %s', async (_, over, ticked, arrow) => {
    const ticks = Object.fromEntries(ticked.map((name) => [name, { at: '2026-11-25T10:00:00.000Z', by: null }]));
    render(Host, {
      of: Tag,
      backend: fake({
        ...BENCH,
        'bench.judge': (asked) => ({ ...judge(asked as BenchQuestion), ...over }) as never,
        'tag.make': () => made,
        'tag.preview': preview,
      }),
      doc: job({ proof: { state: 'not-proved' }, ticks }),
    });
    await screen.findByRole('button', { name: arrow });
    expect(screen.getByText('NOT FINISHED')).toBeTruthy();
    expect(screen.getByText(/The proof is neither done/)).toBeTruthy();
    for (const way of [/keep the hose/, /Save as/, /^Print/, /Share/, /by hand/])
      expect(screen.queryByRole('button', { name: way })).toBeNull();
    expect(screen.queryByRole('img', { name: /^Label of/ })).toBeNull();
  });

  it('says why a stock has no room, and offers the one of the user’s own that has', async () => {
    const label = vi.fn((_: unknown) => preview());
    const refused = {
      case: 'too-small' as const,
      doubt: null,
      why: 'It has no room.',
      instead: '',
      would_do: [],
      needed_height_mm: null,
    };
    render(Host, {
      of: Tag,
      backend: fake({
        make: () => benchSheet(),
        'tag.make': () => made,
        'tag.preview': (asked) =>
          (asked as { cover_od_mm?: number }).cover_od_mm === 30 ? label(asked) : { label: null, refused },
        'bench.judge': (asked) => judge(asked as BenchQuestion),
      }),
      doc: job(),
    });
    await waitFor(() => screen.getByText(/It has no room/));
    expect(screen.queryByRole('button', { name: /Save the label and keep/ })).toBeNull();
    expect(screen.getByText(/None of your labels would do/)).toBeTruthy();
    expect(label).not.toHaveBeenCalled();
  });
});
