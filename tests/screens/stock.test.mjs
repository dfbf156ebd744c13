// What the van carries: loaded, counted, used by a build and given back; several hoses at once, their price, the round.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { CRIMP, SETTINGS } from './readings.mjs';
import { sound } from './looks.mjs';
import { ask, browse, demo, folder, goTo, keepJob, open, phone, pick, serve, sizes, still } from './support.mjs';
import { make, tag, typeNumber } from './technician.mjs';

const thumb = (page) => page.getByRole('contentinfo');
const button = (page, name) => page.getByRole('button', { name });
const back = (page) => page.getByRole('button', { name: 'Back', exact: true }).click();
/** Store, offcuts, prices as the demo's van has them: they stay on each device. */
async function set(url) {
  const { catalogue: _, program: __, unreadable: ___, ...now } = await ask(url, 'settings.read', {});
  await ask(url, 'settings.write', { ...now, ...demo('van.json') });
}

/** The demo's van: its settings and what lies in it. */
async function stocked(url) {
  await set(url);
  await ask(url, 'stock.change', { changes: demo('stock.json') });
}

const list = (url, more = {}) => ask(url, 'stock.list', more);

/** The counted thing of that name in a store. */
async function counted(url, name, store = 'Van 2') {
  const { items } = await list(url, { store, all: true });
  return items.find((item) => item.name.includes(name))?.quantity;
}

async function toStock(page) {
  await goTo(page, 'Van');
  await button(page, /^Stock /).first().click();
  await page.locator('.title', { hasText: /Stock|Van/ }).first().waitFor();
}

test('an empty van is loaded with the thumb, and what was loaded by a slip is taken back', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url);
  await toStock(page);
  await page.getByText('Nothing is kept yet').waitFor();
  await sound(page, 'empty stock');

  await button(page, /^Load /).click();
  await button(page, 'DN16').click();
  await page.getByRole('button', { name: 'EN 853 2SN', exact: true }).click();
  await page.getByLabel('Name of the store').fill('Van 1');
  await page.getByLabel('Bin').fill('R1');
  await sound(page, 'what comes in');
  await thumb(page).getByRole('button', { name: /^How long is it/ }).click();
  await typeNumber(page, '20', 'm');
  await sound(page, 'how long');
  await button(page, 'Load').click();
  await page.getByText('20 m loaded: EN 853 2SN DN16').waitFor();

  await button(page, /^Load /).click();
  await page.getByRole('button', { name: 'Ferrules', exact: true }).click();
  await page.getByLabel('Name', { exact: true }).fill('S16');
  assert.equal(await thumb(page).getByRole('button', { name: /^How many/ }).count(), 0, 'for which hose?');
  await page.getByRole('button', { name: 'DN16', exact: true }).click();
  await thumb(page).getByRole('button', { name: /^How many/ }).click();
  await typeNumber(page, '80');
  await button(page, 'Load').click();
  await page.getByText(/^80 loaded: S16/).waitFor();
  assert.equal(await counted(url, 'S16', 'Van 1'), 80);
  await button(page, 'Take it back').click();
  await page.getByText(/^80 loaded: S16/).waitFor({ state: 'hidden' });
  await still(page);
  assert.equal((await counted(url, 'S16', 'Van 1')) ?? 0, 0);

  const { hoses } = await list(url);
  assert.deepEqual(
    hoses.map(({ store, total_mm, pieces }) => [store, total_mm, pieces[0].sort, pieces[0].bin]),
    [['Van 1', 20_000, 'reel', 'R1']],
  );
  const { store } = await ask(url, 'settings.read', {});
  assert.equal(store, 'Van 1', 'the first store that is named is this device’s own');
});

