// What a technician does with the screens: reads what is asked and answers from the demo's readings.

import assert from 'node:assert/strict';
import { ARROW, CRIMP, CUTOFFS, FINISHED, MOST, QUESTION, SETTINGS, readOf } from './readings.mjs';

const button = (page, name) => page.getByRole('button', { name });
/** What stands at the thumb: the one arrow and what is beside it. */
const thumb = (page) => page.getByRole('contentinfo');
const keypad = (page) => page.getByRole('group', { name: 'Keypad' });

/** What the screen asks now: part and reading; null where it asks nothing. */
export async function asked(page) {
  const text = await page.getByRole('main').innerText();
  const found = text.match(QUESTION);
  return found && { part: found[1], reading: found[2] };
}

/** The question that is asked once the screen has settled; null when it offers what was found instead. */
async function question(page) {
  const use = 'Check what may replace it';
  await page.waitForFunction(
    ([source, done]) => new RegExp(source).test(document.body.innerText) || document.body.innerText.includes(done),
    [QUESTION.source, use],
  );
  return asked(page);
}

/** Waits until that question is no longer asked. */
async function gone(page, { part, reading }) {
  await page.waitForFunction(
    (texts) => !texts.some((text) => document.querySelector('main')?.innerText.includes(text)),
    [`${part}\n${reading}`, `${part} ${reading}`],
  );
}

/** Types a number on the keypad: digits, a point, a denominator. */
export async function typeNumber(page, keys, unit) {
  const radio = keypad(page).getByRole('radio', { name: unit, exact: true });
  if (unit && (await radio.count()) > 0) await radio.click();
  for (const key of keys) {
    await keypad(page)
      .getByRole('button', {
        name: key === '.' ? 'Decimal sign' : new RegExp(`^${key.replace('/', '/ ?')}$`),
      })
      .click();
  }
}

/** Answers one question of Find; what is not in the readings can not be told. */
async function answer(page, what) {
  const read = readOf(what);
  // What is picked is kept with the touch.
  if (read?.pick) return button(page, read.pick).first().click();
  if (read?.gauge) await button(page, read.gauge).first().click();
  else if (read?.mm) await typeNumber(page, read.mm, 'mm');
  else if (read?.inch) await typeNumber(page, read.inch, 'inch');
  else if (read?.print) await page.keyboard.type(read.print);
  else return button(page, /^(can’t tell|Nothing can be read)/).first().click();
  return button(page, /^Keep /).click();
}

/** Reads until hose and ends stand; `look` is called at each question. The questions in their order. */
export async function find(page, look) {
  const questions = [];
  while (questions.length < MOST) {
    const what = await question(page);
    if (!what) break;
    questions.push(`${what.part}: ${what.reading}`);
    await look(questions.at(-1));
    await answer(page, what);
    await gone(page, what);
  }
  await button(page, /^Check what may replace it/).click();
  return questions;
}

/** Enters the setting that the open field asks for. */
async function enter(page) {
  const title = await thumb(page).getByRole('heading', { level: 2 }).innerText();
  const [, value] = Object.entries(SETTINGS).find(([name]) => title.startsWith(name)) ?? [];
  if (!value) throw new Error(`no setting for ${title}`);
  if (value.mm) await typeNumber(page, value.mm, 'mm');
  else if (value.text) await page.keyboard.type(value.text);
  // A choice is kept as it is picked.
  else return thumb(page).getByRole('button', { name: value.pick, exact: true }).click();
  await thumb(page).getByRole('button', { name: /^Keep/ }).click();
}

/** The step in hand stands whole between title and arrow, its cautions with it; one that is taller begins there. */
export async function stepInView(page) {
  const hidden = await page.evaluate(() => {
    const step = document.querySelector('.steps > [aria-current=step]');
    const [at, room] = [step, step.closest('main, aside')].map((one) => one.getBoundingClientRect());
    return {
      above: room.top - at.top,
      below: at.height > room.height ? 0 : at.bottom - room.bottom,
    };
  });
  assert.ok(hidden.above <= 1 && hidden.below <= 1, `the step in hand is cut off: ${JSON.stringify(hidden)}`);
}

/** What was held at the rig, by the words that ask for it. */
const HELD = {
  'Pressure held': { bar: '412' },
  'Time held': { plain: '45' },
  Gauge: { text: 'G7' },
};

/**
 * Makes the hose, step by step, without a rig or with one; `look` is called at each kind of step, and `between` before
 * each arrow is followed: whatever it does, the same arrow stands after it.
 */
