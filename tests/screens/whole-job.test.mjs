// The main job, as a technician does it: what was it, make it, tag it, fit it, and find it again by its tag.
import assert from 'node:assert/strict';
import test from 'node:test';
import { join } from 'node:path';
import { find, fit, make, tag } from './technician.mjs';
import { sound } from './looks.mjs';
import { browse, demo, folder, hosewright, keepJob, open, pick, serve, sizes } from './support.mjs';
import { photograph } from './pictures.mjs';

for (const size of sizes) {
  const at = `${size.width} × ${size.height}`;

  test(`a burst hose is found from caliper, thread gauge and tape, ${at}`, async (t) => {
    const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
    const page = await open(t, browser, url, size);
    await page.getByRole('button', { name: /^Measure/ }).click();
    const questions = await find(page, (where) => sound(page, where));
    assert.ok(questions.length < 25, `${questions.length} questions: ${questions.join(', ')}`);
    await page
      .getByText(/^(PASS|CAUTION|STOP|NOT SETTLED)$/)
      .first()
      .waitFor();
    await sound(page, 'check');
  });

  test(`a checked hose is made, tagged, fitted, and found by its tag, ${at}`, async (t) => {
    const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
    await keepJob(url, {
      step: 'check',
      spec: bare(demo('replacement.json').spec),
      service: { duties: [], ...demo('replacement.json').service },
    });
    const page = await open(t, browser, url, size);
    const look = (where) => sound(page, where);
    const toMake = page.getByRole('contentinfo').getByRole('button', { name: /^Make it/ });
    await toMake.waitFor();
    await look('check');
    await toMake.click();
    await make(page, look);
    const label = join(folder(t), 'label.png');
    await page.getByRole('button', { name: /^Save the label/ }).waitFor();
    await look('tag');
    await tag(page, label);
    await fit(page, { machine: /^Excavator 3/, place: /^14 Stick/, hours: '6813', cause: /^abrasion/ }, look);
    const { code } = JSON.parse(hosewright('tag', 'read', label, '--json'));
    await page.getByRole('heading', { name: 'Done' }).waitFor();
    await page.getByText(code).first().waitFor();
    await look('done');

    const hose = JSON.parse(hosewright('register', '--db', db, 'show', code, '--json'));
    assert.equal(hose.status.state, 'fitted');
    assert.equal(hose.stays[0].at.place_name, 'Stick cylinder, rod side');
    assert.deepEqual(hose.assembly.proof, {
      state: 'not-proved',
      why: 'no-rig',
    });

    await page
      .getByRole('contentinfo')
      .getByRole('button', { name: /^New job/ })
      .click();
    await page.getByRole('button', { name: /Scan or type the tag/ }).click();
    const picture = await photograph(browser, join(folder(t), 'tag.jpg'), [
      { picture: label, x: 150, y: 120, width: 850 },
    ]);
    await pick(page, page.getByRole('button', { name: /^Photograph the tag/ }), picture);
    await page.getByRole('heading', { name: 'Scan a tag' }).waitFor({ state: 'hidden' });
    await page.getByText(code).first().waitFor();
    await look('hose found');
  });
}

test('no key moves while a value of the check is typed', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const { spec, service } = demo('replacement.json');
  await keepJob(url, { step: 'check', spec: bare(spec), service: { duties: [], ...service } });
  const page = await open(t, browser, url, sizes[0]);
  await page.getByRole('button', { name: /^working/ }).click();
  const pad = page.getByRole('group', { name: 'Keypad' });
  const stood = await pad.boundingBox();
  for (const key of ['1', '8', '0', 'Rub out', 'Rub out', 'Rub out', '2']) {
    await pad.getByRole('button', { name: key, exact: true }).click();
    assert.deepEqual(await pad.boundingBox(), stood, `after ${key}`);
  }
});

test('every step of a job has the way out in one place, and the job stays', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const { spec, service } = demo('replacement.json');
  await keepJob(url, { step: 'find', spec: bare(spec), service: { duties: [], ...service } });
  const page = await open(t, browser, url, sizes[0]);
  const leave = page.getByRole('banner').getByRole('button', { name: /^Job Leave/ });
  await leave.waitFor();
  const stood = await leave.boundingBox();
  assert.ok(stood.width >= 48 && stood.height >= 48, JSON.stringify(stood));
  for (const step of ['Check', 'Make', 'Tag', 'Fit']) {
    await page.getByRole('button', { name: step, exact: true }).click();
    await page.locator('[aria-current=step]', { hasText: step }).waitFor();
    const { x, y, width } = await leave.boundingBox();
    assert.deepEqual({ x, y, width }, { x: stood.x, y: stood.y, width: stood.width }, step);
    await sound(page, `${step}, with the way out`);
  }
  await leave.click();
  await page.getByRole('heading', { name: 'One job not done' }).waitFor();
  await page.getByRole('button', { name: /^Hose in the hand.*Fit/s }).click();
  await page.locator('[aria-current=step]', { hasText: 'Fit' }).waitFor();
});

/** The spec before the cut-offs are measured. */
function bare(spec) {
  return { ...spec, ends: spec.ends.map(({ cutoff_mm: _, ...end }) => end) };
}
