// What was written down by mistake: a fitting, and with it that another hose came off for it; an inspection.
import type { DueLine, EventRef, HoseInspection, Stay } from '../../backend/types';
import { struckOut } from '../parts/write';

/** The event written right before another by the same device; null where it was its first. */
function before(event: EventRef): EventRef | null {
  const [device, number] = [event.slice(0, event.lastIndexOf('/')), Number(event.slice(event.lastIndexOf('/') + 1))];
  return number > 1 ? `${device}/${number - 1}` : null;
}

/** The stay that ended with the same arrow: its end stands right before the fitting. Null where nothing came off for it. */
export function endedFor(stays: readonly Stay[], fitted: EventRef): Stay | null {
  const off = before(fitted);
  return (off && stays.find((stay) => stay.off === off)) || null;
}

/** The fitting struck out, and the coming off that was written with it: both or neither. */
export function unfit(fitted: EventRef, ended: Stay | null, reason: string) {
  return struckOut([fitted, ...(ended?.off ? [ended.off] : [])], reason);
}

/** Inspections that a person may have to strike out: the latest one, and each that stops by what it saw. Latest first. */
export function mistakable(inspections: readonly HoseInspection[], stops: readonly DueLine[]): HoseInspection[] {
  const stopping = ({ date, findings }: HoseInspection) =>
    stops.some(({ seen }) => seen?.seen_on === date && findings.some(({ sign }) => sign === seen.sign));
  const latestFirst = inspections.toSorted((a, b) => b.date.localeCompare(a.date));
  return latestFirst.filter((inspection, at) => at === 0 || stopping(inspection));
}
