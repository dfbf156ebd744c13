import { invoke } from '@tauri-apps/api/core';
import { callError, type Backend, type Reply } from './backend';
import { pack, unpack } from './frame';

/** The use cases inside the program's own shell. */
export const tauri: Backend = {
  async call<T>(name: string, input: unknown, bytes?: Uint8Array): Promise<Reply<T>> {
    try {
      const answer = await invoke<unknown>('call', bytes ? pack({ name, input }, bytes) : { name, input });
      if (!(answer instanceof ArrayBuffer)) return { ok: true, value: answer as T, bytes: new Uint8Array() };
      const frame = unpack(answer);
      return { ok: true, value: frame.document as T, bytes: frame.bytes };
    } catch (cause) {
      return { ok: false, error: callError(cause) };
    }
  },
};
