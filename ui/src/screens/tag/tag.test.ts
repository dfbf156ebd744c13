import { render, screen, waitFor } from '@testing-library/svelte';
import { describe, expect, it, vi } from 'vitest';
import { fake } from '../../backend/fake';
import type { TagContent } from '../../backend/types';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import { benchSheet } from '../make/bench.fixture';
import Host from '../make/Host.fixture.svelte';
import Tag from './Tag.svelte';
import { sizesFor } from './sizes';
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
