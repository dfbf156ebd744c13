// The van in the real window: it is loaded, three hoses are made from it, and what two devices did to it adds up.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { CRIMP, SETTINGS } from '../screens/readings.mjs';
import { device, files, until } from './driver.mjs';
import { make, typeNumber } from './technician.mjs';

const { spec, service } = JSON.parse(readFileSync(new URL('../../demo/replacement.json', import.meta.url), 'utf8'));
const STORE = 'Van 1';
const KERF_MM = 2;
const REEL_MM = 20_000;
/** What the build sheet of the demo's replacement is cut to. */
const CUT_MM = 1155;

const job = {
  step: 'make',
  spec,
  service: { duties: [], ...service },
  settings: ['A', 'B'].map((role) => ({
    role,
    insertion_mm: 34,
    skive: 'none',
    ferrule: SETTINGS.Ferrule.text,
    lubricant: SETTINGS.Lubricant.text,
    die_set: SETTINGS['Die set'].text,
    crimp_diameter_mm: Number(CRIMP),
    crimp_tolerance_mm: 0.1,
  })),
};
const end = ({ family, size, gender, form }) => ({ kind: 'end', family, size, gender, form, dn: spec.hose.dn });

/** Loads hose and ferrules by the thumb, ends through the program's own way in. */
async function load(program) {
  await program.click('button', /^Van$/);
  await program.click('button', /^Stock /, 'main');
  await program.click('button', /^Load /, 'footer');
  await program.click('button', `DN${spec.hose.dn}`);
  await program.click('button', new RegExp(`^${spec.hose.standard} ${spec.hose.type}$`));
  await program.type('Name of the store', STORE);
  await program.click('button', /^How long is it/, 'footer');
  await typeNumber(program, String(REEL_MM / 1000), 'm');
  await program.click('button', /^Load$/, 'footer');
  await program.text('20 m loaded'.replace(' ', '\u00a0'));
  await program.click('button', /^Load /, 'footer');
  await program.click('button', /^Ferrules$/);
  await program.click('button', `DN${spec.hose.dn}`);
  await program.type('as on the bag', SETTINGS.Ferrule.text);
  await program.click('button', /^How many/, 'footer');
  await typeNumber(program, '12');
  await program.click('button', /^Load$/, 'footer');
  await program.text('12 loaded');
  // The store is this device's own since the first thing was loaded; the saw is said beside it.
  const { catalogue: _, program: __, unreadable: ___, ...now } = await program.call('settings.read');
  assert.equal(now.store, STORE);
  await program.call('settings.write', { ...now, kerf_mm: KERF_MM });
  await program.call('stock.change', {
    changes: spec.ends.map((one) => ({ do: 'load', store: STORE, item: end(one), count: 5 })),
  });
}

/** What is there: hose in mm, and the counted things by name. */
async function counts(program) {
  const { hoses, items, said } = await program.call('stock.list', { store: STORE, all: true });
  return {
    hose: hoses.reduce((sum, { total_mm }) => sum + total_mm, 0),
    items: Object.fromEntries(items.map(({ name, quantity }) => [name, quantity]).sort()),
    said,
  };
}

/** Takes the hose in hand off the stock, and keeps it with its label. */
async function keepHose(program) {
  await program.click('button', /^Save the label and keep the hose/);
  // Nobody said when the reel was made: that is read before one goes on.
  await program.click('button', /^Fit the hose/, 'footer');
  return until('the hose is on record', async () => {
    const [{ content }] = (await program.call('job.list')).jobs;
    return content.step === 'fit' && content.code;
  });
}

/** Leaves a bundle among the downloads, by the thumb. */
async function bundle(program, own) {
  const folder = join(own.downloads, 'hosewright');
  const before = new Set(files(folder).filter((name) => name.endsWith('.bundle')));
  await program.click('button', /^Van$/);
  await program.click('button', /^Records in and out/);
  await program.click('button', /^Bundle for another van/);
  const name = await until('the bundle is there', () =>
    files(folder).find((name) => name.endsWith('.bundle') && !before.has(name)),
  );
  return readFileSync(join(folder, name), 'utf8');
}

const merge = (program, text) => program.send('call', { name: 'register.merge', input: {} }, text);

test('a van is loaded, three hoses are made from it, and merged with a second device the count agrees', async (t) => {
  const own = device(t);
  let program = await own.open();
  await load(program);
  const codes = [];
  let before = null;
  for (let made = 0; made < 3; made += 1) {
    // The first is made step by step; of the two after it the bench's readings stand already.
    await program.call('job.keep', { job: null, content: before ?? job });
    await program.kill();
    program = await own.open();
    if (before) await program.click('button', /^Make the tag/, 'footer');
    else {
      await program.click('button', /^Take this off the stock/);
      await make(program);
    }
    if (before) await program.click('button', /^Take this off the stock/);
    before ??= await until('what was done is kept', async () => {
      const [{ content }] = (await program.call('job.list')).jobs;
      return content.step === 'tag' && { ...content, step: 'make', stock: null, code: null, assembled: null };
    });
    codes.push(await keepHose(program));
    const [{ job: done }] = (await program.call('job.list')).jobs;
    await program.call('job.close', { job: done });
  }
  assert.equal(new Set(codes).size, 3, codes.join(', '));

  const left = await counts(program);
  assert.equal(left.hose, REEL_MM - 3 * (CUT_MM + KERF_MM), 'three cuts and what the saw took');
  assert.deepEqual(Object.values(left.items).sort((a, b) => a - b), [2, 2, 6], JSON.stringify(left.items));
  assert.deepEqual(left.said, []);

  // A second device takes it over, and both go on by themselves.
  const other = device(t);
  const second = await other.open();
  await merge(second, await bundle(program, own));
  assert.deepEqual(await counts(second), left);
  const ferrule = { kind: 'ferrule', name: SETTINGS.Ferrule.text, dn: spec.hose.dn };
  const change = (program, changes) => program.call('stock.change', { changes });
  await change(second, [{ do: 'load', store: STORE, item: ferrule, count: 20 }]);
  await change(program, [{ do: 'scrap', store: STORE, item: ferrule, count: 1 }]);
  // One of the three is undone on the second device: what it took comes back once.
  await second.call('bench.undo', { code: codes[2], reason: 'wrong hose' });

  await merge(program, await bundle(second, other));
  await merge(second, await bundle(program, own));
  const [here, there] = [await counts(program), await counts(second)];
  assert.deepEqual(here, there);
  assert.equal(here.hose, REEL_MM - 2 * (CUT_MM + KERF_MM));
  assert.deepEqual(Object.values(here.items).sort((a, b) => a - b), [3, 3, 27], JSON.stringify(here.items));
  assert.deepEqual((await program.call('register.verify')).faults, []);
});
