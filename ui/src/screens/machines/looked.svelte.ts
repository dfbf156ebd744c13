import type { Backend, CallError } from '../../backend';
import type { Finding, MachineSaid, PlaceId, PlaceRow } from '../../backend/types';
import { failures, sitting, type Failures } from './ages';
import { askedOf, sitsUnder } from './sits';

/** What the list of places does not hold: what failed at a place, and what it asks too much of its hose. */
export interface Looked {
  failed: Failures;
  /** The gravest; null where nothing known is too much. */
  over: Finding | null;
}

/**
 * Looks at every place of a machine, one after another, so that other questions get between. They are told all at once:
 * rows that grow one by one are tapped wrong.
 */
export class LookedAt {
  places: ReadonlyMap<PlaceId, Looked> = $state.raw(new Map());
  problem: CallError | null = $state.raw(null);
  #turn = 0;

  constructor(readonly backend: Backend) {}

  async ask(sheet: MachineSaid): Promise<void> {
    const turn = ++this.#turn;
    const places = new Map<PlaceId, Looked>();
    let problem: CallError | null = null;
    for (const row of sheet.places) {
      const looked = await this.#look(sheet, row);
      if (turn !== this.#turn) return;
      if ('failed' in looked) places.set(row.place.place, looked);
      else problem ??= looked;
    }
    this.places = places;
    this.problem = problem;
  }

  async #look(sheet: MachineSaid, { place }: PlaceRow): Promise<Looked | CallError> {
    const stood = await this.backend.call('register.place', { place: place.place });
    if (!stood.ok) return stood.error;
    const { stays } = stood.value;
    const failed = failures(stays);
    const here = sitting(stays).at(-1);
    if (!here) return { failed, over: null };
    const shown = await this.backend.call('register.show', { code: here.code });
    if (!shown.ok) return shown.error;
    const { assembly } = shown.value;
    if (!assembly) return { failed, over: null };
    const circuit = sheet.circuits.find((one) => one.circuit === place.circuit) ?? null;
    const ground = { at: here.at, replaces: here.code, place, circuit, assembly };
    const checked = await this.backend.call('check', askedOf(ground));
    return checked.ok ? { failed, over: sitsUnder(checked.value).over[0] ?? null } : checked.error;
  }
}
