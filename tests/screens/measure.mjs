// How soon each screen shows anything of a tap or a key (interaction to next paint), over a register of thousands of hoses.
// `node tests/screens/measure.mjs [COPIES]`: so many copies of the demo fleet. No test: what it prints depends on the machine.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { states } from './states.mjs';
import { browse, file, folder, open, serve, still } from './support.mjs';
import { go, named, stocked } from './walker.mjs';
import { catalogue } from '../../ui/tools/catalogues.mjs';

const copies = Number(process.argv[2] ?? 20);
const only = process.env.ONLY ? new RegExp(process.env.ONLY) : null;
const words = catalogue('en');
/** The least that the browser tells; what was sooner counts as this. */
const LEAST_MS = 16;
const BAR_MS = 100;
/** What a state shows, or a tap asks for, where it is refused. */
const REFUSED = ['find', 'make', 'oil', 'register.show', 'tag.batch'];
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

/** The taps that lead to a state of a screen. */
async function tapped(page, url, { taps = [], file: _, ...there }, name) {
  const times = [];
  await go(page, url, there, name);
  for (const tap of taps) times.push(await toPaint(page, () => go(page, url, { taps: [tap] }, name)));
  return times;
}

/** What can be typed in it, and its first button. */
async function used(page, url, { file: _, ...way }, name) {
  const times = [];
  await go(page, url, way, name);
  const main = page.getByRole('main');
  const field = main.locator('input:not([type=file], [type=date], [type=radio], [type=checkbox]), textarea').first();
  const writes = await field.isVisible();
  if (writes) await field.focus();
  if (writes || (await page.locator('.keys').first().isVisible()))
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
  const page = await open(run, browser, url, undefined, { may: REFUSED });
  await page.addInitScript(watch, LEAST_MS);
  await page.reload();
  page.setDefaultTimeout(30_000);

  const all = Object.entries(states(fleet)).filter(([state]) => !only || only.test(state));
  const found = new Map(all.map(([state]) => [state, []]));
  // All are reached before any is used: what is typed and tapped there changes what the next ones are.
  for (const measure of [tapped, used]) {
    for (const [state, way] of all) {
      try {
        found.get(state).push(...(await measure(page, url, way, named(words))));
      } catch (error) {
        console.log(`${state}: not ${measure.name}: ${error.message.split('\n')[0]}`);
      }
    }
  }

  console.log(`${hoses} hoses; to the next paint after a tap or a key, in ms; the browser tells none under ${LEAST_MS}`);
  console.log(line('screen', 'taps and keys', 'median', 'slowest'));
  for (const [state, times] of found) {
    const sorted = times.toSorted((a, b) => a - b);
    if (times.length > 0) console.log(line(state, times.length, sorted[Math.floor(sorted.length / 2)], sorted.at(-1)));
  }
  const times = [...found.values()].flat();
  console.log(`${times.filter((time) => time > BAR_MS).length} of ${times.length} over ${BAR_MS} ms`);
} finally {
  for (const end of ends) await end();
}
