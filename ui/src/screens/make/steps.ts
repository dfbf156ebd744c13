// Which steps of a build sheet are done on which screen, and which of them is the one in hand.
import type { BuildSheet, SheetStep, Step } from '../../backend/types';
import type { Step as Row } from '../../components/Steps.svelte';
import { PROVED, type JobDoc, type Proving, type Tick } from '../../state/job-doc';
import { feel } from '../../state/haptics';
import { clock } from '../../words/date';
import { angle, number, pressure, withUnit } from '../../words/number';
import { say, sayCode } from '../../words/words';
import { isBySheet } from './needs';
import { crimped, crimpFigure, figureIn, signedIn, taped, type LengthUnit } from './lengths';

/** A step's own name in the job's ticks: its code, and its end where it has one. */
export function nameOf(step: SheetStep): string {
  return step.role ? `${step.code}.${step.role}` : step.code;
}

/** What is done, with its end before it. */
export function textOf(step: SheetStep): string {
  const text = sayCode(`step-${step.code}`) ?? step.code;
  return step.role ? say('make-at-end', { end: step.role, step: text }) : text;
}

/** The words of a step by its name in the ticks. */
export function textOfName(name: string): string {
  const [code = '', end] = name.split('.');
  const text = sayCode(`step-${code}`) ?? code;
  return end ? say('make-at-end', { end, step: text }) : text;
}

/** The one step of proving that is done where there is no rig. */
const NO_RIG = 'no-rig';

/** Steps at which a proof can fail. */
export const PROVING: ReadonlySet<string> = new Set(['raise-pressure', 'hold-pressure', PROVED]);

/** Steps of the bench, in order. Proving is shown once it is said whether there is a rig. */
export function benchSteps(sheet: BuildSheet, proving: Proving): SheetStep[] {
  const proved = (step: SheetStep) =>
    step.step === 'prove' && proving.rig !== null && (step.code === NO_RIG) === !proving.rig;
  return sheet.steps.filter((step) => step.step === 'make' || proved(step));
}

/** Steps of a part of the job, in order. */
export function stepsOf(sheet: BuildSheet, ...parts: Step[]): SheetStep[] {
  return sheet.steps.filter((step) => parts.includes(step.step));
}

/** The first that is not done. */
export function currentOf(steps: readonly SheetStep[], ticks: JobDoc['ticks']): SheetStep | null {
  return steps.find((step) => !(nameOf(step) in ticks)) ?? null;
}

/** The rows of a list of steps: the cautions stand at the current one alone, where they are minded. */
export function rowsOf(
  steps: readonly SheetStep[],
  ticks: JobDoc['ticks'],
  sheet: BuildSheet,
  unit: LengthUnit = 'mm',
  whose: (person: Tick['by']) => string | null = () => null,
): Row[] {
  const current = currentOf(steps, ticks);
  return steps.map((step) => ({
    id: nameOf(step),
    text: textOf(step),
    state: nameOf(step) in ticks ? 'done' : step === current ? 'now' : 'todo',
    figure: (step.code === 'cut' && cutOf(sheet.cut, unit)) || undefined,
    detail: (nameOf(step) in ticks ? openOf(step, sheet) : null) ?? detailOf(step, sheet, unit) ?? undefined,
    ticked: tickedOf(ticks[nameOf(step)], whose),
    cautions: step === current ? step.cautions.map((caution) => caution.caution) : undefined,
  }));
}

/** What is said of a step that was done without its figures: it stays open to whoever reads it. */
function openOf(step: SheetStep, sheet: BuildSheet): string | null {
  return isBySheet(sheet, step) ? sayCode(`make-by-sheet-${step.code}`) : null;
}

/** When a step was ticked, and by whom where that was said. */
function tickedOf(tick: Tick | undefined, whose: (person: Tick['by']) => string | null): string | undefined {
  return tick && [clock(tick.at), whose(tick.by)].filter(Boolean).join(', ');
}

/** Ticks a step in the name of whoever works on the job, or takes the tick back. */
export function tick(doc: JobDoc, name: string, now: Date): void {
  if (name in doc.ticks) delete doc.ticks[name];
  else {
    doc.ticks[name] = { at: now.toISOString(), by: doc.person };
    feel('ticked');
  }
}

/** The figures a step goes by; null for a step without one, or while they are not known. */
function detailOf(step: SheetStep, sheet: BuildSheet, unit: LengthUnit): string | null {
  const settings = sheet.settings.find((one) => one.role === step.role);
  const { cut, turn, proof } = sheet;
  const joined = (...parts: (string | null | undefined)[]) => parts.filter(Boolean).join(' · ') || null;
  switch (step.code) {
    case 'mark-insertion':
      return settings?.insertion_mm == null ? null : taped(settings.insertion_mm, unit);
    case 'push-on':
      return joined(settings?.ferrule, settings?.lubricant);
    case 'crimp':
      return joined(crimpOf(settings, unit), settings?.die_set);
    case 'measure-crimp':
      return crimpOf(settings, unit);
    case 'set-turn':
    case 'measure-turn':
      return turn && turnOf(turn);
    case 'measure-length':
      return lengthOf(cut, unit);
    case 'raise-pressure':
      return pressure(proof.proof_pressure_bar);
    case 'hold-pressure':
      return say('make-hold', { from: number(proof.hold_from.value, 0), to: secondsOf(proof.hold_to.value) });
    default:
      return null;
  }
}

/** The length it is cut to, with its tolerance: it stays with its step, where the drawing scrolls away. */
function cutOf(cut: BuildSheet['cut'], unit: LengthUnit): string | null {
  return cut.cut_length_mm === null
    ? null
    : say('make-plus-minus', { value: figureIn(cut.cut_length_mm, unit).figure, by: taped(cut.aim.value, unit) });
}

/** Target and tolerance of a crimp, as far as they were given. */
export function crimpOf(settings: BuildSheet['settings'][number] | undefined, unit: LengthUnit = 'mm'): string | null {
  if (settings?.crimp_diameter_mm == null) return null;
  return settings.crimp_tolerance_mm == null
    ? crimped(settings.crimp_diameter_mm, unit)
    : say('make-plus-minus', {
        value: unit === 'inch' ? crimpFigure(settings.crimp_diameter_mm, unit) : number(settings.crimp_diameter_mm, 2),
        by: crimped(settings.crimp_tolerance_mm, unit),
      });
}

/** The turn with its tolerance. */
export function turnOf(turn: NonNullable<BuildSheet['turn']>): string {
  return turn.tolerance
    ? say('make-plus-minus', { value: angle(turn.turn_deg), by: angle(turn.tolerance.value) })
    : angle(turn.turn_deg);
}

/** The finished length with its tolerance. */
function lengthOf(cut: BuildSheet['cut'], unit: LengthUnit): string {
  const whole = taped(cut.overall_length_mm, unit);
  if (!cut.length_tolerance_mm) return whole;
  const [minus, plus] = cut.length_tolerance_mm;
  return say('make-length-tolerance', { length: whole, plus: signedIn(plus, unit), minus: signedIn(minus, unit) });
}

/** A time in seconds. */
export function secondsOf(seconds: number): string {
  return withUnit(number(seconds, 0), 's');
}
