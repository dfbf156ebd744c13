// What was written down by mistake: a fitting, and with it that another hose came off for it; an inspection.
import type { Given } from '../../backend';
import type { EventRef, HoseInspection, RecordEvent, Stay } from '../../backend/types';

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
export function unfit(fitted: EventRef, ended: Stay | null, reason: string): Given<RecordEvent>[] {
  const struck = [fitted, ...(ended?.off ? [ended.off] : [])];
  return struck.map((event) => ({ body: { kind: 'voided', reason }, builds_on: [event] }));
}

/** Inspections that a person may have to strike out: the latest one, and each that stops the machine. Latest first. */
export function mistakable(inspections: readonly HoseInspection[]): HoseInspection[] {
  const latestFirst = inspections.toSorted((a, b) => b.date.localeCompare(a.date));
  return latestFirst.filter(({ findings }, at) => at === 0 || findings.some(({ grade }) => grade === 'stop'));
}
