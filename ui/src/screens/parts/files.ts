import type { Backend, CallError, Reply } from '../../backend';
import type { FileMade } from '../../backend/types';

/** Where a file was left, or why it was not. */
export type Left = { where: string; bytes: number } | { problem: CallError };

/** Leaves a file that a use case made where the person finds it. */
export async function leave(backend: Backend, made: Reply<FileMade>, name?: string): Promise<Left> {
  if (!made.ok) return { problem: made.error };
  const saved = await backend.save(name ?? made.value.name, made.bytes, made.value.mime);
  return saved.ok ? { where: saved.value, bytes: made.bytes.length } : { problem: saved.error };
}

/**
 * What was chosen in a file field, which is empty after: the same file again is a new choice. At once, for what is done
 * with the file may close the screen.
 */
export function taken({ currentTarget: field }: { currentTarget: HTMLInputElement }): File | undefined {
  const file = field.files?.[0];
  field.value = '';
  return file;
}

export async function bytesOf(file: Blob): Promise<Uint8Array> {
  return new Uint8Array(await file.arrayBuffer());
}
