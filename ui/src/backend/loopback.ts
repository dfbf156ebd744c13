import { callError, type Answer, type Backend, type CommandName, type Question, type Reply } from './backend';
import { pack, unpack } from './frame';

const FRAME = 'application/octet-stream';
const TOKEN = 'hosewright-token';

/** The run's token comes in the address's fragment, which no server sees, and outlives a reload. */
function token(): string {
  const given = new URLSearchParams(location.hash.slice(1)).get('token');
  if (given) {
    sessionStorage.setItem(TOKEN, given);
    history.replaceState(null, '', location.pathname + location.search);
  }
  return sessionStorage.getItem(TOKEN) ?? '';
}

/** The call before: the service answers one at a time, and a connection beside one in use may never be heard. */
let before: Promise<unknown> = Promise.resolve();

async function answerOf<N extends CommandName>(
  name: N,
  input: Question<N>,
  bytes?: Uint8Array,
): Promise<Reply<Answer<N>>> {
  try {
    const answer = await fetch(`/api/${name}`, {
      method: 'POST',
      headers: { 'content-type': bytes ? FRAME : 'application/json', 'x-hosewright-token': token() },
      body: bytes ? pack(input, bytes) : JSON.stringify(input),
    });
    if (!answer.ok) {
      const body: unknown = await answer.json();
      const error = typeof body === 'object' && body !== null && 'error' in body ? body.error : body;
      return { ok: false, error: callError(error) };
    }
    if (!answer.headers.get('content-type')?.startsWith(FRAME)) {
      return { ok: true, value: (await answer.json()) as Answer<N>, bytes: new Uint8Array() };
    }
    const frame = unpack(await answer.arrayBuffer());
    return { ok: true, value: frame.document as Answer<N>, bytes: frame.bytes };
  } catch (cause) {
    return { ok: false, error: callError(cause) };
  }
}

/** The use cases over loopback HTTP: for development and browser tests, not in the built program. */
export const loopback: Backend = {
  call<N extends CommandName>(name: N, input: Question<N>, bytes?: Uint8Array): Promise<Reply<Answer<N>>> {
    // How far a call is, is asked while it goes on.
    if (name.startsWith('work.')) return answerOf(name, input, bytes);
    const answer = before.then(() => answerOf(name, input, bytes));
    before = answer;
    return answer;
  },
  /** The browser's own way: into its downloads. */
  async save(name: string, bytes: Uint8Array, mime: string): Promise<Reply<string>> {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: mime }));
    link.download = name;
    link.click();
    URL.revokeObjectURL(link.href);
    return { ok: true, value: name, bytes: new Uint8Array() };
  },
};
