// A paper or label that our core has drawn, on the screen and handed on.
import type { Attachment } from 'svelte/attachments';

/** Draws it in a tree of its own: the lines and words of our drawings are not a paper's. */
export const drawn =
  (svg: string): Attachment<HTMLElement> =>
  (host) => {
    const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
    root.innerHTML = svg;
    const picture = root.querySelector('svg');
    picture?.setAttribute('width', '100%');
    picture?.setAttribute('height', '100%');
  };

/** Whether this device can hand a file of that kind on. */
export function canShare(name: string, type: string): boolean {
  const probe = new File([new Uint8Array(1)], name, { type });
  return typeof navigator.canShare === 'function' && navigator.canShare({ files: [probe] });
}

/** Hands a file on. Put away without sharing is no error. */
export async function share(name: string, bytes: Uint8Array, type: string): Promise<void> {
  const file = new File([new Uint8Array(bytes)], name, { type });
  await navigator.share({ files: [file], title: name }).catch(() => undefined);
}
