// Drives the real program: its window under Xvfb, by WebDriver, with data of its own for each test.
// Wait for what a person would see, never for time.

import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The program as it was built: `tests/shell/run` builds it. */
export const PROGRAM =
  process.env.HOSEWRIGHT_APP ?? fileURLToPath(new URL('../../target/debug/hosewright-app', import.meta.url));

/** How long something may take to be seen before the test gives up. */
const PATIENCE_MS = 15_000;
const PAUSE_MS = 40;

/** Taps this near each other are in one place, and a second one comes no sooner. */
const SAME_PLACE_PX = 80;
const LOOKED_MS = 400;

/** The key under which WebDriver names an element. */
const ELEMENT = 'element-6066-11e4-a52e-4f735466cecf';

/** What can be found by its role: the elements that have it. */
const ROLES = {
  button: 'button:not([role]), [role=button]',
  link: 'a[href], [role=link]',
  heading: 'h1, h2, h3, h4, [role=heading]',
  textbox: 'input:not([type=checkbox], [type=radio], [type=file]), textarea, [role=textbox]',
  checkbox: 'input[type=checkbox], [role=checkbox]',
  radio: 'input[type=radio], [role=radio]',
  listitem: 'li, [role=listitem]',
  alert: '[role=alert]',
  file: 'input[type=file]',
};

/** A folder with everything that one device keeps. It outlives the program and goes with the test. */
export class Device {
  #programs = [];

  constructor() {
    this.home = mkdtempSync(join(tmpdir(), 'hosewright-'));
    this.data = join(this.home, 'data', 'local.hosewright');
    this.register = join(this.data, 'register.db');
    this.downloads = join(this.home, 'Downloads');
    for (const folder of [this.data, this.downloads, join(this.home, 'config')]) mkdirSync(folder, { recursive: true });
    writeFileSync(join(this.home, 'config', 'user-dirs.dirs'), 'XDG_DOWNLOAD_DIR="$HOME/Downloads"\n');
  }

  environment(display) {
    return {
      ...process.env,
      DISPLAY: display,
      HOME: this.home,
      XDG_DATA_HOME: join(this.home, 'data'),
      XDG_CONFIG_HOME: join(this.home, 'config'),
      XDG_CACHE_HOME: join(this.home, 'cache'),
      TAURI_WEBVIEW_AUTOMATION: 'true',
    };
  }

  /** Opens the program on this device, with a link where there is one, and waits until its screens are up. */
  async open(...links) {
    const program = new Program();
    this.#programs.push(program);
    await program.start(this, links);
    return program;
  }

  /** Ends what runs on it and throws away what it keeps. */
  async remove() {
    for (const program of this.#programs) await program.kill();
    rmSync(this.home, { recursive: true, force: true });
  }
}

/** Gives a test a device of its own. */
export function device(test) {
  const own = new Device();
  test.after(() => own.remove());
  return own;
}

/** The program, open on a device. */
class Program {
  #driver;
  #ended;
  #app;
  #session;
  /** Where and when it clicked last. */
  #tapped = { x: 0, y: 0, when: 0 };

