// How large the program is, how long it takes until it can be used, the memory it holds then, and how soon a key that
// is pressed in Find shows what it changes.
// Called by `cargo xtask app-size`.

import { readFileSync, statSync } from 'node:fs';
import { Device, PROGRAM, processes } from './driver.mjs';
import { find, typeNumber } from './technician.mjs';

const RUNS = 5;
const KEYS = 20;
const TICKS_A_SECOND = 100; // USER_HZ of Linux

/** Seconds since a process began. */
function age(pid) {
  const uptime = Number(readFileSync('/proc/uptime', 'utf8').split(' ')[0]);
  const began = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1].split(' ')[19];
  return uptime - Number(began) / TICKS_A_SECOND;
}

/** The process's share of memory, in MB: what it shares is divided among those that share it. */
function share(pid) {
  const kilobytes = /^Pss:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/smaps_rollup`, 'utf8'))[1];
  return Number(kilobytes) / 1024;
}

const sum = (numbers) => numbers.reduce((all, one) => all + one, 0);
const median = (numbers) => numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)];

/**
 * Milliseconds from a key to the candidates with their new shares: a digit of the thread and its rubbing out, one after
 * the other, where every reading of the hose and of end A stands, so that all is weighed.
 */
async function keyToCandidates(device) {
  const program = await device.open();
  await program.click('button', 'Measure');
  await find(program, ({ part, reading }) => part === 'End B' && reading.startsWith('Thread Ø'));
  await typeNumber(program, '23.', 'mm');
  return program.later(async (keys) => {
    const share = (node) => (node instanceof Element ? node : node.parentElement)?.closest('.percent');
    const holds = (node) => node instanceof Element && node.querySelector('.percent');
    const pressed = (key) =>
      new Promise((shown) => {
        const watch = new MutationObserver((changes) => {
          if (!changes.some(({ target, addedNodes }) => share(target) || [...addedNodes].some(holds))) return;
          watch.disconnect();
          shown(performance.now() - began);
        });
        watch.observe(document.querySelector('main'), { subtree: true, childList: true, characterData: true });
        const began = performance.now();
        window.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
      });
    // The first two let what was typed before come to rest.
    const times = [];
    for (let count = 0; count < keys + 2; count++) times.push(await pressed(count % 2 === 0 ? '5' : 'Backspace'));
    return times.slice(2);
  }, KEYS);
}

const starts = [];
const memory = [];
let count = 0;
for (let run = 0; run < RUNS; run++) {
  const device = new Device();
  const program = await device.open();
  starts.push(age(program.pid));
  const all = processes(program.pid);
  count = all.length;
  memory.push(sum(all.map(share)));
  await device.remove();
}

const typing = new Device();
const keys = await keyToCandidates(typing).finally(() => typing.remove());

const line = (what, value) => console.log(`${what.padEnd(52)}${value}`);
line('program', `${(statSync(PROGRAM).size / 1e6).toFixed(1)} MB`);
line(`from start until its screens are up, median of ${RUNS}`, `${median(starts).toFixed(2)} s`);
line(`memory (PSS) of its ${count} processes then`, `${median(memory).toFixed(0)} MB`);
line(`from a key in Find to its candidates, median of ${KEYS}`, `${median(keys).toFixed(1)} ms`);
line('the slowest of these', `${Math.max(...keys).toFixed(1)} ms`);
