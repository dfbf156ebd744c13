// The machine that was looked at last: the list comes back to it.
import type { MachineId } from '../../backend/types';
import type { App } from '../../state/app.svelte';

const last = new WeakMap<App, MachineId>();

export const lastMachine = (app: App): MachineId | undefined => last.get(app);

/** Remembers it as long as the program runs. */
export function lookedAt(app: App, machine: MachineId): void {
  last.set(app, machine);
}
