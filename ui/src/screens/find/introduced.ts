// Which part is in hand, why now, and what stands already: said where a part is begun.
import { say } from '../../words/words';
import { isMate, roleOf, type Half } from './keys';
import { partName } from './say';
import type { Session } from './session.svelte';
import { candidateName } from './tables';

/** What is said at the first reading of the part in hand. */
export function introduced(session: Session): string {
  const { half } = session;
  const role = roleOf(half);
  if (role !== null && isMate(half)) {
    const why = say('find-mate-why');
    return session.settled(role) ? why : `${say('find-mate-open', { role })} ${why}`;
  }
  if (half === 'A') return say('find-begin-a');
  const before: Half[] = half === 'B' ? ['A'] : ['A', 'B'];
  const told = session.answered ? before.map((part) => toldOf(session, part)) : [];
  return [...told, say(half === 'B' ? 'find-begin-b' : 'find-begin-hose')].join(' ');
}

function toldOf(session: Session, half: Half): string {
  const part = partName(half);
  const first = session.first(half);
  if (first && session.settled(half)) return say('find-begin-settled', { part, name: candidateName(first) });
  return say('find-begin-open', { part });
}
