// The one thing to do next with a hose.
import type { Hose, Stay } from '../../backend/types';

export type Next =
  /** It sits somewhere and is to be replaced there. */
  | { do: 'replace'; stay: Stay }
  /** It is made and sits nowhere. */
  | { do: 'fit' }
  /** It failed: only another like it is made. */
  | { do: 'again' }
  /** Its tag counts no more, or nobody knows yet what it is. */
  | { do: 'nothing' };

/** What is next, by where it stands in its life. */
export function nextOf(hose: Hose): Next {
  const last = hose.stays.at(-1);
  switch (hose.status.state) {
    case 'fitted': {
      const stay = hose.stays.findLast((one) => one.off === null && one.off_date === null) ?? last;
      return stay ? { do: 'replace', stay } : { do: 'nothing' };
    }
    case 'made':
      return hose.assembly ? { do: 'fit' } : { do: 'nothing' };
    case 'taken-off':
      if (!hose.assembly) return { do: 'nothing' };
      return hose.stays.some((stay) => stay.cause !== null) ? { do: 'again' } : { do: 'fit' };
    case 'withdrawn':
      return { do: 'nothing' };
  }
}
