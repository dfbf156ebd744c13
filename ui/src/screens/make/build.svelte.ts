import type { Answer, CallError, Given, Question } from '../../backend';
import type { Backend } from '../../backend';
import type { Evidence, Finding, LengthPractice, Settings } from '../../backend/types';
import type { App } from '../../state/app.svelte';
import type { JobDoc } from '../../state/job-doc';
import { anyRead } from '../check/asking.svelte';
import { benchOf, type Benched } from './bench';

/** What of a job decides how its hose is made. */
type Asked = Pick<JobDoc, 'readings' | 'spec' | 'service' | 'overrides' | 'settings'>;

/** The build sheet of the job in hand, asked anew whenever what it rests on changes. */
export class Build {
  sheet: Answer<'make'> | null = $state.raw(null);
  /** Why there is no sheet. */
  error: CallError | null = $state.raw(null);
  /** What stopped it, in words. */
  stops: Finding[] = $state.raw([]);
  /** What was asked of the check; the tag and the paper are asked the same. */
  question: Question<'check'> | null = $state.raw(null);
  /** What the bench's readings say: null until it was judged. */
  judged: Answer<'bench.judge'> | null = $state.raw(null);
  /** Why they can not be judged: a figure that can not be. */
  unjudged: CallError | null = $state.raw(null);
  #latest = 0;
  #judging = 0;
  #found: { readings: string; evidence: Given<Evidence> | null } = { readings: '', evidence: null };

  constructor(readonly backend: Backend) {}

  /** Asks for the sheet. Only the answer to the latest question counts. */
  async ask(asked: Asked, practice: LengthPractice): Promise<void> {
    const mine = ++this.#latest;
    const found = await this.#evidence(asked.readings);
    const question: Question<'check'> = {
      spec: asked.spec,
      service: asked.service,
      overrides: asked.overrides,
      length_practice: practice,
      ...(found && { found }),
    };
    const reply = await this.backend.call('make', { question, settings: asked.settings });
    const stops = reply.ok ? [] : await this.#stopped(question);
    if (mine !== this.#latest) return;
    this.question = question;
    this.sheet = reply.ok ? reply.value : null;
    this.error = reply.ok ? null : reply.error;
    this.stops = stops;
  }

  /** Has what was read and held on the bench judged. Only the answer to the latest question counts. */
  async judge(benched: Benched, question: Question<'check'>, settings: Settings): Promise<void> {
    const mine = ++this.#judging;
    const reply = await this.backend.call('bench.judge', benchOf(benched, question, settings));
    if (mine !== this.#judging) return;
    this.judged = reply.ok ? reply.value : null;
    this.unjudged = reply.ok ? null : reply.error;
  }

  /** What the readings say of the hose that was found; none where nothing was read. */
  async #evidence(readings: Asked['readings']): Promise<Given<Evidence> | null> {
    if (!anyRead(readings)) return null;
    const key = JSON.stringify(readings);
    if (this.#found.readings !== key) {
      const found = await this.backend.call('find', readings);
      this.#found = { readings: key, evidence: found.ok ? found.value : null };
    }
    return this.#found.evidence;
  }

  /** A refusal names rules; the check says them in words. */
  async #stopped(question: Question<'check'>): Promise<Finding[]> {
    const reply = await this.backend.call('check', question);
    return reply.ok ? reply.value.findings.filter((finding) => finding.verdict === 'stop') : [];
  }
}

/** The sheet of that job and what the bench says, kept up to date while the component stands; of no job there is none. */
export function useBuild(app: App, job: () => JobDoc | null): Build {
  const build = new Build(app.backend);
  const asked = $derived.by(() => {
    const doc = job();
    if (!doc) return null;
    const { readings, spec, service, overrides, settings } = doc;
    return JSON.stringify({ readings, spec, service, overrides, settings });
  });
  $effect(() => {
    if (asked) void build.ask(JSON.parse(asked) as Asked, app.settings.now.length_practice);
  });
  const benched = $derived.by(() => {
    const doc = job();
    if (!doc) return null;
    const { settings, ticks, crimps, givenUp, crimpedBy, finished, proving, scrap } = doc;
    return JSON.stringify({ settings, ticks, crimps, givenUp, crimpedBy, finished, proving, scrap });
  });
  $effect(() => {
    // Of what may not be made nothing is judged.
    if (benched && build.sheet && build.question)
      void build.judge(JSON.parse(benched) as Benched, build.question, app.settings.now);
  });
  return build;
}
