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

/** The one way to the use cases. Nothing else in the ui reaches outside it. */
export interface Backend {
  /** Calls a use case by its name. `bytes` go and come as bytes, beside the document, never inside it. */
  call<T>(name: string, input: unknown, bytes?: Uint8Array): Promise<Reply<T>>;
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
