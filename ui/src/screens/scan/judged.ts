// What a read tag is, and what may be done with it.
import type { PlaceAt, Scan, TagFindingCode, TagJudged, TagStanding } from '../../backend/types';
import type { WordId } from '../../words/ids';
import { say } from '../../words/words';

/** A code of a picture that is a tag of ours, whole or not. */
export type TagScan = Scan & { judged: TagJudged };

export function isTag(scan: Scan): scan is TagScan {
  return scan.judged !== null;
}

const STANDINGS = {
  own: 'scan-is-own',
  partner: 'scan-is-partner',
  foreign: 'scan-is-foreign',
  unsealed: 'scan-is-unsealed',
  'code-alone': 'scan-is-code-alone',
  altered: 'scan-is-altered',
  newer: 'scan-is-newer',
} as const satisfies Record<TagStanding, WordId>;

/** What is graver than whose tag it is. */
const GRAVE: Partial<Record<TagFindingCode, WordId>> = {
  withdrawn: 'scan-is-withdrawn',
  'failed-proof': 'scan-is-failed',
  'fitted-elsewhere': 'scan-is-elsewhere',
  'other-spec': 'scan-is-other-spec',
  undone: 'scan-is-undone',
  'failed-in-use': 'scan-is-failed-in-use',
  contradicted: 'scan-is-contradicted',
  'other-seal': 'scan-is-other-seal',
  'higher-pressure': 'scan-is-higher',
};

export function standingWord(standing: TagStanding): string {
  return say(STANDINGS[standing]);
}

/** The tag in two words: what stops it, or else whose it is. */
export function wordOf({ standing, findings }: TagJudged): string {
  const [first] = findings;
  const grave = first?.verdict === 'stop' ? GRAVE[first.code] : undefined;
  return grave ? say(grave) : standingWord(standing);
}

/** What the hose's own sheet says as well, so that a person need not be stopped for it. */
const SAID_THERE: ReadonlySet<TagFindingCode> = new Set<TagFindingCode>(['sits', 'not-proved']);

/** Whether a tag leads straight to its hose: it is known here, and nothing is to be said before it is opened. */
export function opensAtOnce({ known, findings }: TagJudged): boolean {
  return known && findings.every(({ code }) => SAID_THERE.has(code));
}

/** Where a hose sits: machine, number and name of the place; null for none. */
export function placeWords(at: PlaceAt | null): string | null {
  if (!at) return null;
  return [at.machine_name, at.number, at.place_name].filter((part) => part !== null).join(' · ');
}
