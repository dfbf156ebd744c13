// How soon each screen shows anything of a tap or a key (interaction to next paint), over a register of thousands of hoses.
// `node tests/screens/measure.mjs [COPIES]`: so many copies of the demo fleet. No test: what it prints depends on the machine.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { states } from './states.mjs';
import { browse, file, folder, open, serve, still } from './support.mjs';
import { go, named, stocked } from './walker.mjs';
import { catalogue } from '../../ui/tools/catalogues.mjs';

const copies = Number(process.argv[2] ?? 20);
/** The least that the browser tells; what was sooner counts as this. */
const LEAST_MS = 16;
const BAR_MS = 100;
/** So many letters or keys where there is anything to type into. */
const TYPED = '124';

/** The demo fleet so many times; a machine of a copy has its number behind its name. */
function manyHoses() {
  const [head, ...rows] = readFileSync(file('demo/fleet.csv'), 'utf8').trimEnd().split('\n');
  const copied = Array.from({ length: copies }, (_, copy) =>
    rows.map((row) => (copy === 0 ? row : row.replace(/^([^,]*),([^,]*)/, `$1,$2 / ${copy}`))),
  ).flat();
  return { text: [head, ...copied].join('\n'), hoses: copied.length };
}

/** Runs in the page: keeps how long each tap and key took until the next paint, by the browser's own event timing. */
function watch(least) {
  window.interactions = [];
  const note = (entries) => {
    for (const { interactionId, duration } of entries) if (interactionId) window.interactions.push([interactionId, duration]);
  };
  window.timing = new PerformanceObserver((list) => note(list.getEntries()));
  window.timing.observe({ type: 'event', durationThreshold: least });
  window.taken = () => {
    note(window.timing.takeRecords());
    return window.interactions.splice(0);
  };
}

/** Milliseconds to the next paint of what `interact` does in the page: the slowest event of it. */
async function toPaint(page, interact) {
  await page.evaluate(() => window.taken());
  await interact();
  await still(page);
  const told = await page.evaluate(() => window.taken());
  return Math.max(LEAST_MS, ...told.map(([, duration]) => duration));
}

/** Taps and keys that a state of a screen takes: those that lead to it, what can be typed there, and its first button. */
async function interactions(page, url, way, name) {
  const times = [];
  const { taps = [], ...there } = way;
  await go(page, url, there, name);
  for (const tap of taps) times.push(await toPaint(page, () => go(page, url, { taps: [tap] }, name)));
  const main = page.getByRole('main');
  const field = main.locator('input:not([type=file], [type=date], [type=radio], [type=checkbox]), textarea').first();
  if (await field.isVisible()) await field.focus();
  if ((await field.isVisible()) || (await page.locator('.keys').first().isVisible()))
    for (const key of TYPED) times.push(await toPaint(page, () => page.keyboard.press(key)));
  const button = main.locator('button:enabled').first();
  if (await button.isVisible()) times.push(await toPaint(page, () => button.click()));
  return times;
}

const line = (what, ...figures) => what.padEnd(36) + figures.map((figure) => String(figure).padStart(15)).join('');

const ends = [];
const run = { after: (end) => ends.unshift(end) };
try {
  const { text, hoses } = manyHoses();
  const list = join(folder(run), 'fleet.csv');
  writeFileSync(list, text);
  const [browser, { url, db }] = await Promise.all([browse(run), serve(run, { list })]);
  const { wanted: _, ...fleet } = await stocked(url, db);
  const page = await open(run, browser, url, undefined, { may: ['make', 'oil', 'register.show'] });
  await page.addInitScript(watch, LEAST_MS);
  await page.reload();
  page.setDefaultTimeout(30_000);

  console.log(`${hoses} hoses; to the next paint after a tap or a key, in ms; the browser tells none under ${LEAST_MS}`);
  console.log(line('screen', 'taps and keys', 'median', 'slowest'));
  const all = [];
  for (const [state, way] of Object.entries(states(fleet))) {
    try {
      const times = (await interactions(page, url, way, named(catalogue('en')))).toSorted((a, b) => a - b);
      if (times.length > 0) console.log(line(state, times.length, times[Math.floor(times.length / 2)], times.at(-1)));
      all.push(...times);
    } catch (error) {
      console.log(`${state}: not measured: ${error.message.split('\n')[0]}`);
    }
  }
  console.log(`${all.filter((time) => time > BAR_MS).length} of ${all.length} over ${BAR_MS} ms`);
} finally {
  for (const end of ends) await end();
}
