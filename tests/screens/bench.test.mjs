// On the bench with gloves: what may not be ticked is not, and what is in hand is in view.
import assert from 'node:assert/strict';
import test from 'node:test';
import { SETTINGS } from './readings.mjs';
import { browse, demo, keepJob, open, phone, serve } from './support.mjs';
import { stepInView } from './technician.mjs';

const done = (...names) => Object.fromEntries(names.map((name) => [name, '2026-11-25T10:00:00Z']));
const END = {
  insertion_mm: 34,
  skive: 'none',
  ferrule: SETTINGS.Ferrule.text,
  lubricant: SETTINGS.Lubricant.text,
  die_set: SETTINGS['Die set'].text,
  crimp_diameter_mm: 29.4,
  crimp_tolerance_mm: 0.1,
};
/** Everything up to the first crimp's readings. */
const AT_CRIMP = done(
  ...['fetch-parts', 'cut', 'clean-bore', 'skive.A', 'mark-insertion.A', 'push-on.A', 'crimp.A', 'fine-instrument.A'],
);

/** A page on a checked hose that is being made. */
async function atBench(t, more) {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const { spec, service } = demo('replacement.json');
  const settings = ['A', 'B'].map((role) => ({ role, ...END }));
  await keepJob(url, {
    step: 'make',
    spec,
    service: { duties: [], ...service },
    settings,
    ...more,
  });
  return open(t, browser, url, phone);
}

const thumb = (page) => page.getByRole('contentinfo');

test('a crimp that lies outside is read or crimped again, never ticked, and gets no tag', async (t) => {
  const page = await atBench(t, {
    ticks: AT_CRIMP,
    crimps: { A: [29.4, 29.55, 29.42, 29.38], B: [] },
  });
  await thumb(page).getByRole('button', { name: 'Read again at A: 29.55' }).waitFor();
  assert.equal(await thumb(page).getByRole('button', { name: /^Tick/ }).count(), 0);
  await page.getByRole('checkbox', { name: /^A: Measure the crimp/ }).click();
  await page.getByRole('heading', { name: /Crimp A, reading/ }).waitFor();
  await page.getByRole('button', { name: 'Back' }).click();
  assert.equal(await page.getByRole('checkbox', { name: /^A: Measure the crimp/ }).isChecked(), false);

  await page.getByRole('navigation', { name: 'Steps of the job' }).getByRole('button', { name: 'Tag' }).click();
  await thumb(page).getByRole('button', { name: 'Crimp A lies outside' }).click();
  await thumb(page).getByRole('button', { name: 'Crimp A again' }).click();
  await thumb(page).getByRole('button', { name: 'Tick: A is crimped' }).waitFor();
});

test('a second tap of the same thumb ticks nothing more', async (t) => {
  const page = await atBench(t, { ticks: done('fetch-parts') });
  const arrow = thumb(page).getByRole('button', { name: 'Tick: hose is cut' });
  await arrow.waitFor();
  const { x, y, width, height } = await arrow.boundingBox();
  const tap = () => page.mouse.click(x + width / 2, y + height / 2);
  await tap();
  await tap();
  await thumb(page).getByRole('button', { name: 'Tick: bore is clean' }).waitFor();
  assert.equal(await page.getByRole('checkbox', { name: /^Clean the bore/ }).isChecked(), false);
  await page.waitForTimeout(400);
  await tap();
  await thumb(page).getByRole('button', { name: 'Tick: bore is clean' }).waitFor({ state: 'hidden' });
});

test('each step of proving stands in view with its caution, above what is written down', async (t) => {
  const steps = ['sleeves', 'mark-insertion.B', 'skive.B', 'push-on.B', 'set-turn', 'crimp.B', 'fine-instrument.B'];
  const after = ['measure-crimp.A', 'measure-crimp.B', 'mark-not-moved', 'bore-gauge', 'nuts-free', 'measure-length'];
  const page = await atBench(t, {
    ticks: {
      ...AT_CRIMP,
      ...done(...steps, ...after, 'measure-turn', 'flush-and-cap'),
    },
    crimps: { A: Array(12).fill(29.4), B: Array(12).fill(29.4) },
    proving: {
      rig: true,
      failed: false,
      pressure_bar: null,
      hold_s: null,
      gauge: '',
      calibrated: null,
    },
  });
  const arrow = thumb(page).getByRole('button').first();
  const held = page.getByRole('button', { name: /^Pressure held/ });
  for (let ticked = 0; ; ticked += 1) {
    await arrow.waitFor();
    const verb = (await arrow.innerText()).split('\n')[0];
    if (!verb.startsWith('Tick')) {
      assert.equal(verb, 'Write down what was held');
      assert.ok(ticked >= 5, `${ticked} steps of proving`);
      return;
    }
    await stepInView(page);
    const step = page.locator('.steps > [aria-current=step]');
    const [above, below] = await Promise.all([step.boundingBox(), held.boundingBox()]);
    assert.ok(above.y + above.height <= below.y, `${verb}: the step stands above the rows`);
    await arrow.click();
    await thumb(page).getByRole('button', { name: verb }).waitFor({ state: 'hidden' });
  }
});
