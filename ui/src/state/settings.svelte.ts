import type { Backend, CallError } from '../backend';
import type { Settings as Kept } from '../backend/types';

/** As on the first day: what stands until the register has answered. */
const FIRST: Kept = {
  language: null,
  length_unit: 'mm',
  pressure_unit: 'bar',
  paper: 'a4',
  label_stocks: [{ name: '60 x 40', width_mm: 60, height_mm: 40, dpi: 203, material: 'polyester', form: 'flag' }],
  length_practice: 'din-20066',
  caliper_error_mm: 0.1,
  micrometer_error_mm: 0.01,
  tape_error_mm: 1,
  kerf_mm: null,
  gauge_months: 12,
  press_care: [],
  store: '',
  offcut_mm: null,
  pricing: { currency: '', tax_hundredths: null, labour_rate: null, labour: [] },
  instruments: { caliper: '', micrometer: '', thread_gauge: '', seat_gauge: '', tape: '' },
  person: null,
};

/** How this device shows, prints and measures. It stays on the device. */
export class Settings {
  now: Kept = $state.raw(FIRST);
  /** The names of those that were kept and can not be read; until they are set anew, that of the first day holds. */
  unreadable: readonly (keyof Kept)[] = $state.raw([]);
  /** Why the last change or reading was refused; what stood before still stands. */
  problem: CallError | null = $state.raw(null);

  constructor(readonly backend: Backend) {}

  async load(): Promise<void> {
    const reply = await this.backend.call('settings.read', {});
    if (reply.ok) {
      this.now = keys(reply.value);
      this.unreadable = reply.value.unreadable.filter((key): key is keyof Kept => key in FIRST);
    }
    this.problem = reply.ok ? null : reply.error;
  }

  /** Keeps a change; true once it is on the disk. */
  async change(some: Partial<Kept>): Promise<boolean> {
    const reply = await this.backend.call('settings.write', { ...this.now, ...some });
    if (reply.ok) {
      this.now = keys(reply.value);
      this.unreadable = this.unreadable.filter((key) => !(key in some));
    }
    this.problem = reply.ok ? null : reply.error;
    return reply.ok;
  }
}

/** The settings of an answer, without the versions that come with every answer. */
function keys(answer: Kept): Kept {
  return Object.fromEntries(Object.entries(answer).filter(([key]) => key in FIRST)) as unknown as Kept;
}
