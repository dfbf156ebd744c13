import type { MachineId, PlaceId, Scope, TagCode } from '../backend/types';
import type { PlaceId as BarPlace } from '../components/PlaceIcon.svelte';

/** The sheets of the van; without one, their list. */
export type VanPart =
  | 'prices'
  | 'units'
  | 'labels'
  | 'instruments'
  | 'suppliers'
  | 'press'
  | 'people'
  | 'fleet'
  | 'exchange'
  | 'backup'
  | 'records'
  | 'about';

/** Where a person can be. The job's own step stands in the job, so that it comes back with it. */
export type Screen =
  | { at: 'job' }
  /** A job that came to its end: the hose, the one that came off for it, and how the ends were tightened. */
  | { at: 'done'; code: TagCode; off: TagCode | null; tightened: string | null }
  | { at: 'machines' }
  | { at: 'machine'; machine: MachineId }
  | { at: 'place'; place: PlaceId }
  /** `read` is what its tag said, where it was opened by reading it. */
  | { at: 'hose'; code: TagCode; read?: string }
  /** The label of a hose on record, once more. */
  | { at: 'label'; code: TagCode }
  /** Labels of all that sits on a machine, of those hoses, or of what falls due. */
  | { at: 'labels'; machine?: MachineId; codes?: TagCode[] }
  /** Every hose in one table. */
  | { at: 'hoses' }
  /** A machine looked over, one place after the other. */
  | { at: 'survey'; machine: MachineId }
  /** The limits of age, the tables' and the owner's; of one scope where it was opened from there. */
  | { at: 'policies'; scope?: Scope }
  /** Hoses that rested on rows of the tables which changed. */
  | { at: 'affected' }
  | { at: 'due'; part?: 'lives' }
  | { at: 'van'; part?: VanPart }
  /** What is kept; `take` counts a bin. */
  | { at: 'stock'; take?: boolean }
  /** Several hoses at once. */
  | { at: 'batch' }
  /** Of those hoses on record; without any, of the batch. */
  | { at: 'quote'; codes?: TagCode[] }
  | { at: 'round' }
  /** `typed` is a code that came by a link. */
  | { at: 'scan'; part?: 'log'; typed?: string }
  /** Of that hose on record; without one, of the job in hand. */
  | { at: 'papers'; code?: TagCode };

/** The place of the bar that a screen belongs to. */
export function barPlace(screen: Screen): BarPlace {
  switch (screen.at) {
    case 'machines':
    case 'machine':
    case 'place':
    case 'hose':
    case 'label':
    case 'hoses':
    case 'survey':
      return 'machines';
    case 'labels':
      return screen.codes || screen.machine !== undefined ? 'machines' : 'due';
    case 'papers':
      return screen.code === undefined ? 'job' : 'machines';
    case 'due':
    case 'round':
    case 'policies':
    case 'affected':
      return 'due';
    case 'van':
    case 'stock':
    case 'batch':
    case 'quote':
      return 'van';
    default:
      return 'job';
  }
}

const START: Screen = { at: 'job' };

/** Which screen is up. It rides on the browser's own history, so the phone's back gesture works. */
export class Nav {
  screen: Screen = $state.raw(START);

  constructor() {
    history.replaceState(START, '');
    addEventListener('popstate', (event) => {
      this.screen = (event.state as Screen | null) ?? START;
    });
  }

  go(screen: Screen): void {
    if (JSON.stringify(screen) === JSON.stringify(this.screen)) return;
    history.pushState(screen, '');
    this.screen = screen;
  }

  back(): void {
    history.back();
  }
}
