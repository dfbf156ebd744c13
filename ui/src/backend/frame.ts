// A document and bytes in one body: the length of the JSON in four bytes, little-endian, the JSON in
// UTF-8, then the bytes as they are. Used both ways where there are bytes; a call without is plain JSON.

const HEAD = 4;

/** Packs a document and its bytes. */
export function pack(document: unknown, bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const json = new TextEncoder().encode(JSON.stringify(document));
  const frame = new Uint8Array(HEAD + json.length + bytes.length);
  new DataView(frame.buffer).setUint32(0, json.length, true);
  frame.set(json, HEAD);
  frame.set(bytes, HEAD + json.length);
  return frame;
}

/** Takes a frame apart. Throws where it is none. */
export function unpack(buffer: ArrayBuffer): { document: unknown; bytes: Uint8Array } {
  const length = buffer.byteLength >= HEAD ? new DataView(buffer).getUint32(0, true) : Infinity;
  if (HEAD + length > buffer.byteLength) throw new Error('the answer is cut short');
  const json = new TextDecoder('utf-8', { fatal: true }).decode(new Uint8Array(buffer, HEAD, length));
  return { document: JSON.parse(json), bytes: new Uint8Array(buffer, HEAD + length) };
}
