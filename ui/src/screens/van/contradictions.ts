// What contradicts itself, in words: what it is about, and who told what.
import type { Contradiction, Told } from '../../backend/types';
import type { Screen } from '../../state/nav.svelte';
import { number } from '../../words/number';
import type { WordId } from '../../words/ids';
import { say } from '../../words/words';
import { deviceName } from '../parts/device';

const parts = (...some: (string | null | undefined)[]): string => some.filter((part) => part).join(' \u00b7 ');

/** What it is about, as people call it. */
export function aboutWords({ hose, at, name }: Contradiction): string {
  if (hose) return hose;
  if (!at) return name ?? say('van-conflict-other');
  return parts(at.machine_name, at.number === null ? null : number(at.number, 0), at.place_name);
}

/** Where a person settles it; null where no screen does. */
export function settledAt({ hose, at, machine }: Contradiction): Screen | null {
  if (hose) return { at: 'hose', code: hose };
  if (at) return { at: 'place', place: at.place };
  return machine ? { at: 'machine', machine } : null;
}

/** What was told and by whom: `fitted (Van 1); taken off (Van 2)`. */
export function toldWords({ told, hose }: Contradiction): string {
  const what = (one: Told) => [kindWords(one, hose), one.says].filter((part) => part).join(' ');
  return told.map((one) => say('van-told', { kind: what(one), by: deviceName(one.by, one.device) })).join('; ');
}

/** The kind of what was told, and of which hose where that is not said already. */
export function kindWords(told: Told, about: string | null): string {
  const kind = told.kind in kinds ? say(kinds[told.kind as keyof typeof kinds]) : told.kind;
  return told.hose && !about ? `${told.hose} ${kind}` : kind;
}

const kinds = {
  'device-named': 'van-kind-device-named',
  'device-key': 'van-kind-device-key',
  'device-admitted': 'van-kind-device-admitted',
  'device-withdrawn': 'van-kind-device-withdrawn',
  'site-named': 'van-kind-site-named',
  'machine-set': 'van-kind-machine-set',
  'hours-read': 'van-kind-hours-read',
  'circuit-set': 'van-kind-circuit-set',
  'place-set': 'van-kind-place-set',
  'assembly-made': 'van-kind-assembly-made',
  fitted: 'van-kind-fitted',
  'taken-off': 'van-kind-taken-off',
  inspected: 'van-kind-inspected',
  overridden: 'van-kind-overridden',
  labelled: 'van-kind-labelled',
  'tag-withdrawn': 'van-kind-tag-withdrawn',
  'policy-set': 'van-kind-policy-set',
  'stock-changed': 'van-kind-stock-changed',
  'photo-added': 'van-kind-photo-added',
  noted: 'van-kind-noted',
} as const satisfies Record<string, WordId>;
