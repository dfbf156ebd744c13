// What may be chosen for a field, from the tables of the check.
import type { Tables } from '../../backend/types';
import { number } from '../../words/number';
import { covers, coverWords, lineWords, formWords, genderWords, sizeWords } from '../../words/spec';
import { say } from '../../words/words';
import { offeredFluids } from '../parts/fluids';
import type { Editing } from './editing.svelte';
import * as fields from './fields';
import { notKnown } from './shown';

export interface Offer {
  label: string;
  note?: string;
  chosen: boolean;
  pick: () => void;
}

/** Quarter turns; any other is typed. */
const TURNS = [0, 90, 180, 270];

/** The choices of the open field; those in two steps show their first, then their second. */
export function offered(editing: Editing, tables: Tables): Offer[] {
  const id = editing.open;
  const kind = id ? fields.aboutField(id)?.kind : undefined;
  if (!id || !kind) return [];
  const { doc } = editing;
  const now = fields.wordIn(doc, id) ?? fields.numberIn(doc, id);
  const none = (known: boolean): Offer => ({ label: notKnown(), chosen: !known, pick: () => editing.keep(null) });
  const word = (value: string | number, label: string, note?: string): Offer => ({
    label,
    note,
    chosen: now === value,
    pick: () => editing.keep(value),
  });
  const words = (list: Offer[]) => [...list, none(now !== null)];
  switch (kind) {
    case 'hose':
      return editing.half === null ? [...bores(editing, tables), none(Boolean(doc.spec.hose))] : hoses(editing, tables);
    case 'family': {
      const role = fields.roleOf(id);
      const known = role ? fields.endOf(doc.spec, role) : undefined;
      return editing.half === null
        ? [...families(editing, tables, known?.family), none(known !== undefined)]
        : sizes(editing, tables, known);
    }
    case 'gender':
      return words((['female', 'male'] as const).map((one) => word(one, genderWords(one))));
    case 'form':
      return words(tables.forms.map((form) => word(form, formWords(form))));
    case 'cover':
      return words(covers.map((cover) => word(cover, coverWords(cover))));
    case 'fluid':
      return words(offeredFluids(tables.fluids).map(({ id, note }) => word(id, id, note)));
    case 'line':
      return words(tables.lines.map((line) => word(line, lineWords(line))));
    case 'turn':
      if (editing.keypad) return [];
      return [
        ...TURNS.map((turn) => word(turn, fields.writtenIn(id, turn, editing.units()))),
        { label: say('check-turn-other'), chosen: false, pick: () => editing.type() },
        none(now !== null),
      ];
    case 'duties':
      return tables.duties.map((duty) => ({
        label: coverWords(duty),
        chosen: doc.service.duties.includes(duty),
        pick: () => fields.toggleDuty(doc, duty),
      }));
    default:
      return [];
  }
}

function bores(editing: Editing, tables: Tables): Offer[] {
  const all = new Set(tables.hoses.flatMap((hose) => hose.sizes.map((size) => size.dn)));
  return [...all]
    .toSorted((a, b) => a - b)
    .map((dn) => ({
      label: `DN${number(dn, 1)}`,
      chosen: editing.doc.spec.hose?.dn === dn,
      pick: () => (editing.half = String(dn)),
    }));
}

function hoses(editing: Editing, tables: Tables): Offer[] {
  const dn = Number(editing.half);
  const now = editing.doc.spec.hose;
  return tables.hoses.flatMap(({ standard, type, sizes: all }) =>
    all
      .filter((size) => size.dn === dn)
      .map(({ max_working_pressure_bar: bar }) => ({
        label: `${standard} ${type}`,
        note: bar ? fields.writtenIn('service.relief_bar', bar, editing.units()) : notKnown(),
        chosen: now?.dn === dn && now.standard === standard && now.type === type,
        pick: () => editing.hose({ standard, type, dn }),
      })),
  );
}

function families(editing: Editing, tables: Tables, now: string | undefined): Offer[] {
  return [...new Set([...tables.ends, ...tables.flanges].map((end) => end.family))].map((family) => ({
    label: family,
    chosen: now === family,
    pick: () => (editing.half = family),
  }));
}

function sizes(editing: Editing, tables: Tables, now: { family: string; size: string } | undefined): Offer[] {
  return [...tables.ends, ...tables.flanges]
    .filter((end) => end.family === editing.half)
    .map((end) => ({
      label: sizeWords(end.size),
      note: 'thread' in end ? (end.thread ?? undefined) : undefined,
      chosen: now?.family === end.family && now.size === end.size,
      pick: () => editing.end(end.family, end.size),
    }));
}
