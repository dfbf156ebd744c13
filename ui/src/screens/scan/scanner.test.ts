import { expect, it, vi } from 'vitest';
import { fake } from '../../backend/fake';
import type { Backend } from '../../backend';
import type { Scan, TagContent } from '../../backend/types';
import { asRecord } from './carried';
import { Scanner } from './scanner.svelte';

const tag: TagContent = {
  code: '7KQ4M-2XR9D-D',
  spec: { ends: [], overall_length_mm: 1240 },
  proof: { state: 'proved', pressure_bar: 412 },
  assembled: '2026-11',
  catalogue: 'tables',
};
const scan = (some: Partial<Scan>): Scan => ({ code: null, text: '', problem: null, ...some });

/** Reads those codes off any picture; the register knows no hose. */
function reading(codes: Scan[]): Backend {
  return fake({ 'tag.read': () => ({ codes }) });
}

function scannerOver(backend: Backend) {
  const onhose = vi.fn();
  return { scanner: new Scanner(backend, onhose), onhose };
}

it('opens a hose that the register knows', async () => {
  const backend = fake({ 'register.show': () => ({ code: tag.code }), 'tag.read': () => ({ codes: [scan(tag)] }) });
  const { scanner, onhose } = scannerOver(backend);
  await scanner.photo(new Blob());
  expect(onhose).toHaveBeenCalledWith(tag.code);
});

it('shows what a tag carries that the register does not know, and a code alone as unknown', async () => {
  const whole = scannerOver(reading([scan(tag)])).scanner;
  await whole.photo(new Blob());
  expect(whole.result).toMatchObject({ kind: 'foreign', tag: { code: tag.code } });
  const alone = scannerOver(reading([scan({ code: tag.code })])).scanner;
  await alone.photo(new Blob());
  expect(alone.result).toMatchObject({ kind: 'unknown', code: tag.code });
});

it('tells a code of something else, no code, and several tags apart; the picture stays', async () => {
  const other = scannerOver(reading([scan({ text: 'a menu', problem: 'no tag' })])).scanner;
  await other.photo(new Blob());
  expect(other.result).toEqual({ kind: 'other', text: 'a menu', why: 'no tag' });
  expect(other.picture).not.toBeNull();
  const none = scannerOver(fake()).scanner;
  await none.photo(new Blob());
  expect(none.result).toEqual({ kind: 'unread', why: null });
  const two = scannerOver(reading([scan(tag), scan({ code: 'AJYSQ-PMMW8-9' })])).scanner;
  await two.photo(new Blob());
  expect(two.result?.kind).toBe('which');
});

it('a frame without a code leaves the camera looking', async () => {
  expect(await scannerOver(fake()).scanner.frame(new Blob())).toBe(false);
});

it('offers the one hose whose code fits the letters that can be read', async () => {
  const backend = fake({
    'register.search': () => ({
      hits: [
        { what: 'hose', code: '7KQ4M-2XR9D-D', at: null },
        { what: 'hose', code: '7KQ4M-2XS9D-8', at: null },
      ],
    }),
  });
  const { scanner } = scannerOver(backend);
  await scanner.type('7KQ4M2X');
  expect(scanner.fits).toHaveLength(2);
  await scanner.type('7KQ4M2XR?');
  expect(scanner.fits.map((fit) => fit.code)).toEqual(['7KQ4M-2XR9D-D']);
});

it('keeps a foreign hose as made elsewhere, no younger than its month, its proof as a remark', () => {
  const [made, remark] = asRecord(tag, 'program').map((event) => event.body);
  expect(made).toMatchObject({ assembled: '2026-11-01', proof: { state: 'not-proved', why: 'made-elsewhere' } });
  expect(remark).toMatchObject({ kind: 'noted', about: { hose: tag.code }, text: expect.stringContaining('412') });
});