  async start(device, links) {
    const port = await freePort();
    this.#driver = spawn('WebKitWebDriver', [`--port=${port}`, '--host=127.0.0.1'], {
      env: device.environment(await display()),
      stdio: 'ignore',
    });
    this.#ended = new Promise((ended) => this.#driver.once('exit', ended));
    const base = `http://127.0.0.1:${port}/session`;
    const wanted = { alwaysMatch: { 'webkitgtk:browserOptions': { binary: PROGRAM, args: links } } };
    const session = await until('the driver answers', () => post(base, { capabilities: wanted }).catch(retried));
    this.#session = `${base}/${session.sessionId}`;
    this.#app = children(this.#driver.pid)[0];
    await this.seen(() => document.querySelector('#app')?.textContent.trim(), [], 'the screens are up');
  }

  /** Ends the program at once, as a battery that comes out does. */
  async kill() {
    const all = this.#app && alive(this.#app) ? processes(this.#app) : [];
    if (all.length > 0) process.kill(this.#app, 'SIGKILL');
    this.#driver.kill();
    await this.#ended;
    await until('the program and its web view are gone', () => !all.some(alive));
  }

  /** The process of the program. */
  get pid() {
    return this.#app;
  }

  /** Runs a function of the page in the page. */
  run(inPage, ...args) {
    return post(`${this.#session}/execute/sync`, { script: `return (${inPage})(...arguments)`, args });
  }

  /** Runs one that answers later. What it refuses with is thrown here. */
  async later(inPage, ...args) {
    const script = `const args = [...arguments], done = args.pop();
      const plain = (error) => ({ ...error, message: String(error?.message ?? error) });
      (${inPage})(...args).then((answer) => done({ answer }), (error) => done({ refused: plain(error) }));`;
    const { answer, refused } = await post(`${this.#session}/execute/async`, { script, args });
    if (refused) throw Object.assign(new Error(refused.message), refused);
    return answer;
  }

  /** Waits until a function of the page finds something, and gives it. */
  seen(inPage, args, what) {
    return until(what, () => this.run(inPage, ...args));
  }

  /** A use case through the program's own way in; a file's bytes come as their count. */
  call(name, input = {}) {
    return this.later(
      async (name, input) => {
        const answer = await window.__TAURI_INTERNALS__.invoke('call', { name, input });
        if (!(answer instanceof ArrayBuffer)) return answer;
        const length = new DataView(answer).getUint32(0, true);
        const about = JSON.parse(new TextDecoder().decode(new Uint8Array(answer, 4, length)));
        return { ...about, bytes: answer.byteLength - 4 - length };
      },
      name,
      input,
    );
  }

  /** One of the program's two commands with bytes beside its document; `bytes` are text here. */
  send(command, document, bytes) {
    return this.later(
      (command, document, text) => {
        const [json, bytes] = [JSON.stringify(document), text].map((part) => new TextEncoder().encode(part));
        const frame = new Uint8Array(4 + json.length + bytes.length);
        new DataView(frame.buffer).setUint32(0, json.length, true);
        frame.set(json, 4);
        frame.set(bytes, 4 + json.length);
        return window.__TAURI_INTERNALS__.invoke(command, frame);
      },
      command,
      document,
      bytes,
    );
  }

  /** Waits for text anywhere on the screen. */
  async text(wanted) {
    await this.seen((wanted) => document.body.innerText.includes(wanted), [wanted], `the screen shows "${wanted}"`);
  }

  /** Waits for an element that can be seen, by its role and a part of its name or a pattern of it, in a part of the screen. */
  async find(role, name = '', within = 'body') {
    const byRole = (selector, source, within) =>
      [...document.querySelectorAll(`:is(${within}) :is(${selector})`)].find((element) => {
        const labels = [...(element.labels ?? [])].map((label) => label.innerText);
        const own = [element.getAttribute('aria-label') ?? element.innerText, ...labels, element.placeholder];
        const shown = element.type === 'file' || element.checkVisibility();
        return shown && new RegExp(source).test(own.join(' ').replace(/\s+/g, ' ').trim());
      });
    const element = await this.seen(byRole, [ROLES[role], pattern(name), within], `there is a ${role} "${name}"`);
    return element[ELEMENT];
  }

  /**
   * Clicks what has that role and name, once it stands still: a thumb follows what moves, a driver does not. In one
   * place it taps no faster than a person who looks first (`ui/src/state/second-tap.ts`).
   */
  async click(role, name, within) {
    const { element, at } = await until(`the ${role} "${name}" stands still`, async () => {
      const found = await this.find(role, name, within);
      const at = await this.#standsStill(found);
      return at && { element: found, at };
    });
    const { x, y, when } = this.#tapped;
    const soon = Math.hypot(at.x - x, at.y - y) < SAME_PLACE_PX ? when + LOOKED_MS - Date.now() : 0;
    if (soon > 0) await new Promise((done) => setTimeout(done, soon));
    await post(`${this.#session}/element/${element}/click`, {});
    this.#tapped = { ...at, when: Date.now() };
  }

  /** The middle of an element that is where it was two frames ago; null of one that moves. */
  #standsStill(element) {
    const inPage = async (element) => {
      const where = () => {
        const { x, y, width, height } = element.getBoundingClientRect();
        return { x: x + width / 2, y: y + height / 2, width, height };
      };
      // As the driver does before it taps: it taps where it then stands.
      element.scrollIntoView({ block: 'nearest', inline: 'nearest' });
      const before = where();
      await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
      return element.isConnected && JSON.stringify(before) === JSON.stringify(where()) ? before : null;
    };
    return this.later(inPage, { [ELEMENT]: element }).catch((error) => {
      if (error.message.startsWith('stale element reference')) return null;
      throw error;
    });
  }

  /** Types into the field of that name. For a file field the text is the file's path. */
  async type(name, text, role = 'textbox') {
    await post(`${this.#session}/element/${await this.find(role, name)}/value`, { text });
  }

  /** Makes the window so large. */
  async resize(width, height) {
    await post(`${this.#session}/window/rect`, { width, height });
    await this.seen(
      (width, height) => innerWidth === width && innerHeight === height,
      [width, height],
      'the window has its size',
    );
  }

  /** Leaves a picture of the screen in a file. */
  async picture(file) {
    writeFileSync(file, Buffer.from(await get(`${this.#session}/screenshot`), 'base64'));
  }
}