test('a thing is corrected, moved, scrapped, given a low mark and a price; a piece is measured and scrapped', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  await stocked(url);
  const change = (changes) => ask(url, 'stock.change', { changes });
  await change([{ do: 'load', store: 'Van 2', item: { kind: 'seal', name: 'Test ring 7' }, count: 9, bin: 'Q1' }]);
  const page = await open(t, browser, url);
  await toStock(page);
  await page.getByLabel('Search').fill('Test ring');
  await page.getByRole('list', { name: 'Seals' }).getByRole('button', { name: /Test ring 7/ }).click();

  await button(page, /^It is really another number/).click();
  await typeNumber(page, '7');
  await button(page, 'Keep it').click();
  await page.getByText('7 are there: Test ring 7').waitFor();

  await button(page, /^Low at/).click();
  await typeNumber(page, '8');
  await button(page, 'Keep it').click();
  await button(page, /^Low at 8/).waitFor();

  await button(page, /^Price of one/).click();
  await typeNumber(page, ['1', '.', '2', '5']);
  await button(page, 'Keep it').click();
  await page.getByText('1.25 EUR').waitFor();
  await sound(page, 'a thing of the stock');

  await button(page, /^Move /).click();
  await button(page, 'another').click();
  await page.getByLabel('Name of the store').fill('Workshop');
  await typeNumber(page, '2');
  await sound(page, 'where it goes');
  await page.getByRole('button', { name: 'Move', exact: true }).click();
  await page.getByText('2 to Workshop: Test ring 7').waitFor();
  assert.deepEqual(
    [await counted(url, 'Test ring 7'), await counted(url, 'Test ring 7', 'Workshop')],
    [5, 2],
  );

  // More than is there: it is written, and said plainly.
  await button(page, /^Scrap some/).click();
  await typeNumber(page, '6');
  await button(page, 'Keep it').click();
  await page.getByText(/more went than was ever entered/).waitFor();
  await page.getByText('More went out than was ever taken in').waitFor();
  assert.equal(await counted(url, 'Test ring 7'), -1);
  await back(page);
  await page.getByLabel('Search').fill('');
  const low = page.getByRole('list', { name: 'Low' });
  await low.getByRole('button', { name: /Test ring 7.*less than nothing/ }).waitFor();

  const before = (await list(url, { store: 'Van 2' })).hoses.flatMap(({ pieces }) => pieces);
  const offcut = before.find(({ sort, length_mm }) => sort === 'offcut' && length_mm === 1640);
  const row = page.getByRole('list', { name: 'Hose' }).getByRole('button', { name: /Offcut.*1640/ });
  // Where it is tapped is where it stands once it is in sight.
  await row.scrollIntoViewIfNeeded();
  await row.click();
  await button(page, /^It is really another number/).click();
  await typeNumber(page, '1600', 'mm');
  await button(page, 'Keep it').click();
  await page.getByText('1600 mm are there').waitFor();
  await button(page, /^Scrap this piece/).click();
  await page.getByText('1600 mm scrapped').waitFor();
  const after = (await list(url, { store: 'Van 2' })).hoses.flatMap(({ pieces }) => pieces);
  assert.ok(!after.some(({ piece }) => piece === offcut.piece), 'the piece is gone');
  await button(page, 'Take it back').click();
  await page.getByText('1600 mm scrapped').waitFor({ state: 'hidden' });
  const again = (await list(url, { store: 'Van 2' })).hoses.flatMap(({ pieces }) => pieces);
  assert.equal(again.find(({ piece }) => piece === offcut.piece).length_mm, 1600);
});

test('a bin is counted one by one, survives a reload, and nothing is saved before the differences are seen', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  await stocked(url);
  await ask(url, 'stock.change', {
    changes: [
      { do: 'load', store: 'Van 2', item: { kind: 'seal', name: 'Ring A' }, count: 9, bin: 'Q7' },
      { do: 'load', store: 'Van 2', item: { kind: 'seal', name: 'Ring B' }, count: 4, bin: 'Q7' },
      { do: 'load', store: 'Van 2', item: { kind: 'seal', name: 'Ring C' }, count: 2, bin: 'Q7' },
    ],
  });
  const page = await open(t, browser, url);
  await toStock(page);
  await button(page, /^Stock take/).click();
  await page.getByLabel('Or type the bin’s name').fill('q7');
  await sound(page, 'which bin');
  await button(page, /^Count this bin/).click();
  await page.getByRole('button', { name: /Ring A.*known: 9/ }).waitFor();
  await sound(page, 'the bin');
  await button(page, /^Count the first/).click();
  await typeNumber(page, '7');
  await button(page, 'Counted').click();
  // The next of the bin is asked at once.
  await page.getByText('Ring B').first().waitFor();
  await sound(page, 'a count');

  await page.reload();
  await toStock(page);
  await button(page, /^Stock take/).click();
  await page.getByText('1 of 3 counted').waitFor();
  await button(page, /^Count the next/).click();
  await typeNumber(page, '4');
  await button(page, 'Counted').click();
  await page.getByText('Ring C').first().waitFor();
  await back(page);
  await button(page, 'Show the differences').click();
  await page.getByText('known 9, counted 7').waitFor();
  await page.getByRole('heading', { name: /^Not counted/ }).waitFor();
  await sound(page, 'differences');
  assert.equal(await counted(url, 'Ring A'), 9, 'nothing is saved yet');
  await button(page, /^Save the count/).click();
  await page.getByText('1 difference saved').waitFor();
  assert.deepEqual(await Promise.all(['Ring A', 'Ring B', 'Ring C'].map((name) => counted(url, name))), [7, 4, 2]);
  await button(page, 'Take it back').click();
  await page.getByText('1 difference saved').waitFor({ state: 'hidden' });
  await still(page);
  assert.equal(await counted(url, 'Ring A'), 9);
});

