// Which machines a round goes to: those with most that falls due first.
import type { DueLine, MachineId } from '../../backend/types';
import { daysUntil } from '../due/due';

/** A machine that may be visited, and how many of its hoses fall due in the time looked at. */
export interface Visit {
  machine: MachineId;
  name: string;
  site: string;
  due: number;
}

/** The machines with hoses whose service life ends in so many days, or has ended; those with most first. */
export function visitsOf(list: readonly DueLine[], on: string, days: number): Visit[] {
  const visits = new Map<MachineId, Visit>();
  for (const { at, what, due } of list) {
    if (what !== 'service' || !at?.machine || due === null || daysUntil(due, on) > days) continue;
    const known = visits.get(at.machine);
    if (known) known.due += 1;
    else visits.set(at.machine, { machine: at.machine, name: at.machine_name ?? '', site: at.site_name ?? '', due: 1 });
  }
  return [...visits.values()].sort((one, other) => other.due - one.due || one.name.localeCompare(other.name));
}

/** The machines of the site with most to do: what one round can hold. */
export function firstRound(visits: readonly Visit[]): MachineId[] {
  const sums = new Map<string, number>();
  for (const { site, due } of visits) sums.set(site, (sums.get(site) ?? 0) + due);
  const [site] = [...sums].sort(([, one], [, other]) => other - one)[0] ?? [];
  return visits.filter((one) => one.site === site).map(({ machine }) => machine);
}
