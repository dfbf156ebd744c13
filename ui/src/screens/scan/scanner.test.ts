import { expect, it, vi } from 'vitest';
import { fake } from '../../backend/fake';
import type { Backend } from '../../backend';
import type { Scan, TagContent, TagFindingCode, TagJudged, Verdict } from '../../backend/types';
import { lightOf, seen, type CameraFrame } from './camera.svelte';
import { opensAtOnce, wordOf } from './judged';
import { Scanner, wholeTag } from './scanner.svelte';

const tag: TagContent = {
  code: '7KQ4M-2XR9D-D',
  spec: { ends: [], overall_length_mm: 1240 },
  proof: { state: 'proved', pressure_bar: 412 },
  assembled: '2026-11',
  catalogue: 'tables',
};
const scan = (some: Partial<Scan>): Scan => ({ code: null, text: '', problem: null, judged: null, ...some });
const finding = (code: TagFindingCode, verdict: Verdict) => ({ code, verdict, why: code, cure: '' });
const judged = (some: Partial<TagJudged> = {}): TagJudged => ({
  standing: 'own',
  fleet: 'North',
  verdict: 'pass',
  says: 'A tag of North.',
  findings: [],
  known: true,
  at: null,
  adopt: false,
  spec: null,
  ...some,
});

/** Reads those codes off any picture. */
function reading(codes: Scan[]): Backend {
  return fake({ 'tag.read': () => ({ codes }) });
}

function scannerOver(backend: Backend, place: string | null = null) {
  const onhose = vi.fn();
  return { scanner: new Scanner(backend, onhose, () => place), onhose };
}

it('opens a hose that the register knows, with what its tag was found to be', async () => {
  const { scanner, onhose } = scannerOver(reading([scan({ ...tag, judged: judged() })]));
  await scanner.photo(new Blob());
  expect(onhose).toHaveBeenCalledWith(tag.code, 'A tag of North.');
});

it('says first what is to be said before a hose is opened, and passes over what its sheet says too', async () => {
  const there = [finding('not-proved', 'caution'), finding('sits', 'pass')];
  expect(opensAtOnce(judged({ verdict: 'caution', findings: there }))).toBe(true);
  for (const [code, verdict] of [
    ['withdrawn', 'stop'],
    ['fitted-elsewhere', 'stop'],
    ['altered', 'stop'],
    ['seal-missing', 'caution'],
  ] as const) {
    const { scanner, onhose } = scannerOver(
      reading([scan({ ...tag, judged: judged({ verdict, findings: [finding(code, verdict)] }) })]),
    );
    await scanner.photo(new Blob());
    expect(onhose, code).not.toHaveBeenCalled();
    expect(scanner.result, code).toMatchObject({ kind: 'tag', scan: { code: tag.code } });
  }
});

it('names a tag by what stops it, or else by whose it is', () => {
  const word = (some: Partial<TagJudged>) => wordOf(judged(some));
  expect(word({})).toBe('YOUR FLEET’S');
  expect(word({ standing: 'foreign', findings: [finding('not-known', 'caution')] })).toBe('A STRANGER’S');
  expect(word({ findings: [finding('withdrawn', 'stop'), finding('not-proved', 'caution')] })).toBe('WITHDRAWN');
  expect(word({ standing: 'altered', findings: [finding('altered', 'stop')] })).toBe('ALTERED');
});

it('shows what a tag carries that the register does not know, and nothing of one that was altered', async () => {
  const whole = scannerOver(reading([scan({ ...tag, judged: judged({ known: false, adopt: true }) })])).scanner;
  await whole.photo(new Blob());
  expect(whole.result).toMatchObject({ kind: 'tag', scan: { judged: { adopt: true } } });
  expect(wholeTag(scan(tag))).toEqual({
    ...tag,
    pressure_bar: undefined,
    line: undefined,
    fluid: undefined,
    duties: undefined,
  });
  const altered = scannerOver(reading([scan({ judged: judged({ standing: 'altered', known: false }) })])).scanner;
  await altered.photo(new Blob());
  expect(altered.result).toMatchObject({ kind: 'tag', scan: { code: null } });
  expect(wholeTag(scan({ code: tag.code }))).toBeNull();
});

