// What a technician does with the program in its window: the thumb on its own keypad and arrows, and no keyboard.

import { ARROW, CRIMP, CUTOFFS, FINISHED, MOST, QUESTION, REPLACEMENT } from '../screens/readings.mjs';
import { SETTINGS, readOf } from '../screens/readings.mjs';

/** What stands at the thumb: the keypad, the one arrow and what is beside it. */
const THUMB = 'footer';
const DONE = 'Check what may replace it';

/** What Find asks once the screen has settled: part and reading; null where it offers what was found instead. */
export async function asked(program) {
  const found = await program.seen(
    (source, done) => {
      const question = document.querySelector('main').innerText.match(new RegExp(source));
      if (question) return { part: question[1], reading: question[2] };
      return document.body.innerText.includes(done) && { part: null };
    },
    [QUESTION.source, DONE],
    'Find asks for a reading or offers what was found',
  );
  return found.part && found;
}

/** Types a number: digits, a point, a denominator. */
export async function typeNumber(program, keys, unit) {
  if (unit) await program.click('radio', new RegExp(`^${unit}$`), THUMB);
  for (const key of keys) {
    const name = { '.': /^Decimal sign$/, '-': /^Change sign$/ }[key] ?? new RegExp(`^${key.replace('/', '/ ?')}$`);
    await program.click('button', name, THUMB);
  }
}

/** Types letters; the keypad has capitals. */
async function typeLetters(program, text) {
  for (const letter of text.toUpperCase()) {
    const name = { '?': /^One letter that is worn away$/, ' ': /^space$/ }[letter] ?? new RegExp(`^${letter}$`);
    await program.click('button', name, THUMB);
  }
}

/** Waits until the screen no longer shows a text. */
const gone = (program, text, within = 'main') =>
  program.seen(
    (text, within) => !document.querySelector(within).innerText.replace(/\s+/g, ' ').includes(text),
    [text.replace(/\s+/g, ' '), within],
    `"${text}" is gone`,
  );

/** Keeps what was typed or gauged for a question of Find. */
export async function keep(program, { part, reading }) {
  await program.click('button', /^Keep /, THUMB);
  await gone(program, `${part} ${reading}`);
}

/** Reads until hose and ends stand, or until a question for which `stop` holds; gives that question. */
export async function find(program, stop = () => false) {
  for (let count = 0; count < MOST; count++) {
    const question = await asked(program);
    if (!question) break;
    if (stop(question)) return question;
    const read = readOf(question);
    if (read?.mm) await typeNumber(program, read.mm, 'mm');
    else if (read?.inch) await typeNumber(program, read.inch, 'inch');
    else if (read?.print) await typeLetters(program, read.print);
    else if (read) await program.click('button', read.pick ?? read.gauge);
    // What is picked is kept with the touch.
    if (read?.pick) {
      await gone(program, `${question.part} ${question.reading}`);
    } else if (read) {
      await keep(program, question);
    } else {
      await program.click('button', /^(can’t tell|Nothing can be read)/);
      await gone(program, `${question.part} ${question.reading}`);
    }
  }
  await program.click('button', DONE);
  return null;
}

/** The words of the arrow at the thumb, once one of these stands there. */
function arrow(program, wanted) {
  return program.seen(
    (source) => {
      const names = [...document.querySelectorAll('footer button')].map((one) => one.innerText.split('\n')[0]);
      return names.find((name) => new RegExp(source).test(name));
    },
    [wanted.source],
    `an arrow ${wanted}`,
  );
}

/** Follows the arrow at the thumb from one to the next until it is `last`; `act` does what an arrow asked for. */
async function follow(program, wanted, last, act) {
  for (;;) {
    const verb = await arrow(program, wanted);
    if (verb.startsWith(last)) return;
    if (verb.startsWith('Prove at')) {
      await program.click('button', /^No rig/);
    } else {
      await program.click('button', verb, THUMB);
      await act(verb);
    }
    await gone(program, verb, THUMB);
  }
}

/** Gives the check what it asks for until nothing stops, then what else is open, and goes to make it. */
export async function check(program) {
  await follow(program, /^(Enter|Say|Make it)/, 'Make it', () => give(program));
  for (const title of await open(program)) {
    if (!REPLACEMENT[title]) continue;
    await program.click('button', `${title} ?`, 'main');
    await give(program);
    await gone(program, `${title} ?`);
  }
  await program.click('button', /^Make it/, THUMB);
}

/** Service and spec that the check shows as not known. */
const open = (program) =>
  program.run(() => {
    const cells = [...document.querySelectorAll('main [role=group] button')].map((cell) => cell.innerText.split('\n'));
    return cells.filter(([, value]) => value === '?').map(([title]) => title);
  });