let shared;

/** The display there is, or one of our own for as long as the tests run. */
function display() {
  shared ??= process.env.DISPLAY ? Promise.resolve(process.env.DISPLAY) : virtualDisplay();
  return shared;
}

/** Xvfb chooses a number that is free and writes it, with a line's end, once it takes windows. */
function virtualDisplay() {
  const screen = ['-displayfd', '3', '-screen', '0', '1280x1024x24', '-nolisten', 'tcp', '-noreset'];
  const xvfb = spawn('Xvfb', screen, { stdio: ['ignore', 'ignore', 'ignore', 'pipe'] });
  process.once('exit', () => xvfb.kill());
  xvfb.unref();
  const told = xvfb.stdio[3];
  return new Promise((begun, failed) => {
    let number = '';
    xvfb.once('error', failed);
    told.on('data', (part) => {
      number += part;
      if (!number.endsWith('\n')) return;
      told.destroy();
      begun(`:${number.trim()}`);
    });
  });
}

function freePort() {
  return new Promise((found, failed) => {
    const server = createServer().once('error', failed);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => found(port));
    });
  });
}

/** The processes that a process began. */
function children(pid) {
  return readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').trim().split(' ').filter(Boolean).map(Number);
}

/** A process and all that it began, and they. */
export function processes(pid) {
  return [pid, ...children(pid).flatMap(processes)];
}

function alive(pid) {
  try {
    return !readFileSync(`/proc/${pid}/stat`, 'utf8').includes(') Z ');
  } catch {
    return false;
  }
}

/** Asks again and again until there is an answer. */
export async function until(what, ask) {
  const end = Date.now() + PATIENCE_MS;
  for (;;) {
    const answer = await ask();
    if (answer) return answer;
    if (Date.now() > end) throw new Error(`waited in vain: ${what}`);
    await new Promise((next) => setTimeout(next, PAUSE_MS));
  }
}

/** A name as the source of a pattern: a string is a part of it, letter by letter. */
const pattern = (name) => (name instanceof RegExp ? name.source : name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));

/** The driver is not listening yet; anything else it says is an answer. */
function retried(error) {
  if (error.cause?.code === 'ECONNREFUSED') return null;
  throw error;
}

const get = (url) => answered(fetch(url, { signal: AbortSignal.timeout(PATIENCE_MS) }));
const post = (url, body) =>
  answered(fetch(url, { method: 'POST', body: JSON.stringify(body), signal: AbortSignal.timeout(PATIENCE_MS) }));

async function answered(response) {
  const arrived = await response;
  const { value } = await arrived.json();
  if (!arrived.ok) throw new Error(`${value.error}: ${value.message}`);
  return value;
}

/** The files of a folder, by name; none where there is no folder. */
export function files(folder) {
  try {
    return readdirSync(folder).sort();
  } catch {
    return [];
  }
}
