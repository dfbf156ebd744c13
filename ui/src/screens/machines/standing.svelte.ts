import type { Backend, CallError } from '../../backend';
import type { Assembly, PlaceAt, PlaceId, Stay } from '../../backend/types';
import { today } from '../../words/date';
import { failures, serviceAges, sitting, type Aged, type Failures } from './ages';
import { Read } from '../parts/read.svelte';
import { askedOf, sitsUnder, type Sits } from './sits';
import type { Ground } from './start-job';

/** How a place stands: what sits there, what sat there before, and what a job there begins with. */
export class Standing {
  readonly sheet: Read<'register.place'>;
  readonly #machine: Read<'register.machine'>;
  readonly #hose: Read<'register.show'>;
  readonly #due: Read<'register.due'>;
  readonly #check: Read<'check'>;

  constructor(backend: Backend) {
    this.#check = new Read(backend, 'check');
    this.sheet = new Read(backend, 'register.place');
    this.#machine = new Read(backend, 'register.machine');
    this.#hose = new Read(backend, 'register.show');
    this.#due = new Read(backend, 'register.due');
  }

  async ask(place: PlaceId): Promise<void> {
    await this.sheet.ask({ place });
    const sheet = this.sheet.value;
    if (!sheet || this.sheet.problem) return;
    const { code } = this.here ?? this.stays.at(-1) ?? {};
    await Promise.all([
      this.#machine.ask({ machine: sheet.place.machine }),
      this.#due.ask({ on: today(), place, what: ['service'] }),
      code && this.#hose.ask({ code }),
    ]);
    if (this.here) await this.#check.ask(askedOf(this.ground));
  }

  /** What the check says of what sits there, with what the place asks now; null where nothing sits. */
  get sits(): Sits | null {
    const checked = this.#check.value;
    return this.here && this.assembly && checked ? sitsUnder(checked) : null;
  }

  get problem(): CallError | null {
    return (
      this.sheet.problem ?? this.#machine.problem ?? this.#hose.problem ?? this.#due.problem ?? this.#check.problem
    );
  }

  get at(): PlaceAt | null {
    return this.sheet.value?.at ?? null;
  }

  /** What sat and sits there, by date. */
  get stays(): readonly Stay[] {
    return this.sheet.value?.stays ?? [];
  }

  /** What has not come off. More than one is a contradiction that a person settles. */
  get hoses(): readonly Stay[] {
    return sitting(this.stays);
  }

  /** What sits there; the latest where more than one is said to. */
  get here(): Stay | null {
    return this.hoses.at(-1) ?? null;
  }

  /** The hose that sits there, or the last that did. */
  get assembly(): Assembly | null {
    return this.#hose.value?.assembly ?? null;
  }

  /** Whether the record contradicts itself about what sits there. */
  get unsettled(): boolean {
    return this.hoses.length > 1 || (this.#hose.value?.conflicts ?? []).length > 0;
  }

  /** Its age against its limit of service. */
  get age(): Aged | null {
    const due = this.#due.value;
    return (due && this.here && serviceAges(due.due, due.on).get(this.here.code)) ?? null;
  }

  /** Whether the place asks more of what sits there than it stands. */
  get over(): boolean {
    return (this.sits?.over.length ?? 0) > 0;
  }

  get failed(): Failures {
    return failures(this.stays);
  }

  get ground(): Ground {
    const place = this.sheet.value?.place ?? null;
    const circuits = this.#machine.value?.circuits ?? [];
    return {
      at: this.at,
      replaces: this.here?.code ?? null,
      place,
      circuit: circuits.find((one) => one.circuit === place?.circuit) ?? null,
      assembly: this.assembly,
      again: this.sheet.value?.again ?? null,
    };
  }
}