const END = {
  insertion_mm: 34,
  skive: 'none',
  ferrule: SETTINGS.Ferrule.text,
  lubricant: SETTINGS.Lubricant.text,
  die_set: SETTINGS['Die set'].text,
  crimp_diameter_mm: Number(CRIMP),
  crimp_tolerance_mm: 0.1,
};

/** A job on the bench whose parts are in the van. */
async function benched(url) {
  const { spec, service } = demo('replacement.json');
  const { hose } = spec;
  const part = ({ family, size, gender, form }) => ({ kind: 'end', family, size, gender, form, dn: hose.dn });
  const { catalogue: _, program: __, unreadable: ___, ...now } = await ask(url, 'settings.read', {});
  await ask(url, 'settings.write', { ...now, store: 'Van 1', kerf_mm: 2 });
  await ask(url, 'stock.change', {
    changes: [
      ...[
        ['reel', 12_400, 'R3'],
        ['offcut', 1640, ''],
      ].map(([sort, length_mm, label]) => ({
        ...{ do: 'load-hose', store: 'Van 1', hose: { kind: 'hose', ...hose }, sort, length_mm, bin: 'B2' },
        ...(label && { label }),
      })),
      { do: 'load', store: 'Van 1', item: { kind: 'ferrule', name: END.ferrule, dn: hose.dn }, count: 6, bin: 'C4' },
      ...spec.ends.map((end) => ({ do: 'load', store: 'Van 1', item: part(end), count: 3, bin: 'C1' })),
    ],
  });
  const settings = ['A', 'B'].map((role) => ({ role, ...END }));
  await keepJob(url, { step: 'make', spec, service: { duties: [], ...service }, settings });
}

const lengths = async (url) =>
  (await list(url, { store: 'Van 1' })).hoses.flatMap(({ pieces }) => pieces.map(({ length_mm }) => length_mm)).sort((a, b) => b - a);

test('a build says which piece it is cut from, takes what it used off the stock, and gives it back when it is undone', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  await benched(url);
  const page = await open(t, browser, url);
  await page.getByRole('heading', { name: 'From Van 1' }).waitFor();
  await page.getByText(/^Cut from Offcut/).waitFor();
  await button(page, /^Reel R3/).click();
  await page.getByText(/^Cut from Reel · R3/).waitFor();
  await button(page, /^Take this off the stock/).click();
  await page.getByText(/^Goes off Van 1 with this hose: 1155\smm of hose, 4 parts/).waitFor();
  await sound(page, 'what goes off the stock');
  // Who looks at the stock keeps it in view: the page stood still, and the step is scrolled to by hand.
  await page.locator('.steps > [aria-current=step]').scrollIntoViewIfNeeded();
  await make(page, async () => {});
  await page.getByText(/^Goes off Van 1/).waitFor();
  assert.deepEqual(await lengths(url), [12_400, 1640], 'nothing goes off before the hose is on record');
  const label = join(folder(t), 'label.png');
  await tag(page, label);
  await page.getByText('Kept', { exact: true }).waitFor();
  await page.getByRole('navigation', { name: 'Steps of the job' }).getByRole('button', { name: /^Fit/ }).waitFor();
  // 1155 mm and 2 mm of the saw, off the reel that was picked.
  assert.deepEqual(await lengths(url), [11_243, 1640]);
  assert.equal(await counted(url, 'ferrule', 'Van 1'), 4);

  const { jobs } = await ask(url, 'job.list', {});
  const { code } = jobs[0].content;
  await goTo(page, 'Machines');
  await page.getByLabel('Search').fill(code);
  await button(page, new RegExp(code)).first().click();
  await button(page, /^Job total/).click();
  await page.getByText('1.157 m').or(page.getByText('1.155 m')).first().waitFor();
  await page.getByText('not priced').first().waitFor();
  await sound(page, 'job total');
  await back(page);
  await button(page, /^Not made after all/).click();
  await page.getByLabel('Why').last().fill('wrong hose');
  assert.ok(await button(page, 'Undo it').isDisabled(), 'what becomes of its parts is not taken for granted');
  await button(page, /^Come back: it was never cut/).click();
  await sound(page, 'undo');
  await button(page, 'Undo it').click();
  await page.getByText(/^Came back: /).waitFor();
  assert.deepEqual(await lengths(url), [12_400, 1640]);
  assert.equal(await counted(url, 'ferrule', 'Van 1'), 6);
});

