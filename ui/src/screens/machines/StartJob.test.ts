import { fireEvent, render, screen } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { fake } from '../../backend/fake';
import type { Again, Draft, PlaceAt } from '../../backend/types';
import type { Failures } from './ages';
import Host from './StartJob.fixture.svelte';
import type { Ground } from './start-job';

const ground = (over: Partial<Ground> = {}): Ground => ({
  at: null,
  replaces: 'AAAAA-AAAAA-0',
  place: null,
  circuit: null,
  assembly: null,
  again: { spec: { hose: { standard: 'EN 853', type: '2SN', dn: 16 }, ends: [] }, service: {} } as unknown as Again,
  ...over,
});
const once: Failures = { times: 1, causes: [{ code: 'ABR', times: 1 }] };
const twice: Failures = { times: 2, causes: [{ code: 'ABR', times: 2 }] };

/** The buttons there are, the arrow by its own words. */
function offered(of: Ground, failed: Failures, unsettled = false, over = false, drafts: Draft[] = []) {
  render(Host, { backend: fake(), ground: of, failed, unsettled, over, drafts });
  return seen();
}

function seen() {
  const buttons = screen.getAllByRole('button');
  return {
    go: buttons.find((one) => one.classList.contains('go'))?.querySelector('b')?.textContent,
    beside: buttons.filter((one) => !one.classList.contains('go')).map((one) => one.querySelector('b')?.textContent),
  };
}

describe('a job at a place', () => {
  it('makes the same again after one failure', () => {
    expect(offered(ground(), once)).toEqual({ go: 'Same for same', beside: ['Measure it'] });
  });

  it('goes on where a job is open at the place already, and begins another only when it is asked for', async () => {
    const at = { place: 'p14', number: 14 } as unknown as PlaceAt;
    const draft = { job: 'j', kept: '', content: { step: 'check', at } } as unknown as Draft;
    const { go, beside } = offered(ground({ at }), once, false, false, [draft]);
    expect({ go, beside }).toEqual({ go: 'Go on with the job begun here', beside: ['Begin another'] });
    expect(screen.getByText('at Check')).toBeTruthy();
    await fireEvent.click(screen.getByRole('button', { name: /^Begin another/ }));
    expect(seen()).toEqual({ go: 'Same for same', beside: ['Measure it'] });
  });

  it('goes the long way first after two, and still offers the same', () => {
    expect(offered(ground(), twice)).toEqual({ go: 'Measure it', beside: ['Same for same'] });
  });

  it('makes the replacement where the place asks too much of what sits there, however often it failed', () => {
    expect(offered(ground(), twice, false, true)).toEqual({ go: 'Make its replacement', beside: ['Measure it'] });
  });

  it('makes no replacement of what is not settled', () => {
    expect(offered(ground(), once, true, true)).toEqual({ go: 'Measure it', beside: [] });
  });

  it('is never the same again while the record contradicts itself', () => {
    expect(offered(ground(), once, true)).toEqual({ go: 'Measure it', beside: [] });
  });

  it('offers to say why the old hose failed and shows what was said; of an empty place it does not ask', async () => {
    const why = { cause: 'ABR', note: 'at the clamp' };
    const tables = () => ({ causes: [{ code: 'ABR', name: 'abrasion', seen: '' }], signs: [] }) as never;
    const told = { backend: fake({ tables }), failed: once, unsettled: false, why, onwhy: () => {} };
    const view = render(Host, { ...told, ground: ground() });
    await screen.findByRole('button', { name: 'Why it failed abrasion' });
    view.unmount();
    render(Host, { ...told, ground: ground({ again: null, replaces: null }) });
    expect(seen().beside).toEqual(['Scan a tag']);
    expect(screen.queryByRole('button', { name: /Why it failed/ })).toBeNull();
  });

  it('is measured where no spec is on record', () => {
    expect(offered(ground({ again: null }), once)).toEqual({ go: 'Measure it', beside: [] });
  });

  it('is fitted by measure or tag where nothing sits and nothing is known', () => {
    expect(offered(ground({ again: null, replaces: null }), once)).toEqual({
      go: 'Fit one here',
      beside: ['Scan a tag'],
    });
  });
});
