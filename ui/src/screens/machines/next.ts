// The one thing to do next with a hose.
import type { HoseShown, Status, Stay } from '../../backend/types';
import type { WordId } from '../../words/ids';
import { sitting } from './ages';

export type Next =
  /** It sits somewhere and is to be replaced there. */
  | { do: 'replace'; stay: Stay }
  /** It is made and sits nowhere. */
  | { do: 'fit' }
  /** It failed, in service or its proof: only another like it is made. */
  | { do: 'again' }
  /** Its tag counts no more, nobody knows yet what it is, or its record contradicts itself. */
  | { do: 'nothing' };

/** What is next. A hose that still sits somewhere comes off there first, also where its tag was withdrawn. */
export function nextOf(hose: HoseShown): Next {
  const stay = sitting(hose.stays).at(-1);
  if (stay) return { do: 'replace', stay };
  if (hose.status.state === 'withdrawn' || !hose.assembly || hose.conflicts.length > 0) return { do: 'nothing' };
  if (hose.status.state === 'failed-proof') return { do: 'again' };
  return hose.stays.some(({ cause }) => cause !== null) ? { do: 'again' } : { do: 'fit' };
}

/** Where it stands in its life, where no place tells it. */
export const statusWord: Record<Status['state'], WordId> = {
  made: 'hose-status-made',
  fitted: 'hose-status-fitted',
  'taken-off': 'hose-status-taken-off',
  withdrawn: 'hose-status-withdrawn',
  'failed-proof': 'hose-status-failed-proof',
};
