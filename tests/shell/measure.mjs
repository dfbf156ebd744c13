// How large the program is, how long it takes until it can be used, and the memory it holds then.
// Called by `cargo xtask app-size`.

import { readFileSync, statSync } from 'node:fs';
import { Device, PROGRAM, processes } from './driver.mjs';

const RUNS = 5;
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

const line = (what, value) => console.log(`${what.padEnd(52)}${value}`);
line('program', `${(statSync(PROGRAM).size / 1e6).toFixed(1)} MB`);
line(`from start until its screens are up, median of ${RUNS}`, `${median(starts).toFixed(2)} s`);
line(`memory (PSS) of its ${count} processes then`, `${median(memory).toFixed(0)} MB`);