it('tells a code of something else, no code, and several tags apart; the picture stays', async () => {
  const other = scannerOver(reading([scan({ text: 'a menu', problem: 'no tag' })])).scanner;
  await other.photo(new Blob());
  expect(other.result).toEqual({ kind: 'other', text: 'a menu', why: 'no tag' });
  expect(other.picture).not.toBeNull();
  const none = scannerOver(fake()).scanner;
  await none.photo(new Blob());
  expect(none.result).toEqual({ kind: 'unread', why: null });
  const both = [scan({ ...tag, judged: judged() }), scan({ code: 'AJYSQ-PMMW8-9', judged: judged() })];
  const two = scannerOver(reading(both)).scanner;
  await two.photo(new Blob());
  expect(two.result?.kind).toBe('which');
});

const frame: CameraFrame = { width: 2, height: 1, light: new Uint8Array([0, 255]), picture: async () => new Blob() };

it('a frame without a code leaves the camera looking', async () => {
  expect(await scannerOver(fake()).scanner.frame(frame)).toBe(false);
});

it('a frame goes to the reader as it is, with its size, and stays on the screen once something was read', async () => {
  const backend = reading([scan({ text: 'a menu', problem: 'no tag' })]);
  const call = vi.spyOn(backend, 'call');
  const { scanner } = scannerOver(backend, 'p1');
  expect(await scanner.frame(frame)).toBe(true);
  expect(call.mock.calls).toEqual([
    ['tag.read', { raw: true, frame: { width: 2, height: 1 }, place: 'p1' }, frame.light],
  ]);
  expect(scanner.result).toMatchObject({ kind: 'other' });
  expect(scanner.picture).not.toBeNull();
});

it('the light of a colour is what the eye makes of it, and a pixel is one byte', () => {
  const pixels = [255, 255, 255, 255, 0, 0, 0, 255, 255, 0, 0, 255, 0, 255, 0, 255, 0, 0, 255, 255];
  // 0.299, 0.587 and 0.114 of 255 (ITU-R BT.601), to a grey.
  const light = [...lightOf(new Uint8ClampedArray(pixels))];
  for (const [at, wanted] of [255, 0, 76, 150, 29].entries()) expect(light[at]).toBeCloseTo(wanted, -0.5);
});

it('says at which place the person stands, and nothing where nobody said', async () => {
  const asked = vi.fn((_: unknown) => ({ codes: [] }));
  await scannerOver(fake({ 'tag.read': asked }), 'p1').scanner.photo(new Blob());
  await scannerOver(fake({ 'tag.read': asked })).scanner.photo(new Blob());
  expect(asked.mock.calls).toEqual([[{ raw: true, place: 'p1' }], [{ raw: true }]]);
});

it('a typed code is opened as a tag that was read, and a wrong one is said to be wrong', async () => {
  const asked = vi.fn((_: unknown) => scan({ code: tag.code, judged: judged() }));
  const { scanner, onhose } = scannerOver(fake({ 'tag.open': asked }));
  await scanner.type('7KQ4M2XR9DD');
  expect(asked).toHaveBeenCalledWith({ code: tag.code });
  expect(onhose).toHaveBeenCalledWith(tag.code, 'A tag of North.');
  const wrong = scannerOver(fake()).scanner;
  await wrong.type('7KQ4M2XR9D0');
  expect(wrong.wrong).not.toBeNull();
});

it('offers the one hose whose code fits the letters that can be read', async () => {
  const backend = fake({
    'register.search': () => ({
      hits: [
        { what: 'hose', code: '7KQ4M-2XR9D-D', at: null, unsettled: false },
        { what: 'hose', code: '7KQ4M-2XS9D-8', at: null, unsettled: false },
      ],
    }),
  });
  const { scanner } = scannerOver(backend);
  await scanner.type('7KQ4M2X');
  expect(scanner.fits).toHaveLength(2);
  await scanner.type('7KQ4M2XR?');
  expect(scanner.fits.map((fit) => fit.code)).toEqual(['7KQ4M-2XR9D-D']);
});

it('looks at the whole picture and at its middle, as sharp as the camera gives it', () => {
  expect(seen(1280, 960, 'whole')).toEqual([0, 0, 1280, 960]);
  expect(seen(1280, 960, 'middle')).toEqual([320, 240, 640, 480]);
  expect(seen(960, 1280, 'middle')).toEqual([240, 320, 480, 640]);
  expect(seen(640, 480, 'middle'), 'there is nothing sharper').toEqual([0, 0, 640, 480]);
});
