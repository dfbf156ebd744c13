// Whether a page goes on under its foot, so that nothing is cut off there without a sign.
import type { Attachment } from 'svelte/attachments';

/** So little of a page may lie under the foot unsaid: its own padding. */
const PADDING = 8;

/** Tells, now and after each change, whether the scroller goes on below what is seen. */
export const below =
  (tell: (more: boolean) => void): Attachment<HTMLElement> =>
  (scroller) => {
    const look = () => tell(scroller.scrollHeight - scroller.scrollTop - scroller.clientHeight > PADDING);
    const size = new ResizeObserver(look);
    size.observe(scroller);
    const content = new MutationObserver(look);
    content.observe(scroller, { childList: true, subtree: true, characterData: true, attributes: true });
    scroller.addEventListener('scroll', look, { passive: true });
    look();
    return () => {
      size.disconnect();
      content.disconnect();
      scroller.removeEventListener('scroll', look);
    };
  };
