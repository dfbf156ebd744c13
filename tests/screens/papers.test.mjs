// Papers of a hose: looked at, signed on the glass, saved.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import test from 'node:test';
import { sound } from './looks.mjs';
import { ask, browse, demo, folder, goTo, keepJob, open, phone, serve, sizes } from './support.mjs';

const END = demo('settings.json')[0];
const { spec, service } = demo('replacement.json');
const settings = ['A', 'B'].map((role) => ({ ...END, role }));
const make = { question: { spec, service: { duties: [], ...service } }, settings };
const TWELVE = Array(12).fill(END.crimp_diameter_mm);

/** Puts a hose on record that was built and proved, or failed; its code. */
async function recorded(url, more = {}) {
  const instrument = { name: 'M1', error_mm: 0.01 };
  const bench = {
    crimps: ['A', 'B'].map((role) => ({ role, readings_mm: TWELVE, instrument })),
    cut_length_mm: 1155,
    finished: { length_mm: 1242, turn_deg: 90 },
    proof: { rig: true, pressure_bar: 412, hold_s: 45, gauge: 'G7', gauge_calibrated: '2026-05-01', ...more },
    steps: [{ code: 'cut', at: '2026-11-26T09:00:00Z' }],
  };
  return (await ask(url, 'bench.record', { make, bench })).code;
}

/** The file that a tap saves. */
async function saved(t, page, tap, name) {
  const [download] = await Promise.all([page.waitForEvent('download'), tap()]);
  const path = join(folder(t), name);
  await download.saveAs(path);
  return readFileSync(path);
}

/** Draws a wave on the pad. */
async function sign(page) {
  const pad = page.getByRole('img', { name: /^Sign here/ });
  const { x, y, width, height } = await pad.boundingBox();
  await page.mouse.move(x + width * 0.1, y + height / 2);
  await page.mouse.down();
  for (let step = 1; step <= 20; step += 1)
    await page.mouse.move(x + width * (0.1 + step * 0.03), y + height * (0.5 + 0.2 * Math.sin(step)));
  await page.mouse.up();
  await page.getByRole('img', { name: 'Signature, as drawn' }).waitFor();
}

for (const size of sizes) {
  test(`a hose on record has a certificate that is signed and saved, ${size.width} × ${size.height}`, async (t) => {
    const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
    const code = await recorded(url);
    const page = await open(t, browser, url, size);
    await goTo(page, 'Machines');
    await page.getByRole('searchbox').first().fill(code);
    await page.getByRole('button', { name: new RegExp(code) }).first().click();
    await page.getByRole('button', { name: /^Papers/ }).click();
    await page.getByRole('button', { name: 'Certificate', exact: true }).click();
    const paper = page.getByRole('img', { name: 'Certificate as it prints' });
    await paper.getByText(code).first().waitFor();
    await paper.getByText(/45 s/).first().waitFor();
    const before = await paper.locator('svg').innerHTML();
    await sign(page);
    await page.waitForFunction(
      (before) => document.querySelector('[role=img][aria-label^=Certificate]').shadowRoot.querySelector('svg').innerHTML !== before,
      before,
    );
    await sound(page, 'certificate');
    await page.getByRole('button', { name: 'Letter', exact: true }).click();
    const arrow = page.getByRole('contentinfo').getByRole('button', { name: /^Save as PDF.*Letter/s });
    await arrow.waitFor();
    const pdf = await saved(t, page, () => arrow.click(), 'certificate.pdf');
    assert.equal(pdf.subarray(0, 5).toString(), '%PDF-');
    // 8.5 by 11 inches, in points.
    assert.match(pdf.toString('latin1'), /MediaBox\s*\[\s*0 0 612(\.0+)? 792/);
  });
}

test('a hose that failed its proof has a report and no certificate', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const code = await recorded(url, { failed: 'leak', pressure_bar: 300 });
  const page = await open(t, browser, url, phone);
  await goTo(page, 'Machines');
  await page.getByRole('searchbox').first().fill(code);
  await page.getByRole('button', { name: new RegExp(code) }).first().click();
  await page.getByText('FAILED ITS PROOF', { exact: true }).waitFor();
  await sound(page, 'failed hose');
  assert.equal(await page.getByText('Print the label again').count(), 0);
  await page.getByRole('button', { name: /^Papers/ }).click();
  await page.getByRole('img', { name: 'Report as it prints' }).getByText(code).first().waitFor();
  assert.equal(await page.getByRole('button', { name: 'Certificate', exact: true }).count(), 0);
});

test('the build sheet of a job is looked at and saved, and the job stands as it was', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  await keepJob(url, { step: 'make', spec, service: make.question.service, settings });
  const page = await open(t, browser, url, phone);
  await page.getByRole('button', { name: /^Papers/ }).click();
  await page.getByRole('img', { name: 'Build sheet as it prints' }).getByText('1155 mm').first().waitFor();
  await page.getByRole('button', { name: 'Look closer' }).click();
  await sound(page, 'build sheet, closer');
  await sound(page, 'build sheet');
  const arrow = page.getByRole('contentinfo').getByRole('button', { name: /^Save as PDF/ });
  const pdf = await saved(t, page, () => arrow.click(), 'sheet.pdf');
  assert.equal(pdf.subarray(0, 5).toString(), '%PDF-');
  await page.getByRole('button', { name: 'Back' }).click();
  await page.getByRole('button', { name: 'Tick: parts are here' }).waitFor();
});
