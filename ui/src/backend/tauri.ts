import { invoke } from '@tauri-apps/api/core';
import { callError, type Answer, type Backend, type CommandName, type Question, type Reply } from './backend';
import { pack, unpack } from './frame';

/** The use cases inside the program's own shell. */
export const tauri: Backend = {
  async call<N extends CommandName>(name: N, input: Question<N>, bytes?: Uint8Array): Promise<Reply<Answer<N>>> {
    try {
      const answer = await invoke<unknown>('call', bytes ? pack({ name, input }, bytes) : { name, input });
      if (!(answer instanceof ArrayBuffer)) return { ok: true, value: answer as Answer<N>, bytes: new Uint8Array() };
      const frame = unpack(answer);
      return { ok: true, value: frame.document as Answer<N>, bytes: frame.bytes };
    } catch (cause) {
      return { ok: false, error: callError(cause) };
    }
  },
  async save(name: string, bytes: Uint8Array): Promise<Reply<string>> {
    try {
      const where = await invoke<string>('save', pack({ name }, bytes));
      return { ok: true, value: where, bytes: new Uint8Array() };
    } catch (cause) {
      return { ok: false, error: callError(cause) };
    }
  },
};
