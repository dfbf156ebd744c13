import type { Backend } from '../../backend';
import type { Person, PersonId } from '../../backend/types';
import { say } from '../../words/words';

/** Names of the people who work here. The record and the job know them by id alone. */
export class People {
  all: Person[] = $state.raw([]);

  constructor(readonly backend: Backend) {}

  async read(): Promise<void> {
    const reply = await this.backend.call('people.list', {});
    if (reply.ok) this.all = reply.value.people;
  }

  /** The name of that id; one that was erased is said to be. Null is nobody said. */
  nameOf(id: PersonId | null): string | null {
    return id === null ? null : (this.all.find((one) => one.id === id)?.name ?? say('parts-name-erased'));
  }
}
