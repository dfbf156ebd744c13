// What every test of the screens shares: a server over a register of its own, a browser, and a page that
// fails its test on any error.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const require = createRequire(join(root, 'ui/'));
const { chromium } = require('playwright-core');

const binary = process.env.HOSEWRIGHT ?? join(process.env.CARGO_TARGET_DIR ?? join(root, 'target'), 'debug/hosewright');
const ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A small phone, a phone, a desk. */
export const sizes = [
  { width: 360, height: 640 },
  { width: 390, height: 844 },
  { width: 1280, height: 800 },
];
export const phone = sizes[1];

/** A file of the repository. */
export const file = (path) => join(root, path);

/** A JSON document of the demo. */
export const demo = (name) => JSON.parse(readFileSync(file(`demo/${name}`), 'utf8'));

/** Runs the command line; what it wrote. */
export const hosewright = (...args) => execFileSync(binary, args, { encoding: 'utf8' });

/** A folder that goes with the test. */
export function folder(t) {
  const path = mkdtempSync(join(tmpdir(), 'hosewright-screens-'));
  t.after(() => rmSync(path, { recursive: true, force: true }));
  return path;
}

/** Serves the built screens over a new register: of a list, which is the demo fleet, or empty. Ends with the test. */
export async function serve(t, { empty = false, list = file('demo/fleet.csv') } = {}) {
  const db = join(folder(t), 'register.db');
  if (!empty) hosewright('register', '--db', db, 'import', list);
  const server = spawn(binary, ['serve', '--ui', file('ui/dist-browser'), '--db', db, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  t.after(() => server.kill());
  for await (const line of createInterface({ input: server.stdout })) {
    const url = /http:\/\/\S+#token=\S+/.exec(line)?.[0];
    if (url) return { url, db };
  }
  throw new Error('the server ended before it said where it serves');
}

/** The answer of a use case, asked as the screens ask it. */
export async function ask(url, command, input) {
  const { origin, hash } = new URL(url);
  const answer = await fetch(`${origin}/api/${command}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', 'x-hosewright-token': hash.replace('#token=', '') },
    body: JSON.stringify(input),
  });
  const text = await answer.text();
  assert.equal(answer.status, 200, text);
  return JSON.parse(text);
}

/** Leaves a half-finished job for the screens to go on with. */
export const keepJob = (url, content) => ask(url, 'job.keep', { job: null, content });

/** A browser that ends with the test. */
export async function browse(t, more = []) {
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: [...ARGUMENTS, ...more],
  });
  t.after(() => browser.close());
  return browser;
}

/**
 * A page on the served screens. Errors of the console or the page fail the test when it ends, and so does a refused
 * call, which the browser reports as if a file were missing: but for the commands that the test says are `refused`,
 * each of which must have been, and those that `may` be.
 */
export async function open(t, browser, url, viewport = phone, { refused = [], may = [], ...more } = {}) {
  const context = await browser.newContext({
    viewport,
    reducedMotion: 'reduce',
    hasTouch: viewport.width < 1000,
    ...more,
  });
  await context.addInitScript(hasten, HASTE);
  const page = await context.newPage();
  countCalls(page);
  unhurried(page);
  page.setDefaultTimeout(15_000);
  const errors = [];
  const answered = new Set();
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => {
    const command = /\/api\/([^/?#]+)$/.exec(message.location().url)?.[1];
    // The server is ended first: a call that was still under way then is no refusal.
    if (command && message.text().includes('net::ERR_')) return;
    if (may.includes(command)) return;
    if (refused.includes(command)) answered.add(command);
    else if (message.type() === 'error') errors.push(`${message.text()} ${command ?? ''}`.trim());
  });
  t.after(() => {
    assert.deepEqual(errors, [], 'errors of the page');
    assert.deepEqual([...answered].sort(), [...refused].sort(), 'the refusals that were expected');
    return context.close();
  });
  await page.goto(url);
  await places(page).waitFor();
  return page;
}

/** So many times faster run the times of taps, by which the page tells a second tap from a first one that was meant. */
const HASTE = 8;

/** Runs in the page: between taps more time passes, so that a tap need not wait as long as a person does. */
function hasten(times) {
  const made = Object.getOwnPropertyDescriptor(Event.prototype, 'timeStamp').get;
  Object.defineProperty(Event.prototype, 'timeStamp', {
    get() {
      return made.call(this) * times;
    },
  });
}

/** Between an answer and the question that it leads to passes less. */
const STILL_MS = 250;

/** How many questions of a page are not answered yet, and when the latest was asked or answered. */
const calls = new WeakMap();

function countCalls(page) {
  const now = { open: 0, latest: 0 };
  const counts = (by) => (request) => {
    if (!request.url().includes('/api/')) return;
    now.open += by;
    now.latest = Date.now();
  };
  page.on('request', counts(1));
  for (const end of ['requestfinished', 'requestfailed']) page.on(end, counts(-1));
  calls.set(page, now);
}

/** Waits until nothing is asked any more, also of what an answer leads to. */
export async function still(page) {
  const { open, latest } = calls.get(page);
  const quiet = Date.now() - latest;
  if (open === 0 && quiet > STILL_MS) return answered(page);
  await new Promise((done) => setTimeout(done, open === 0 ? STILL_MS - quiet + 1 : 50));
  return still(page);
}

/** Waits until what was asked is answered and drawn, as a person looks before tapping; no longer than a second. */
export async function answered(page) {
  const patience = Date.now() + 1000;
  while ((calls.get(page)?.open ?? 0) > 0 && Date.now() < patience) await new Promise((done) => setTimeout(done, 20));
  await drawn(page);
}

/** Waits until what was changed is drawn: parts that measure themselves do so in one frame and are laid out in the next. */
export const drawn = (page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

/** Gives the screen another size, drawn when this returns. */
export async function resize(page, size) {
  await page.setViewportSize(size);
  await drawn(page);
}

/**
 * Taps in one place come no faster than a person's who looks first: a second one that comes sooner falls
 * (`ui/src/state/second-tap.ts`). `hurried` is the click as it was.
 */
function unhurried(page) {
  const locator = Object.getPrototypeOf(page.locator('body'));
  if (locator.hurried) return;
  locator.hurried = locator.click;
  let last = { at: 0, x: 0, y: 0 };
  locator.click = async function click(...how) {
    await answered(this.page());
    const box = await this.boundingBox();
    const [x, y] = box ? [box.x + box.width / 2, box.y + box.height / 2] : [last.x, last.y];
    const wait = Math.hypot(x - last.x, y - last.y) < 80 ? last.at + 400 / HASTE - Date.now() : 0;
    if (wait > 0) await new Promise((done) => setTimeout(done, wait));
    await this.hurried(...how);
    last = { at: Date.now(), x, y };
  };
}

/** The bar with the four places. */
export const places = (page) => page.getByRole('navigation', { name: 'Places' });

/** Goes to a place of the bar. */
export async function goTo(page, place) {
  await places(page).getByRole('button', { name: place }).click();
  await places(page).locator('[aria-current=page]', { hasText: place }).waitFor();
}

/** Picks a file at the button that asks for one. */
export async function pick(page, button, files) {
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), button.click()]);
  await chooser.setFiles(files);
}
