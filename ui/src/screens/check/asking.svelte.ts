import type { Answer, Backend, CallError, Given } from '../../backend';
import type { Evidence, LengthPractice, Readings } from '../../backend/types';
import type { JobDoc } from '../../state/job-doc';

type Found = Answer<'find'>;
type Checked = Answer<'check'>;

/** Why there is no answer, and whether it is the readings or the spec and service that can not be. */
export interface Refused {
  of: 'find' | 'check';
  error: CallError;
}

/** The field of the job that a refusal is about. */
export function fieldOf(error: CallError): string {
  return error.field.replace(/^spec\.(ends\.)?/, '');
}

/** Of a job, what the check is asked with. */
export type Asked = Pick<JobDoc, 'readings' | 'spec' | 'service' | 'overrides'>;

/** Asks what the hose was and whether the spec may be made; of answers that overtake each other the latest stands. */
export class Asking {
  found: Found | null = $state.raw(null);
  /** The last answer stays while the next is on its way. */
  checked: Checked | null = $state.raw(null);
  refused: Refused | null = $state.raw(null);
  #turn = 0;
  #read = { readings: '', evidence: null as Given<Evidence> | null };

  constructor(readonly backend: Backend) {}

  /** Puts the job, as it stands now, through the check. */
  async ask(job: Asked, practice: LengthPractice): Promise<void> {
    const turn = ++this.#turn;
    const { readings, spec, service, overrides } = job;
    const refusal = await this.#readOff(readings, turn);
    if (turn !== this.#turn) return;
    if (refusal) {
      this.refused = { of: 'find', error: refusal };
      return;
    }
    const found = this.#read.evidence;
    const reply = await this.backend.call('check', { spec, service, found, overrides, length_practice: practice });
    if (turn !== this.#turn) return;
    if (reply.ok) this.checked = reply.value;
    this.refused = reply.ok ? null : { of: 'check', error: reply.error };
  }

  /** Keeps what the readings say, anew only where they changed. */
  async #readOff(readings: Given<Readings>, turn: number): Promise<CallError | null> {
    const written = JSON.stringify(readings);
    if (written === this.#read.readings) return null;
    if (!anyRead(readings)) {
      this.#read = { readings: written, evidence: null };
      this.found = null;
      return null;
    }
    const found = await this.backend.call('find', readings);
    if (turn !== this.#turn) return null;
    if (!found.ok) return found.error;
    this.found = found.value;
    this.#read = { readings: written, evidence: found.value };
    return null;
  }
}

/** Whether anything was read at all. */
export function anyRead(readings: Given<Readings>): boolean {
  const { hose, ends, mates } = readings;
  const said = (part: object) => Object.values(part).some((value) => value !== null && value !== undefined);
  const beside = ({ role: _, ...read }: { role: string }) => said(read);
  return (hose !== null && hose !== undefined && said(hose)) || ends.some(beside) || mates.some(beside);
}
