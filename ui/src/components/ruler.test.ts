import { render, screen, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import Ruler from './Ruler.svelte';
import { rulerRows, rulerSpan, type Candidate } from './ruler';

const candidate = (
  id: string,
  probability: number,
  band: readonly [number, number] | null = [20.2, 20.7],
): Candidate => ({
  id,
  name: `family ${id}`,
  size: '-10',
  seat: { angleDeg: 74, cone: 'concave' },
  band,
  probability,
});

describe('the ruler', () => {
  it('puts the likeliest first and none of these last, however likely that is', () => {
    const rows = rulerRows([candidate('a', 0.1), candidate('b', 0.3)], 0.6);
    expect(rows.map((row) => (row.kind === 'none' ? 'none' : row.candidate.id))).toEqual(['b', 'a', 'none']);
  });

  it('spans every band and the reading with its error', () => {
    const span = rulerSpan([candidate('a', 1, [20.2, 20.7])], { value: 21, error: 0.8 });
    expect(span?.[0]).toBeLessThan(20.2);
    expect(span?.[1]).toBeGreaterThan(21.8);
    expect(rulerSpan([candidate('a', 1, null)], null), 'nothing to draw a scale of').toBeNull();
  });

  it('shows every candidate with its probability, and a missing band in words', () => {
    render(Ruler, {
      candidates: [candidate('a', 0.6), candidate('b', 0.396, null)],
      unknown: 0.004,
      reading: { value: 20.6, error: 0.1 },
    });
    const rows = within(screen.getByRole('list')).getAllByRole('listitem');
    expect(rows.map((row) => row.textContent?.replace(/\s+/g, ' ').trim())).toEqual([
      'family a -10 60%',
      'family b -10 no table value 40%',
      expect.stringMatching(/^none of these.*<1%$/),
    ]);
  });
});