export async function make(page, look, { rig = false, between = null } = {}) {
  const seen = new Set();
  for (;;) {
    const arrow = thumb(page).getByRole('button', { name: ARROW });
    await arrow.waitFor();
    const verb = await arrow.innerText();
    const kind = verb.split(/[:\d]| (of|at) /)[0];
    if (!seen.has(kind)) await look(`make: ${kind}`);
    seen.add(kind);
    if (between) {
      await between(kind);
      await arrow.waitFor();
      assert.equal(await arrow.innerText(), verb, 'the same arrow stands');
    }
    if (verb.startsWith('Tick')) await stepInView(page);
    if (verb.startsWith('Prove at') && !rig) {
      await button(page, 'No rig').click();
      continue;
    }
    await arrow.click();
    if (verb.startsWith('Make the tag')) return;
    const [name] = verb.split('\n');
    if (FINISHED[name]) {
      await typeNumber(page, FINISHED[name], name.includes('length') ? 'mm' : undefined);
      await thumb(page).getByRole('button', { name: /^Keep/ }).click();
    } else if (verb.startsWith('Measure')) {
      await measureCutoff(page, between);
    } else if (verb.startsWith('Enter')) {
      await enter(page);
    } else if (verb.startsWith('Write down')) {
      await writeHeld(page);
      // The same arrow asks for the next thing: what the core says of this one comes a moment later.
      await arrow.filter({ hasText: verb.split('\n')[1] }).waitFor({ state: 'hidden' });
      continue;
    }
    if (/^Read/.test(verb)) await readCrimp(page);
    await thumb(page)
      .getByRole('button', { name: verb.split('\n')[0] })
      .waitFor({ state: 'hidden' });
  }
}

/** Reads a new end until its cut-off is taken; the pad comes back by itself for the next reading. */
async function measureCutoff(page, between) {
  const title = thumb(page).getByRole('heading', { level: 2 });
  const [, end] = (await title.innerText()).match(/^Cut-off ([AB])/);
  for (let reading = 1; (await title.count()) > 0; reading += 1) {
    await title.filter({ hasText: `Cut-off ${end}, reading ${reading}` }).waitFor();
    await typeNumber(page, CUTOFFS[end], 'mm');
    // Half a number is kept with the rest.
    if (between && reading === 2) {
      await between('half a cut-off');
      await button(page, `Keep ${CUTOFFS[end]}\u00a0mm`).waitFor();
    }
    await button(page, /^Keep/).click();
    await title.filter({ hasText: new RegExp(`reading ${reading}$`) }).waitFor({ state: 'hidden' });
  }
}

/** Writes down what was asked of the proof. */
async function writeHeld(page) {
  const title = await thumb(page).getByRole('heading', { level: 2 }).innerText();
  const held = HELD[title];
  if (held.text) await page.keyboard.type(held.text);
  else await typeNumber(page, held.bar ?? held.plain, held.bar && 'bar');
  await thumb(page).getByRole('button', { name: /^Keep/ }).click();
  // The arrow asks for it until the bench has judged what was kept.
  await thumb(page).getByText(title, { exact: true }).waitFor({ state: 'hidden' });
}

/** Four directions at the place along the ferrule that is asked; then the pad goes away by itself. */
async function readCrimp(page) {
  const title = thumb(page).getByRole('heading', { level: 2 });
  const first = Number((await title.innerText()).match(/reading (\d+)/)[1]);
  for (let reading = first; reading < first + 4; reading += 1) {
    await title.filter({ hasText: new RegExp(`reading ${reading}$`) }).waitFor();
    await typeNumber(page, CRIMP, 'mm');
    await button(page, /^Keep/).click();
  }
}

/** Keeps the hose and its label; the label's picture is left at `out`. */
export async function tag(page, out) {
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    button(page, /^Save the label and keep the hose/).click(),
  ]);
  await saved.saveAs(out);
}

/** Fits it at that place of that machine. */
export async function fit(page, { machine, place, hours, cause }, look) {
  await button(page, machine).click();
  await button(page, place).click();
  const arrow = thumb(page).getByRole('button', {
    name: /^(Tick: |Enter the machine’s hours|Say how tight|Say why the old one failed|Finish)/,
  });
  await arrow.waitFor();
  await look('fit');
  for (;;) {
    await arrow.waitFor();
    const verb = (await arrow.innerText()).split('\n')[0];
    if (verb.startsWith('Tick')) await stepInView(page);
    await arrow.click();
    if (verb === 'Finish') return;
    if (verb.startsWith('Enter')) {
      await typeNumber(page, hours);
      await button(page, /^Keep/).click();
    } else if (verb.startsWith('Say how')) {
      await look('fit: how tight');
      for (const figure of await page.getByRole('radio', { name: /^maker’s figure/ }).all()) await figure.click();
    } else if (verb.startsWith('Say')) {
      await look('fit: cause');
      await button(page, cause).click();
    }
    await thumb(page).getByRole('button', { name: verb }).waitFor({ state: 'hidden' });
  }
}
