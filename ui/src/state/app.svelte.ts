import { createContext } from 'svelte';
import type { Backend, CallError } from '../backend';
import type { Draft, Overview } from '../backend/types';
import { Batch } from './batch.svelte';
import { Exchange } from './exchange.svelte';
import { languageOfDevice, type Language } from '../words/language.svelte';
import { speak } from '../words/words';
import { Job } from './job.svelte';
import { Nav } from './nav.svelte';
import { Scale } from './scale.svelte';
import { Settings } from './settings.svelte';
import { Theme } from './theme.svelte';

/** What every screen shares: where one is, the job in hand, the register at a glance. */
export class App {
  readonly nav = new Nav();
  readonly theme = new Theme();
  readonly batch = new Batch();
  readonly scale = new Scale();
  readonly job: Job;
  /** Units, paper, labels and instruments of this device. */
  readonly settings: Settings;
  /** With the fleet's other devices. */
  readonly exchange: Exchange;
  /** Sites, machines and counts; null until they are read. */
  overview: Overview | null = $state.raw(null);
  /** Jobs that are not done, the latest first. */
  drafts: Draft[] = $state.raw([]);
  /** Why the register can not be read. */
  problem: CallError | null = $state.raw(null);

  constructor(readonly backend: Backend) {
    this.job = new Job(backend);
    this.settings = new Settings(backend);
    this.exchange = new Exchange(backend, () => void this.refresh());
  }

  /** How many hoses are past their limit of service life today. */
  get overdue(): number {
    return this.overview?.overdue.hoses ?? 0;
  }

  /** Reads the register, and goes on with the job that was in hand when the program ended. */
  async start(): Promise<void> {
    await Promise.all([this.refresh(), this.#begin()]);
    const [latest] = this.drafts;
    if (latest && !this.job.doc) await this.job.open(latest.job, latest.content);
  }

  /** Says everything in that language from now on, and has the core and the papers say it so too. */
  async say(language: Language): Promise<void> {
    if (await this.settings.change({ language })) await speak(language);
  }

  /** The settings, and with them the language: of the device at the first start, then the one that was chosen. */
  async #begin(): Promise<void> {
    await this.settings.load();
    const language = this.settings.now.language ?? languageOfDevice();
    // What the core says without being asked for a language is English.
    if (this.settings.now.language === null && language !== 'en') await this.settings.change({ language });
    await speak(language);
  }

  /** Leaves the job in hand; it stays among the jobs that are not done. */
  async leave(): Promise<void> {
    await this.job.aside();
    await this.refresh();
  }

  /** Reads what the frame shows anew: after anything was written to the register. */
  async refresh(): Promise<void> {
    const [overview, jobs] = await Promise.all([
      this.backend.call('register.overview', {}),
      this.backend.call('job.list', {}),
    ]);
    if (overview.ok) this.overview = overview.value;
    if (jobs.ok) this.drafts = jobs.value.jobs;
    this.problem = [overview, jobs].flatMap((reply) => (reply.ok ? [] : [reply.error]))[0] ?? null;
  }
}

/** The app of the component's tree: `provideApp` once at the root, `useApp` in every screen. */
export const [useApp, provideApp] = createContext<App>();