test('hose that is not there is offered in another that passes the whole check, and is checked again', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  await benched(url);
  const { hoses } = await list(url);
  await ask(url, 'stock.change', {
    changes: [
      ...hoses[0].pieces.map(({ piece }) => ({ do: 'scrap-piece', piece })),
      {
        ...{ do: 'load-hose', store: 'Van 1', sort: 'reel', length_mm: 9000, bin: 'B11' },
        hose: { kind: 'hose', standard: 'EN 857', type: '2SC', dn: 16 },
      },
    ],
  });
  const page = await open(t, browser, url);
  await page.getByRole('heading', { name: 'Hose that would do' }).waitFor();
  assert.equal(await button(page, /^Take this off the stock/).count(), 0, 'what is not there can not be used');
  await sound(page, 'a substitute');
  await button(page, /^EN 857 2SC DN16 instead/).click();
  await page.getByText('May it be made?').waitFor();
  await page.getByText('Kept', { exact: true }).waitFor();
  const { jobs } = await ask(url, 'job.list', {});
  const [{ content }] = jobs;
  assert.deepEqual([content.spec.hose.standard, content.settings, content.step], ['EN 857', [], 'check']);
  assert.ok(content.spec.ends.every(({ cutoff_mm }) => cutoff_mm == null), 'the cut-offs were for another hose');
});

for (const size of sizes) {
  test(`several hoses are cut, crimped and priced at once at ${size.width}x${size.height}`, async (t) => {
    const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
    await stocked(url);
    // Two jobs that are not done, with cut-offs and settings of their own.
    for (const { name, make } of demo('batch.json').hoses.slice(0, 2)) {
      const { question, settings } = make;
      const at = { place: name, number: 14, place_name: name, machine: 'm', machine_name: 'Excavator 3', site: null, site_name: null };
      await keepJob(url, { step: 'make', at, spec: question.spec, service: { duties: [], ...question.service }, settings });
    }
    const page = await open(t, browser, url, size);
    await goTo(page, 'Van');
    await button(page, /^Several hoses at once/).first().click();
    const wide = size.width >= 1000;
    if (!wide) await thumb(page).getByRole('button', { name: /^Add hoses/ }).click();
    const jobs = page.getByRole('list', { name: 'Jobs that are not done' });
    await jobs.getByRole('button').nth(1).waitFor();
    await sound(page, 'add hoses');
    for (const at of [0, 1]) {
      await jobs.getByRole('button').nth(at).click();
      await jobs.getByText('in it').nth(at).waitFor();
    }
    if (!wide) await button(page, /^Work it out/).click();
    await page.getByRole('heading', { name: 'Cut list' }).waitFor();
    await page.getByRole('img', { name: /cut into .*left$/ }).first().waitFor();
    await page.getByRole('heading', { name: 'Order on the press' }).waitFor();
    await sound(page, 'batch');
    const [paper] = await Promise.all([page.waitForEvent('download'), button(page, /^Save the work list/).click()]);
    const at = join(folder(t), 'work.pdf');
    await paper.saveAs(at);
    assert.equal(readFileSync(at).subarray(0, 5).toString(), '%PDF-');

    // It stays on this device until it is emptied, and comes back when that was a slip.
    await page.reload();
    await goTo(page, 'Van');
    await button(page, /^Several hoses at once/).first().click();
    await button(page, 'Empty the list').click();
    await page.getByText('No hose is in it yet').waitFor();
    await button(page, 'Take it back').click();
    await button(page, /^Quote/).click();
    await page.getByRole('rowheader', { name: 'Total' }).waitFor();
    await page.getByText('Tax 19').waitFor();
    const unpriced = await page.getByText('not priced', { exact: true }).count();
    const total = await page.getByRole('row', { name: /^Total/ }).innerText();
    assert.equal(unpriced > 0, /not yet/.test(total), `${unpriced} lines without a price, and ${total}`);
    await sound(page, 'quote');
  });

  test(`the round says where to go and what to load at ${size.width}x${size.height}`, async (t) => {
    const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
    await stocked(url);
    const page = await open(t, browser, url, size);
    await goTo(page, 'Due');
    await button(page, /^The round/).click();
    await page.getByRole('heading', { name: 'Visits' }).waitFor();
    await page.getByRole('heading', { name: /^Load these/ }).waitFor();
    await sound(page, 'the round');
    const machines = page.getByRole('list', { name: 'Machines' }).getByRole('button');
    const chosen = await machines.filter({ hasText: 'in it' }).count();
    assert.ok(chosen > 0);
    await machines.filter({ hasText: 'in it' }).first().click();
    await page.waitForFunction(
      (count) => [...document.querySelectorAll('[aria-current=true]')].length === count,
      chosen - 1,
    );
    await button(page, /^Make them as one batch/).click();
    await page.getByRole('heading', { name: 'Parts' }).waitFor();
    await sound(page, 'the round’s batch');
  });
}

