import { afterEach, describe, expect, it, vi } from 'vitest';
import { callError } from './backend';
import { pack, unpack } from './frame';
import { loopback } from './loopback';

const invoke = vi.hoisted(() => vi.fn());
vi.mock('@tauri-apps/api/core', () => ({ invoke }));
const { tauri } = await import('./tauri');

const photo = new Uint8Array([0xff, 0xd8, 0, 1, 2, 255]);

afterEach(() => {
  vi.unstubAllGlobals();
  invoke.mockReset();
});

describe('a frame', () => {
  it('carries a document and bytes unchanged', () => {
    const frame = unpack(pack({ name: 'Länge', mm: 20.6 }, photo).buffer);
    expect(frame.document).toEqual({ name: 'Länge', mm: 20.6 });
    expect(frame.bytes).toEqual(photo);
  });

  it('that is cut short is refused', () => {
    expect(() => unpack(new ArrayBuffer(2))).toThrow(/cut short/);
    expect(() => unpack(pack({ a: 1 }, photo).buffer.slice(0, 6))).toThrow(/cut short/);
  });
});

describe('over loopback', () => {
  const answer = (body: BodyInit, type: string, status = 200) => {
    const fetch = vi.fn(
      async (_path: string, _init: RequestInit) => new Response(body, { status, headers: { 'content-type': type } }),
    );
    vi.stubGlobal('fetch', fetch);
    return fetch;
  };

  it('a call is a document with the run’s token', async () => {
    location.hash = '#token=secret';
    const fetch = answer('{"settled":true}', 'application/json');
    expect(await loopback.call('find', { ends: [], mates: [] })).toEqual({
      ok: true,
      value: { settled: true },
      bytes: new Uint8Array(),
    });
    const [path, init] = fetch.mock.calls[0] ?? [];
    expect(path).toBe('/api/find');
    expect(init).toMatchObject({
      method: 'POST',
      body: '{"ends":[],"mates":[]}',
      headers: { 'x-hosewright-token': 'secret' },
    });
    expect(location.hash, 'the token does not stay in the address').toBe('');
  });

  it('bytes go and come as bytes', async () => {
    const fetch = answer(pack({ code: '7KQ4M' }, photo), 'application/octet-stream');
    const reply = await loopback.call('tag.read', { raw: false }, photo);
    expect(reply).toEqual({ ok: true, value: { code: '7KQ4M' }, bytes: photo });
    const sent = fetch.mock.calls[0]?.[1].body as Uint8Array<ArrayBuffer>;
    expect(unpack(sent.buffer).bytes).toEqual(photo);
  });

  it('an error comes with its code, field and message', async () => {
    answer('{"error":{"code":"input","field":"ends[0].tpi","message":"tpi must be above 0"}}', 'application/json', 400);
    expect(await loopback.call('find', { ends: [], mates: [] })).toEqual({
      ok: false,
      error: { code: 'input', field: 'ends[0].tpi', message: 'tpi must be above 0' },
    });
  });

  it('no answer is an error, not an exception', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('connection refused')));
    expect(await loopback.call('find', { ends: [], mates: [] })).toEqual({
      ok: false,
      error: { code: 'unreachable', field: '', message: 'connection refused' },
    });
  });
});

describe('in the shell', () => {
  it('a call is one command with name and input', async () => {
    invoke.mockResolvedValue({ due: 9 });
    expect(await tauri.call('register.due', { on: '2026-11-25' })).toEqual({
      ok: true,
      value: { due: 9 },
      bytes: new Uint8Array(),
    });
    expect(invoke).toHaveBeenCalledWith('call', { name: 'register.due', input: { on: '2026-11-25' } });
  });

  it('bytes go and come as one frame', async () => {
    invoke.mockResolvedValue(pack({ code: '7KQ4M' }, photo).buffer);
    expect(await tauri.call('tag.read', { raw: true }, photo)).toEqual({
      ok: true,
      value: { code: '7KQ4M' },
      bytes: photo,
    });
    const [, sent] = invoke.mock.calls[0] as [string, Uint8Array<ArrayBuffer>];
    expect(unpack(sent.buffer).document).toEqual({ name: 'tag.read', input: { raw: true } });
  });

  it('an error comes with its code', async () => {
    invoke.mockRejectedValue({ code: 'nothing', field: '', message: 'no such tag' });
    expect(await tauri.call('register.show', { code: '7KQ4M2XR9DD' })).toEqual({
      ok: false,
      error: { code: 'nothing', field: '', message: 'no such tag' },
    });
  });
});

describe('an error', () => {
  it('of any other shape is still one that can be shown', () => {
    expect(callError('boom')).toEqual({ code: 'unreachable', field: '', message: 'boom' });
    expect(callError({ code: 'teapot', message: 'x' }).code).toBe('unreachable');
  });
});
