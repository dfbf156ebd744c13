import type { Commands, JsonValue } from './types';

/**
 * Why a call gave no answer. `field` is what it is about, `message` says what was wrong and what would
 * be right. `unreachable` is ours: the other side did not answer, or not in this language.
 */
export interface CallError {
  code: 'input' | 'nothing' | 'file' | 'unreachable';
  field: string;
  message: string;
}

/** An answer, with the bytes that came with it (a picture, a paper), or the error. Never thrown. */
export type Reply<T> = { ok: true; value: T; bytes: Uint8Array } | { ok: false; error: CallError };

/** The use cases by name. */
export type CommandName = keyof Commands;
export type Question<N extends CommandName> = Given<Commands[N]['input']>;
export type Answer<N extends CommandName> = Commands[N]['output'];

/** A question as it may be asked: what may be unknown may be left out. */
export type Given<T> = JsonValue extends T
  ? T
  : T extends readonly unknown[]
    ? { [K in keyof T]: Given<T[K]> }
    : T extends object
      ? { [K in keyof T as null extends T[K] ? never : K]: Given<T[K]> } & {
          [K in keyof T as null extends T[K] ? K : never]?: Given<T[K]>;
        }
      : T;

/** The one way to the use cases. Nothing else in the ui reaches outside it. */
export interface Backend {
  /** Calls a use case by its name. `bytes` go and come as bytes, beside the document, never inside it. */
  call<N extends CommandName>(name: N, input: Question<N>, bytes?: Uint8Array): Promise<Reply<Answer<N>>>;
  /** Leaves a file where the person finds it, and tells where. */
  save(name: string, bytes: Uint8Array, mime: string): Promise<Reply<string>>;
}

/** An error as it came, whatever it is, as one we can show. */
export function callError(cause: unknown): CallError {
  if (typeof cause === 'object' && cause !== null && 'code' in cause && 'message' in cause) {
    const { code, message } = cause;
    const field = 'field' in cause && typeof cause.field === 'string' ? cause.field : '';
    if (code === 'input' || code === 'nothing' || code === 'file') return { code, field, message: String(message) };
  }
  return { code: 'unreachable', field: '', message: cause instanceof Error ? cause.message : String(cause) };
}
