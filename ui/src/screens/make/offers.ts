// What the suppliers' tables and the last hose of its kind say of an end, each taken with one tap.
import type { Answer, Given } from '../../backend';
import type { EndSettings, Role, SupplierRow } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { day } from '../../words/date';
import { say } from '../../words/words';
import { settingsOf } from './fields';
import { taped, type LengthUnit } from './lengths';

export type Lookup = Answer<'supplier.lookup'>;

/** Settings of an end that somebody has, and whose they are. */
export interface Offer {
  id: string;
  role: Role;
  label: string;
  /** Whose, and what they say. */
  note: string;
  settings: Given<EndSettings>;
  cutoff_mm: number | null;
}

/** Everything on offer for an end: the suppliers' rows, then the last hose. */
export function offersFor(lookup: Lookup | null, role: Role, unit: LengthUnit): Offer[] {
  const end = lookup?.ends.find((one) => one.role === role);
  if (!end) return [];
  const rows = end.rows.map(({ id, row }): Offer => {
    const settings = settingsBy(row, role);
    const cutoff_mm = row.cutoff_mm ?? null;
    const label = say('make-offer-row', { end: role, supplier: row.supplier });
    return { id: String(id), role, label, note: noteOf(settings, cutoff_mm, unit), settings, cutoff_mm };
  });
  if (!end.last) return rows;
  const { code, assembled, by, cutoff_mm } = end.last;
  const settings = { ...end.last.settings, role };
  const when = assembled && day(assembled);
  const label = say('make-offer-last', { end: role, what: [code, when, by].filter(Boolean).join(', ') });
  return [...rows, { id: `last.${code}`, role, label, note: noteOf(settings, cutoff_mm, unit), settings, cutoff_mm }];
}

/** The settings of an end by a supplier's row: they say whose they are. */
function settingsBy(row: Given<SupplierRow>, role: Role): Given<EndSettings> {
  const { supplier, from, series, insertion_mm, skive, ferrule, lubricant, die_set } = row;
  const { crimp_diameter_mm, crimp_tolerance_mm, cutoff_mm } = row;
  const source = say('make-offer-source', { supplier, from });
  const bench = { insertion_mm, skive, ferrule, lubricant, die_set, crimp_diameter_mm, crimp_tolerance_mm };
  return { role, source, series, ...bench, cutoff_source: cutoff_mm == null ? null : source };
}

function noteOf(settings: Given<EndSettings>, cutoff: number | null, unit: LengthUnit): string {
  const known = settingsOf(settings, unit);
  return cutoff === null ? known : `${say('make-cutoff')} ${taped(cutoff, unit)} · ${known}`;
}

/** Takes what is offered; a cut-off that was measured stands. */
export function takeOffer(doc: JobDoc, offer: Offer): void {
  doc.settings = [...doc.settings.filter((one) => one.role !== offer.role), { ...offer.settings }];
  const end = doc.spec.ends.find((one) => one.role === offer.role);
  if (end && offer.cutoff_mm !== null) end.cutoff_mm ??= offer.cutoff_mm;
}

/** Takes a row that was entered for that end. */
export function takeRow(doc: JobDoc, role: Role, row: Given<SupplierRow>): void {
  const settings = settingsBy(row, role);
  const cutoff_mm = typeof row.cutoff_mm === 'number' ? row.cutoff_mm : null;
  takeOffer(doc, { id: '', role, label: '', note: '', settings, cutoff_mm });
}

/** A cut-off that tables, the last hose or finished lengths give. */
export interface CutoffOffer {
  mm: number;
  label: string;
}

/** No more of them than a thumb has room for beside the arrow. */
const CUTOFFS = 2;

/** What gives an end's cut-off without measuring: each figure once, with the first that gives it. */
export function cutoffsFor(lookup: Lookup | null, role: Role, unit: LengthUnit): CutoffOffer[] {
  const end = lookup?.ends.find((one) => one.role === role);
  const given = offersFor(lookup, role, unit).flatMap(({ cutoff_mm: mm, label: whose }): CutoffOffer[] =>
    mm === null ? [] : [{ mm, label: say('make-cutoff-as', { cutoff: taped(mm, unit), whose }) }],
  );
  const once = given.filter((one, index) => given.findIndex(({ mm }) => mm === one.mm) === index);
  const learned = end?.cutoff;
  if (!learned) return once.slice(0, CUTOFFS);
  const spread = learned.spread_mm === null ? '' : ` ± ${taped(learned.spread_mm, unit)}`;
  const label = say('make-cutoff-learned', { cutoff: `${taped(learned.mm, unit)}${spread}`, count: learned.n });
  return [...once.slice(0, CUTOFFS - 1), { mm: learned.mm, label }];
}
