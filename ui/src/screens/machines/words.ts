// Codes of the register in words.
import type { CountedFrom, Proof, SiteRow, Stay, Written } from '../../backend/types';
import type { MachineKind } from '../../drawings/machines';
import type { App } from '../../state/app.svelte';
import type { Units } from '../check/fields';
import { day } from '../../words/date';
import { number, pressure, withUnit } from '../../words/number';
import type { WordId } from '../../words/ids';
import { say } from '../../words/words';
import { failureWords } from '../make/scrap';

export const kindWord: Record<MachineKind, WordId> = {
  excavator: 'machines-kind-excavator',
  loader: 'machines-kind-loader',
  forwarder: 'machines-kind-forwarder',
  harvester: 'machines-kind-harvester',
  crane: 'machines-kind-crane',
  drill: 'machines-kind-drill',
  tractor: 'machines-kind-tractor',
  'truck-mounted': 'machines-kind-truck-mounted',
  press: 'machines-kind-press',
  other: 'machines-kind-other',
};

/** What people call a kind of machine; a kind of their own stands as they wrote it. */
export function kindName(sort: string): string {
  return sort in kindWord ? say(kindWord[sort as MachineKind]) : sort;
}

export const countedWord: Record<CountedFrom, WordId> = {
  assembled: 'machines-counted-assembled',
  'hose-made': 'machines-counted-hose-made',
  fitted: 'machines-counted-fitted',
  inspected: 'machines-counted-inspected',
  unknown: 'machines-counted-unknown',
};

/** The units that are written first. */
export function unitsOf({ settings }: App): Units {
  const { pressure_unit, length_unit } = settings.now;
  return { pressure: pressure_unit, length: length_unit === 'inch' ? 'in' : 'mm' };
}

/** Hours on a meter. */
export function hoursText(hours: number): string {
  return withUnit(number(hours, 0), 'h');
}

/** The machine's hours at which something was done. */
export const hoursAt = (hours: number): string => say('machines-at-hours', { hours: hoursText(hours) });

/** Whether it was proved, plainly. */
export function proofText(proof: Proof): string {
  if (proof.state === 'not-proved') {
    return say(proof.why === 'no-rig' ? 'machines-proof-no-rig' : 'machines-proof-elsewhere');
  }
  if (proof.state === 'failed') return say('machines-proof-failed', { what: failureWords(proof.what) });
  return say('machines-proof-proved', {
    pressure: pressure(proof.pressure_bar),
    seconds: withUnit(number(proof.hold_s, 0), 's'),
    gauge: proof.gauge,
  });
}

/** When a hose came and went, in one line. */
export function stayText(stay: Stay): string {
  const at = (date: string, hours: number | null) =>
    [day(date), hours === null ? null : hoursAt(hours)].join(' ').trim();
  const from = stay.on_date ? at(stay.on_date, stay.on_hours) : null;
  const since = from && say(stay.already_there ? 'machines-stay-found' : 'machines-stay-fitted', { day: from });
  const until = stay.off_date ? say('machines-stay-off', { day: at(stay.off_date, stay.off_hours) }) : null;
  return [since, until].filter((part) => part).join(', ') || say('machines-counted-unknown');
}

/** What was written of a machine, in one line: its name, kind and site. */
export function machineSaid({ body }: Written, sites: readonly SiteRow[]): string {
  if (body.kind !== 'machine-set') return body.kind;
  const site = sites.find((one) => one.site === body.site)?.name ?? null;
  return [body.name, kindName(body.sort), site].filter((part) => part).join(' \u00b7 ');
}
