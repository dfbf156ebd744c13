import type { Answer, Backend, CallError } from '../../backend';
import type { Finding } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';
import { held, oilAsked, peakAsked } from './oil';

type Asked = Pick<JobDoc, 'spec' | 'service' | 'oil'>;

/** The oil as it was reckoned, with what the check says of the peak of its surge: both come together, so that no speed passes over a peak. */
export class Reckoned {
  now: { oil: Answer<'oil'>; peak: Finding[] } | null = $state.raw(null);
  problem: CallError | null = $state.raw(null);
  #turn = 0;

  constructor(readonly backend: Backend) {}

  /** Asks anew; of two questions under way only the later one's answer is shown. */
  async ask(asked: Asked): Promise<void> {
    const turn = ++this.#turn;
    const oil = await this.backend.call('oil', oilAsked(asked));
    const peak = oil.ok ? (oil.value.surge?.peak_bar ?? null) : null;
    const checked = peak === null ? null : await this.backend.call('check', peakAsked(asked, peak));
    if (turn !== this.#turn) return;
    this.problem = !oil.ok ? oil.error : checked && !checked.ok ? checked.error : null;
    this.now = oil.ok && !this.problem ? { oil: oil.value, peak: checked?.ok ? held(checked.value) : [] } : null;
  }
}
