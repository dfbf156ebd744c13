// A link to a tag from outside comes as `#tag=CODE` in the address: the shell puts it there.

import type { Nav } from './nav.svelte';

const TAG = /^#tag=([0-9A-Za-z-]+)$/;

/** Follows the link that stands in the address and those that come later. Answers how to stop. */
export function followLinks(nav: Nav): () => void {
  function follow(): void {
    const typed = TAG.exec(location.hash)?.[1];
    if (typed === undefined) return;
    history.replaceState(history.state, '', location.pathname + location.search);
    nav.go({ at: 'scan', typed });
  }
  follow();
  addEventListener('hashchange', follow);
  return () => removeEventListener('hashchange', follow);
}
