// Limits of prudence that a person took on, as the record keeps them: by whose name, and why.
import type { Backend, CallError, Question } from '../../backend';
import type { HoseNote, HoseOverride, Override, PersonId, TagCode } from '../../backend/types';

import type { JobDoc } from '../../state/job-doc';
import { say } from '../../words/words';
import { endOf, ratingFrom, writtenIn, type Units } from '../check/fields';

type Events = Question<'register.record'>['events'];
type Outcome = { ok: true; events: Events } | { ok: false; error: CallError };

/**
 * The overrides that the check took and that are not on the record yet; one that nothing asks for any more says nothing
 * of the hose.
 */
export async function takenOn(
  backend: Backend,
  question: Question<'check'>,
  code: TagCode,
  recorded: readonly HoseOverride[],
): Promise<Outcome> {
  const stands = ({ rule, reason }: Override) => recorded.some((one) => one.rule === rule && one.reason === reason);
  const given = (question.overrides ?? []).filter((one) => !stands(one));
  if (given.length === 0) return { ok: true, events: [] };
  const checked = await backend.call('check', question);
  if (!checked.ok) return checked;
  const rules = new Set(checked.value.findings.filter((one) => one.case === 'override-taken').map((one) => one.rule));
  const people = await backend.call('people.list', {});
  if (!people.ok) return people;
  const known = new Map<string, PersonId>(people.value.people.map((one) => [one.name ?? '', one.id]));
  const events: Events = [];
  for (const one of given.filter(({ rule }) => rules.has(rule))) {
    const by = await personOf(backend, one, known);
    if (!by.ok) return by;
    events.push({ body: { kind: 'overridden', code, rule: one.rule, reason: one.reason, by: by.value.person } });
  }
  return { ok: true, events };
}

/** What a rating of one's own rests on, as a note on the hose; what stands there already is not said again. */
export function ratingNotes(doc: JobDoc, code: TagCode, units: Units, noted: readonly HoseNote[]): Events {
  return (['A', 'B'] as const).flatMap((end) => {
    const [bar, from] = [endOf(doc.spec, end)?.rating_bar, ratingFrom(doc, end)];
    if (typeof bar !== 'number' || from === null) return [];
    const text = say('check-own-rating-note', { end, value: writtenIn('A.rating_bar', bar, units), from });
    return noted.some((one) => one.text === text) ? [] : [{ body: { kind: 'noted', about: { hose: code }, text } }];
  });
}

/** The person by that name; one not known yet gets an id, under which the name can be erased. */
async function personOf(backend: Backend, { by }: Override, known: Map<string, PersonId>) {
  const person = known.get(by);
  if (person) return { ok: true as const, value: { person } };
  const added = await backend.call('people.add', { name: by });
  if (added.ok) known.set(by, added.value.person);
  return added;
}
