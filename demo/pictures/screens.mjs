// Pictures of the screens over the demo fleet, as a phone and as a desk show them. Usage: screens.mjs FOLDER
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { made as bench } from '../../tests/screens/states.mjs';
import { browse, demo, open, phone, serve } from '../../tests/screens/support.mjs';

const out = process.argv[2];
mkdirSync(out, { recursive: true });
const ends = [];
const run = { after: (end) => ends.unshift(end) };
const DESK = { width: 1280, height: 800 };

/** Calls a use case from the page, as the screens do. */
const call = (page, name, input) =>
  page.evaluate(
    async ([name, input]) => {
      const token = sessionStorage.getItem('hosewright-token');
      const headers = { 'content-type': 'application/json', 'x-hosewright-token': token };
      const reply = await fetch(`/api/${name}`, { method: 'POST', headers, body: JSON.stringify(input) });
      return reply.json();
    },
    [name, input],
  );

/** A job at the burst hose's place, begun as far as that step. */
async function job(page, step, given) {
  const [at] = (await call(page, 'register.search', { words: 'stick rod' })).hits.filter((hit) => hit.what === 'place');
  const content = { step, at: at.at, ...given };
  await call(page, 'job.keep', { content });
  await page.reload();
}

const { spec, service } = demo('replacement.json');
const readings = demo('burst-readings.json');
const [endA, ...others] = readings.ends;
const { seat_included_angle_deg: _seat, cone: _cone, seal: _seal, swivel_hex_mm: _hex, ...thread } = endA;
/** The thread of end A is read, its seat is not: four families are still open. */
const halfRead = { ...readings, ends: [thread, ...others], mates: [] };
const made = { readings, spec, service: { duties: [], ...service }, settings: demo('settings.json') };

const pictures = [
  ['find', phone, (page) => job(page, 'find', { readings: halfRead }).then(() => page.getByRole('button', { name: /^End A/ }).click())],
  ['check', phone, (page) => job(page, 'check', made)],
  ['make', phone, (page) => job(page, 'make', made)],
  ['tag', phone, (page) => job(page, 'tag', { ...made, ...bench })],
  ['machines', phone, (page) => page.getByRole('button', { name: 'Machines' }).click()],
  ['due-desk', DESK, (page) => page.getByRole('button', { name: /^Due|^\d+\s*Due/ }).click()],
  ['check-desk', DESK, (page) => job(page, 'check', made)],
];

try {
  const browser = await browse(run);
  for (const [name, size, go] of pictures) {
    const { url } = await serve(run);
    const page = await open(run, browser, url, size);
    await go(page);
    await page.waitForLoadState('networkidle');
    await page.screenshot({ path: join(out, `${name}.png`) });
    console.log(join(out, `${name}.png`));
  }
} finally {
  for (const end of ends) await end();
}