test('store, currency, tax and times are kept', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url, phone);
  await goTo(page, 'Van');
  await button(page, /^Prices and store/).first().click();
  await page.getByLabel('This device’s store').fill('Van 3');
  await page.getByLabel('Currency').fill('eur');
  await button(page, 'Keep store and currency').click();
  await page.getByText('Kept.').waitFor();
  await button(page, /^tax/).click();
  await typeNumber(page, '19');
  await button(page, 'Keep it').click();
  await button(page, /^labour an hour/).click();
  await typeNumber(page, '65');
  await button(page, 'Keep it').click();
  await page.getByLabel('What takes time').fill('Travel');
  await button(page, 'once a job').click();
  await button(page, 'Add with its minutes').click();
  await typeNumber(page, '40');
  await button(page, 'Keep it').click();
  await page.getByText('40 min a job').waitFor();
  await sound(page, 'prices');
  const { store, pricing } = await ask(url, 'settings.read', {});
  assert.deepEqual(
    [store, pricing],
    [
      'Van 3',
      {
        ...{ currency: 'EUR', tax_hundredths: 1900, labour_rate: '65.00' },
        labour: [{ name: 'Travel', per: 'job', minutes: 40 }],
      },
    ],
  );
});

test('without a store of its own a device says so, and the bench asks nothing of the stock', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const { spec, service } = demo('replacement.json');
  await keepJob(url, { step: 'make', spec, service: { duties: [], ...service } });
  const page = await open(t, browser, url, phone);
  await page.getByRole('heading', { name: 'Parts, all new' }).waitFor();
  assert.equal(await page.getByRole('heading', { name: /^From / }).count(), 0);
  await goTo(page, 'Due');
  await button(page, /^The round/).click();
  await page.getByText('This device has no store yet').waitFor();
  await sound(page, 'no store');
  await button(page, /^Stock load the van/).click();
  await page.getByText('Nothing is kept yet').waitFor();
});

/** Takes what one device knows to another, as two people do beside their vans. */
async function carry(from, to, at) {
  for (const page of [from, to]) {
    await goTo(page, 'Van');
    await button(page, /^Records in and out/).first().click();
  }
  const [saved] = await Promise.all([
    from.waitForEvent('download'),
    button(from, /^Bundle for another van/).click(),
  ]);
  await saved.saveAs(at);
  await pick(to, button(to, /^Merge a bundle/), at);
  await to.getByText(/events? (was|were) new/).waitFor();
}

test('what two devices did to one van adds up, whoever is merged first', async (t) => {
  const [browser, one, other] = await Promise.all([browse(t), serve(t, { empty: true }), serve(t, { empty: true })]);
  const at = join(folder(t), 'van.bundle');
  await stocked(one.url);
  await set(other.url);
  const [page, there] = [await open(t, browser, one.url), await open(t, browser, other.url)];
  await carry(page, there, at);
  const ferrule = { kind: 'ferrule', name: 'Shell 9' };
  const change = ({ url }, changes) => ask(url, 'stock.change', { changes });
  await change(one, [{ do: 'load', store: 'Van 2', item: ferrule, count: 5 }]);
  await change(other, [{ do: 'load', store: 'Van 2', item: ferrule, count: 20 }]);
  await change(one, [{ do: 'scrap', store: 'Van 2', item: ferrule, count: 2 }]);
  const { hoses } = await list(other.url, { store: 'Van 2' });
  const { piece, length_mm } = hoses[0].pieces[0];
  await change(other, [{ do: 'correct-piece', piece, to_mm: length_mm - 300 }]);
  await carry(page, there, at);
  await carry(there, page, at);
  const [mine, theirs] = await Promise.all([one, other].map(({ url }) => list(url, { all: true })));
  assert.deepEqual({ ...mine, stores: null }, { ...theirs, stores: null });
  assert.equal(await counted(one.url, 'Shell 9'), 23);
  const kept = mine.hoses.flatMap(({ pieces }) => pieces).find((known) => known.piece === piece);
  assert.equal(kept.length_mm, length_mm - 300);
  await toStock(page);
  await button(page, /Shell 9/).first().click();
  await page.getByText('23', { exact: true }).waitFor();
});
