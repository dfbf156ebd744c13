// On the bench with gloves: what may not be ticked is not, and what is in hand is in view.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import test from 'node:test';
import { SETTINGS } from './readings.mjs';
import { sound } from './looks.mjs';
import { ask, browse, demo, folder, hosewright, keepJob, open, phone, resize, serve, sizes } from './support.mjs';
import { make, stepInView, tag, typeNumber } from './technician.mjs';

const done = (...names) => Object.fromEntries(names.map((name) => [name, '2026-11-25T10:00:00Z']));
const END = {
  insertion_mm: 34,
  skive: 'none',
  ferrule: SETTINGS.Ferrule.text,
  lubricant: SETTINGS.Lubricant.text,
  die_set: SETTINGS['Die set'].text,
  crimp_diameter_mm: 29.4,
  crimp_tolerance_mm: 0.1,
  source: SETTINGS.Source.text,
};
/** Everything up to the first crimp's readings. */
const AT_CRIMP = done(
  ...['fetch-parts', 'cut', 'clean-bore', 'skive.A', 'mark-insertion.A', 'push-on.A', 'crimp.A', 'fine-instrument.A'],
);

/** A page on a checked hose that is being made. */
async function atBench(t, more, expected = {}) {
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
  return open(t, browser, url, phone, expected);
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
  const tap = (times) => page.mouse.click(x + width / 2, y + height / 2, { clickCount: times });
  await tap(2);
  await thumb(page).getByRole('button', { name: 'Tick: bore is clean' }).waitFor();
  assert.equal(await page.getByRole('checkbox', { name: /^Clean the bore/ }).isChecked(), false);
  await page.waitForTimeout(400);
  await tap(1);
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
    crimpedBy: { A: 'micrometer', B: 'micrometer' },
    proving: {
      rig: true,
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

/** A checked hose before anything of it is made: cut-offs and settings are not known. */
function bareJob() {
  const { spec, service } = demo('replacement.json');
  const ends = spec.ends.map(({ cutoff_mm: _, ...end }) => end);
  return {
    step: 'make',
    spec: { ...spec, ends },
    service: { duties: [], ...service },
  };
}

for (const rig of [true, false]) {
  test(`a hose is built ${rig ? 'and proved' : 'without a rig'}, and nothing is lost though every step is begun anew`, async (t) => {
    const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
    const { person } = await ask(url, 'people.add', { name: 'A. Fitter' });
    await keepJob(url, { ...bareJob(), person });
    const page = await open(t, browser, url, phone);
    const reloads = [];
    const between = async (kind) => {
      await page.getByText('Kept', { exact: true }).waitFor();
      await page.reload();
      reloads.push(kind);
    };
    const look = async (where) => {
      await sound(page, where);
    };
    await make(page, look, { rig, between });
    assert.ok(reloads.length > 25, `${reloads.length} reloads`);
    assert.ok(reloads.includes('half a cut-off'), reloads.join(', '));
    const label = join(folder(t), 'label.png');
    await tag(page, label);
    const { code } = JSON.parse(hosewright('tag', 'read', label, '--json'));
    const { assembly } = JSON.parse(hosewright('register', '--db', db, 'show', code, '--json'));
    assert.equal(assembly.proof.state, rig ? 'proved' : 'not-proved');
    const { bench } = assembly;
    assert.deepEqual(
      bench.crimps.map(({ role, verdict, readings_mm }) => [role, verdict, readings_mm.length]),
      [
        ['A', 'pass', 12],
        ['B', 'pass', 12],
      ],
    );
    assert.deepEqual([bench.cut_length_mm, bench.finished.length_mm, bench.finished.turn_deg], [1155, 1242, 90]);
    assert.ok(bench.steps.length > 20 && bench.steps.every(({ by }) => by === person), JSON.stringify(bench.steps));
  });
}

/** Everything up to the rig is done, and there is one. */
const AT_RIG = {
  ticks: {
    ...AT_CRIMP,
    ...done('sleeves', 'mark-insertion.B', 'skive.B', 'push-on.B', 'set-turn', 'crimp.B', 'fine-instrument.B'),
    ...done('measure-crimp.A', 'measure-crimp.B', 'mark-not-moved', 'bore-gauge', 'nuts-free', 'measure-length'),
    ...done('measure-turn', 'flush-and-cap', 'connect-rig', 'bleed-rig', 'close-guard', 'raise-pressure'),
  },
  crimps: { A: Array(12).fill(29.4), B: Array(12).fill(29.4) },
  crimpedBy: { A: 'micrometer', B: 'micrometer' },
  finished: { cut_mm: 1155, length_mm: 1242, turn_deg: 90 },
  proving: {
    rig: true,
    pressure_bar: 300,
    hold_s: null,
    gauge: 'G7',
    calibrated: '2026-05-01',
  },
};

test('a hose that fails its proof ends there: it stays on record as failed, and another one is made', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const { spec, service } = demo('replacement.json');
  const settings = ['A', 'B'].map((role) => ({ role, ...END }));
  await keepJob(url, {
    step: 'make',
    spec,
    service: { duties: [], ...service },
    settings,
    ...AT_RIG,
  });
  const page = await open(t, browser, url, phone);
  await thumb(page).getByRole('button', { name: 'Tick: held' }).waitFor();
  await thumb(page).getByRole('button', { name: 'It failed' }).click();
  await page.getByText('Release all pressure first').waitFor();
  await sound(page, 'how it failed');
  await thumb(page).getByRole('button', { name: 'It leaked' }).click();
  await page.getByText('SCRAP', { exact: true }).waitFor();
  const said = await page.getByText(/on record as [0-9A-Z-]+/).innerText();
  const [, code] = said.match(/on record as ([0-9A-Z-]+)/);
  await page.getByText('Kept', { exact: true }).waitFor();
  await page.reload();
  await page.getByText(`on record as ${code}`).waitFor();
  await sound(page, 'scrap');
  const { assembly, status } = JSON.parse(hosewright('register', '--db', db, 'show', code, '--json'));
  assert.equal(status.state, 'failed-proof');
  assert.deepEqual([assembly.proof.state, assembly.proof.what, assembly.proof.pressure_bar], ['failed', 'leak', 300]);

  await thumb(page)
    .getByRole('button', { name: /^Make it again/ })
    .click();
  await thumb(page).getByRole('button', { name: 'Tick: parts are here' }).waitFor();
  await page.getByText('Scrapped before this one').waitFor();
  await page.getByText('Kept', { exact: true }).waitFor();
  const { jobs } = await ask(url, 'job.list', {});
  assert.deepEqual(
    jobs[0].content.scraps.map((scrap) => [scrap.code, scrap.failed]),
    [[code, 'leak']],
  );
  assert.deepEqual([jobs[0].content.ticks, jobs[0].content.code], [{}, null]);
});

test('a length that is out of its tolerance is measured again or ends the hose, never ticked', async (t) => {
  const page = await atBench(t, {
    ...AT_RIG,
    ticks: {
      ...AT_CRIMP,
      ...done('measure-crimp.A', 'sleeves', 'mark-insertion.B', 'skive.B', 'push-on.B', 'set-turn'),
      ...done('crimp.B', 'fine-instrument.B', 'measure-crimp.B', 'mark-not-moved', 'bore-gauge', 'nuts-free'),
    },
    finished: { cut_mm: 1155, length_mm: 1275, turn_deg: null },
    proving: undefined,
  });
  await thumb(page)
    .getByRole('button', { name: /^Measure again: 1275/ })
    .waitFor();
  await page.getByRole('checkbox', { name: /^Measure the finished length/ }).click();
  await thumb(page).getByRole('heading', { name: 'Length' }).waitFor();
  await page.getByRole('button', { name: 'Back' }).click();
  await thumb(page).getByRole('button', { name: 'It did not pass' }).click();
  await thumb(page)
    .getByRole('button', { name: /^It is scrap/ })
    .click();
  await page.getByText('SCRAP', { exact: true }).waitFor();
  await thumb(page)
    .getByRole('button', { name: /^Make it again/ })
    .waitFor();
});

test('a caliper that is too coarse for the crimp is said before it reads anything, and gives way to the micrometer', async (t) => {
  const page = await atBench(t, { ticks: AT_CRIMP });
  await thumb(page)
    .getByRole('button', { name: /^Read A with the micrometer.*too coarse/s })
    .click();
  await page.getByText('micrometer ± 0.01').first().waitFor();
  await page.getByText('Not read yet').first().waitFor();
  await thumb(page).getByRole('button', { name: 'Read the crimp at A' }).waitFor();
  assert.equal(await page.getByRole('checkbox', { name: /^A: Measure the crimp/ }).isChecked(), false);
});

/** Everything up to pressing A, and nothing of the supplier's figures. */
const AT_PRESS = done('fetch-parts', 'cut', 'clean-bore', 'skive.A', 'mark-insertion.A', 'push-on.A');

test('a crimp without its figures is never ticked like a sound one, and such a hose shows no label', async (t) => {
  const page = await atBench(t, { settings: [], ticks: AT_PRESS });
  const crimp = page.getByRole('checkbox', { name: /^A: Crimp with/ });
  await thumb(page).getByRole('button', { name: 'Enter: Ferrule, end A' }).waitFor();
  await crimp.click();
  await thumb(page).getByRole('heading', { name: 'Ferrule, end A' }).waitFor();
  await thumb(page).getByRole('button', { name: 'Back' }).click();
  assert.equal(await crimp.isChecked(), false);
  await sound(page, 'a crimp without its figures');
  await thumb(page).getByRole('button', { name: /^Done by a sheet, not entered/ }).click();
  await thumb(page).getByRole('button', { name: 'Enter: Crimp diameter, end A' }).waitFor();
  await page.getByRole('button', { name: '7 steps done' }).click();
  await page.getByRole('checkbox', { name: /^A: Crimp with.*no pass/s, checked: true }).waitFor();

  await page.getByRole('navigation', { name: 'Steps of the job' }).getByRole('button', { name: 'Tag' }).click();
  await page.getByText('NOT FINISHED').waitFor();
  await page.getByText('The crimp at B is not read and inside.').waitFor();
  await sound(page, 'the tag of an unfinished hose');
  assert.equal(await page.getByRole('img', { name: /^Label of/ }).count(), 0);
  assert.equal(await page.getByRole('button', { name: /^(Save|Print|Share|Write it by hand)/ }).count(), 0);
  await thumb(page).getByRole('button', { name: 'Finish it on the bench' }).click();
  await thumb(page).getByRole('button', { name: 'Enter: Crimp diameter, end A' }).waitFor();
});

test('a target is asked about where it can hardly be, then its tolerance, then whose it is', async (t) => {
  const { crimp_diameter_mm: _, crimp_tolerance_mm: __, source: ___, ...rest } = END;
  const page = await atBench(t, { settings: [{ role: 'A', ...rest }], ticks: AT_PRESS });
  const type = async (keys) => {
    await typeNumber(page, keys, 'mm');
    await thumb(page).getByRole('button', { name: /^Keep/ }).click();
  };
  await thumb(page).getByRole('button', { name: 'Enter: Crimp diameter, end A' }).click();
  await type('0.2');
  await page.getByText(/less than the .* over the wires of this hose/).waitFor();
  await sound(page, 'a diameter that can hardly be');
  await thumb(page).getByRole('button', { name: /^Type it again/ }).click();
  for (const _ of '0.2') await page.getByRole('button', { name: 'Rub out' }).click();
  await type('28.5');
  await thumb(page).getByRole('button', { name: 'Enter: Crimp tolerance, end A' }).click();
  await type('0.2');
  await thumb(page).getByRole('button', { name: 'Enter: Source, end A' }).click();
  await page.keyboard.type('sheet 4');
  await thumb(page).getByRole('button', { name: /^Keep/ }).click();
  await thumb(page).getByRole('button', { name: 'Tick: A is crimped' }).waitFor();
});

test('the way to the proof leads to the proof', async (t) => {
  const ticks = Object.fromEntries(Object.entries(AT_RIG.ticks).filter(([name]) => !/rig|guard|pressure/.test(name)));
  const page = await atBench(t, { ...AT_RIG, ticks, step: 'tag', proving: undefined });
  await thumb(page).getByRole('button', { name: 'Say whether it was proved' }).click();
  await thumb(page).getByRole('button', { name: /^Prove at/ }).waitFor();
  await thumb(page).getByRole('button', { name: 'No rig' }).waitFor();
});

test('a mistyped cut-off is asked about, and a reading is taken away', async (t) => {
  const page = await atBench(t, { ...bareJob(), ticks: done('fetch-parts') }, { refused: ['cutoff.measured'] });
  await thumb(page).getByRole('button', { name: 'Measure the cut-off of A' }).click();
  const title = (reading) => thumb(page).getByRole('heading', { name: `Cut-off A, reading ${reading}` });
  const type = async (keys) => {
    await typeNumber(page, keys, 'mm');
    await thumb(page).getByRole('button', { name: /^Keep/ }).click();
  };
  await type('3838.4');
  await page.getByText(/no less than the whole hose of 1240/).waitFor();
  await thumb(page).getByRole('button', { name: /^3838.4\smm is right/ }).click();
  await thumb(page).getByRole('button', { name: /^Measure A anew/ }).waitFor();
  await page.getByText('One of the readings can not be').first().waitFor();
  await page.getByRole('button', { name: /^Take away reading 1: 3838.4/ }).click();
  await thumb(page).getByRole('button', { name: 'Measure the cut-off of A' }).click();
  await title(1).waitFor();
  await type('41');
  await title(2).waitFor();
  await page.getByText('show whether they agree').waitFor();
  await sound(page, 'readings of a cut-off');
});

for (const size of sizes) {
  test(`the bench is sound in inches and by psi, ${size.width} × ${size.height}`, async (t) => {
    const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
    const settings = await ask(url, 'settings.read', {});
    const { unreadable: _, catalogue: __, program: ___, ...kept } = settings;
    await ask(url, 'settings.write', {
      ...kept,
      length_unit: 'inch',
      pressure_unit: 'psi',
    });
    const { spec, service } = demo('replacement.json');
    const ends = ['A', 'B'].map((role) => ({ role, ...END }));
    await keepJob(url, {
      step: 'make',
      spec,
      service: { duties: [], ...service },
      settings: ends,
      ...AT_RIG,
    });
    const page = await open(t, browser, url, size);
    await thumb(page).getByRole('button', { name: 'Tick: held' }).waitFor();
    await page
      .getByText(/5980\spsi \(412\sbar\)/)
      .first()
      .waitFor();
    await sound(page, 'bench in inches');
  });
}

test('the finished length is read in one piece, its tolerance with it', async (t) => {
  const page = await atBench(t, {
    ...AT_RIG,
    ticks: {
      ...AT_CRIMP,
      ...done('measure-crimp.A', 'sleeves', 'mark-insertion.B', 'skive.B', 'push-on.B', 'set-turn'),
      ...done('crimp.B', 'fine-instrument.B', 'measure-crimp.B', 'mark-not-moved', 'bore-gauge', 'nuts-free'),
    },
    finished: { cut_mm: 1155, length_mm: null, turn_deg: null },
    proving: undefined,
  });
  for (const { width, height } of sizes) {
    await resize(page, { width, height });
    const figure = page.locator('.figure').filter({ hasText: '1240' });
    await figure.getByText('+12 −4', { exact: true }).waitFor();
    // A line box a word: parted words have two.
    const lines = await figure.evaluate((whole) =>
      [...whole.querySelectorAll('b, small')].map((word) => word.getClientRects().length),
    );
    assert.deepEqual(lines, [1, 1], `at ${width} px`);
    const { x, width: wide } = await figure.locator('b').boundingBox();
    assert.ok(x >= 0 && x + wide <= width, `inside ${width} px`);
  }
});