/** Gives the field that is open. */
async function give(program) {
  const given = REPLACEMENT[await heading(program, 'main', Object.keys(REPLACEMENT))];
  // A choice is kept as it is picked.
  if (given.pick) return program.click('button', given.pick, 'main');
  await typeNumber(program, given.minus ? `${given.minus}-` : given.number);
  await program.click('button', /^Keep/, THUMB);
}

/** The heading of the field that is open: one of those that begin with a name of `fields`. */
const heading = (program, within, fields) =>
  program.seen(
    (within, fields) => {
      // What is drawn begins with a capital.
      const title = document.querySelector(`${within} h2`)?.textContent.trim();
      return fields.find((field) => title?.startsWith(field));
    },
    [within, fields],
    `one of these is asked: ${fields.join(', ')}`,
  );

/** Makes the hose, step by step, without a rig. */
export async function make(program) {
  await follow(program, ARROW, 'Make the tag', (verb) => actAtBench(program, verb));
  await program.click('button', /^Make the tag/, THUMB);
}

/**
 * Makes the hose as `make` does, in a program that `restart` kills and brings up again before every arrow is followed:
 * the same arrow stands each time. Gives the program that is up in the end, and how often it was killed.
 */
export async function makeKilled(first, restart) {
  let program = first;
  for (let killed = 1; killed <= MOST; killed += 1) {
    const verb = await arrow(program, ARROW);
    program = await restart();
    if ((await arrow(program, ARROW)) !== verb) throw new Error(`"${verb}" did not outlive the program`);
    if (verb.startsWith('Make the tag')) {
      await program.click('button', /^Make the tag/, THUMB);
      return { program, killed };
    }
    if (verb.startsWith('Prove at')) {
      await program.click('button', /^No rig/);
    } else {
      await program.click('button', verb, THUMB);
      await actAtBench(program, verb);
    }
    await gone(program, verb, THUMB);
  }
  throw new Error(`no tag after ${MOST} steps`);
}

/** Does what an arrow of the bench asked for. */
async function actAtBench(program, verb) {
  if (FINISHED[verb]) {
    await typeNumber(program, FINISHED[verb], verb.includes('length') ? 'mm' : undefined);
    await program.click('button', /^Keep/, THUMB);
  } else if (verb.startsWith('Measure')) {
    await measureCutoff(program);
  } else if (verb.startsWith('Enter')) {
    await enter(program);
  } else if (verb.startsWith('Read')) {
    await readCrimp(program);
  }
}

/** Reads a new end three times; the pad comes back by itself until its cut-off is taken. */
async function measureCutoff(program) {
  const end = await heading(program, THUMB, ['Cut-off A', 'Cut-off B']);
  for (let reading = 1; reading <= 3; reading += 1) {
    await program.find('heading', `${end}, reading ${reading}`);
    await typeNumber(program, CUTOFFS[end.at(-1)], 'mm');
    await program.click('button', /^Keep/, THUMB);
  }
}

/** Enters the setting that the open field asks for. */
async function enter(program) {
  const value = SETTINGS[await heading(program, THUMB, Object.keys(SETTINGS))];
  // A choice is kept as it is picked.
  if (value.pick) return program.click('button', new RegExp(`^${value.pick}$`), THUMB);
  if (value.mm) await typeNumber(program, value.mm, 'mm');
  else await typeLetters(program, value.text);
  await program.click('button', /^Keep/, THUMB);
}

/** Four directions at the place along the ferrule that is asked; then the pad goes away by itself. */
async function readCrimp(program) {
  const first = await program.seen(
    (within) => Number(document.querySelector(`${within} h2`)?.innerText.match(/reading (\d+)/)?.[1]),
    [THUMB],
    'a reading of the crimp is asked',
  );
  for (let reading = first; reading < first + 4; reading += 1) {
    await program.find('heading', new RegExp(`reading ${reading}$`));
    await typeNumber(program, CRIMP, 'mm');
    await program.click('button', /^Keep/, THUMB);
  }
}

/** Fits it at that place of that machine. */
export async function fit(program, { machine, place, hours, cause }) {
  await program.click('button', machine);
  await program.click('button', place);
  const wanted = /^(Tick: |Enter the machine’s hours|Say how tight|Say why the old one failed|Finish)/;
  await follow(program, wanted, 'Finish', async (verb) => {
    if (verb.startsWith('Enter')) {
      await typeNumber(program, hours);
      await program.click('button', /^Keep/, THUMB);
    } else if (verb.startsWith('Say how')) {
      const end = verb.match(/[AB]/)[0];
      await program.click('radio', /^maker’s figure/, `[role=radiogroup][aria-label$=" ${end}"]`);
    } else if (verb.startsWith('Say')) {
      await program.click('button', cause);
    }
  });
  await program.click('button', /^Finish/, THUMB);
}
