import assert from 'node:assert/strict';
import { readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import test from 'node:test';
import { sound } from './looks.mjs';
import {
  ask,
  browse,
  demo,
  file,
  folder,
  goTo,
  hosewright,
  keepJob,
  open,
  phone,
  pick,
  serve,
  sizes,
  still,
} from './support.mjs';

async function sheet(page, name) {
  await goTo(page, 'Van');
  await page.getByRole('button', { name }).first().click();
}

test('settings survive a reload', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url);
  await sheet(page, /^Language, units, paper, look/);
  for (const choice of ['inch', 'psi', 'Letter', 'American']) {
    const button = page.getByRole('button', { name: choice, exact: true });
    await button.click();
    await page.locator('[aria-pressed=true]', { hasText: new RegExp(`^${choice}$`) }).waitFor();
  }
  await page.reload();
  await goTo(page, 'Van');
  await page.getByRole('button', { name: /inch, psi, Letter/ }).waitFor();
});

test('every sheet of the van is sound at every size', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  for (const size of sizes) {
    const page = await open(t, browser, url, size);
    for (const name of [
      'Prices and store',
      'Language, units, paper, look',
      'Labels',
      'Instruments',
      'Supplier tables',
      'Press',
      'People and this device',
      'Fleet',
      'Records in and out',
      'Storage and versions',
    ]) {
      await sheet(page, new RegExp(`^${name}`));
      await page.getByRole('heading', { level: 1, name }).waitFor();
      await sound(page, name);
    }
  }
});

test('a name is entered, works, and is erased', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url);
  await sheet(page, /^People/);
  await page.getByLabel('Another name').fill('Jo');
  await page.getByRole('button', { name: 'Add the name' }).click();
  await page.getByText('working now').waitFor();
  await page.getByRole('button', { name: 'Erase' }).click();
  await page.getByText('It can not be undone.').waitFor();
  await sound(page, 'erase');
  await page.getByRole('button', { name: 'Erase the name' }).click();
  await page.getByText('Nobody has a name here yet.').waitFor();
});

/** Every hose of a register with its stays, as the list that is written out. */
function hoses(db, at) {
  rmSync(at, { force: true });
  hosewright('register', '--db', db, 'export', at);
  return readFileSync(at, 'utf8');
}

/** Takes a fitted hose off, as another program would. */
function takeOff(db, at) {
  const show = (what) => JSON.parse(hosewright('register', '--db', db, 'show', what, '--json'));
  const { code } = show('stick rod').stays.at(-1);
  const [{ at: where }] = show(code).stays;
  const body = {
    kind: 'taken-off',
    code,
    place: where.place,
    date: '2026-11-25',
    cause: 'ABR',
  };
  writeFileSync(at, JSON.stringify({ body }));
  hosewright('register', '--db', db, 'record', at);
}

test('a backup is saved and goes back in its place: the register holds what was backed up, and no more', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url);
  const at = folder(t);
  const then = hoses(db, join(at, 'then.csv'));
  await sheet(page, /^Backup/);
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /^Back up now/ }).click(),
  ]);
  const backup = join(at, 'copy.hosewright');
  await saved.saveAs(backup);
  assert.ok(statSync(backup).size > 100_000, 'the backup holds the register');
  await page.getByText(saved.suggestedFilename()).waitFor();
  await sound(page, 'backup');

  takeOff(db, join(at, 'off.json'));
  assert.notEqual(hoses(db, join(at, 'since.csv')), then, 'something was recorded since');

  await pick(page, page.getByRole('button', { name: 'Choose a backup' }), backup);
  await page.getByRole('heading', { name: 'Replace this register?' }).waitFor();
  await sound(page, 'restore');
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByRole('heading', { name: 'What was recorded since?' }).waitFor();
  await page.getByRole('button', { name: 'Restore it' }).click();
  await page.getByText('RESTORED').waitFor();

  assert.equal(hoses(db, join(at, 'restored.csv')), then, 'every hose and stay is as it was backed up');
  assert.deepEqual(JSON.parse(hosewright('register', '--db', db, 'verify', '--json')).faults, []);
  const beside = readdirSync(dirname(db)).filter((name) => name.startsWith('register') && name !== 'register.db');
  assert.ok(
    beside.some((name) => !/-(wal|shm)$/.test(name)),
    `the register before is kept beside: ${beside}`,
  );
});

test('a backup that was made by itself goes back in its place', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const before = JSON.parse(hosewright('register', '--db', db, 'verify', '--json')).events;
  await ask(url, 'register.backups.keep', {});
  await keepJob(url, { note: 'begun after the backup' });
  takeOff(db, join(folder(t), 'off.json'));
  for (const size of sizes) {
    const page = await open(t, browser, url, size);
    await sheet(page, /^Backup/);
    await page.getByText(/The last good one: /).waitFor();
    await sound(page, 'kept backups');
    if (size !== sizes.at(-1)) continue;
    await page.getByRole('button', { name: /^Restore \d/ }).click();
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.getByRole('button', { name: 'Restore it' }).click();
    await page.getByText('RESTORED').waitFor();
  }
  assert.equal(JSON.parse(hosewright('register', '--db', db, 'verify', '--json')).events, before);
});

test('a file that is no backup leaves all as it is, and says so', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url, phone, {
    refused: ['register.restore'],
  });
  await sheet(page, /^Backup/);
  await pick(page, page.getByRole('button', { name: 'Choose a backup' }), file('demo/fleet.csv'));
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByRole('button', { name: 'Restore it' }).click();
  await page.getByText(/is not a register/).waitFor();
  assert.match(hosewright('register', '--db', db, 'search', 'stick rod'), /Excavator 3/);
});

/** A list of hoses as an office keeps it: days that can be read either way, lengths and pressures without a unit. */
const LIST = [
  'Hoses of the yard (invented)',
  'Machine;Description;Hose;End A;End A size;End B;End B size;Length;Pressure;Date installed;Our no.',
  'Loader 9;Lift left;EN 853 2SN DN 16;ORFS;-10;ORFS;-10;1240;3000;03/04/2020;17',
  'Loader 9;Tilt;EN 853 2SN DN 16;ORFS;-10;ORFS;-10;1300;3000;05/06/2021;18',
  'Loader 9;Steering;EN 853 2SN DN 16;bayonet;-10;ORFS;-10;900;3000;05/06/2021;19',
].join('\n');

for (const size of sizes) {
  test(`a list is matched, asked about, tried, and taken in at ${size.width}x${size.height}`, async (t) => {
    const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
    const list = join(folder(t), 'yard.csv');
    writeFileSync(list, LIST);
    const page = await open(t, browser, url, size);
    const thumb = page.getByRole('contentinfo');
    await sheet(page, /^Records in and out/);
    await pick(page, page.getByRole('button', { name: /^Look at a list/ }), list);
    await page.getByText('Headings stand in row 2').waitFor();
    await sound(page, 'columns');

    await thumb.getByRole('button', { name: /^Say the unit of overall length/ }).waitFor();
    await page.getByRole('group', { name: 'Unit of Length' }).getByRole('button', { name: 'mm' }).click();
    await thumb.getByRole('button', { name: /^Say the unit of working pressure/ }).waitFor();
    await page.getByRole('group', { name: 'Unit of Pressure' }).getByRole('button', { name: 'psi' }).click();
    await thumb.getByRole('button', { name: /^Say for day it was fitted/ }).waitFor();
    const days = page.getByRole('group', { name: 'Days of Date installed' });
    await days.getByRole('button', { name: 'day first' }).click();
    await thumb.getByRole('button', { name: /^Say the site/ }).click();
    await page.getByLabel(/^site of all rows/).fill('Ostrel Quarry');

    await thumb.getByRole('button', { name: /^Try it/ }).click();
    await page.getByText('1 row can not be taken in').waitFor();
    await page.getByText(/^End A: .*bayonet/).waitFor();
    await sound(page, 'dry run');
    assert.equal(await thumb.getByRole('button', { name: /^Take it in/ }).count(), 0, 'all rows or none');
    await page.getByRole('button', { name: 'New 2' }).click();
    await page.getByText('Ostrel Quarry, Loader 9, Tilt').waitFor();

    await thumb.getByRole('button', { name: /^Leave this row out/ }).click();
    await thumb.getByRole('button', { name: /^Take it in/ }).click();
    await page.getByText('Taken in:').waitFor();
    await sound(page, 'taken in');
    await thumb.getByRole('button', { name: /^Done/ }).click();
    await page.getByRole('button', { name: /^Look at a list/ }).waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'All, CSV tables' }).click(),
    ]);
    assert.equal(download.suggestedFilename(), 'register.zip');
  });
}

test('two vans give each other bundles, and the log is proved', async (t) => {
  const [browser, one, other] = await Promise.all([browse(t), serve(t), serve(t, { empty: true })]);
  const bundle = join(folder(t), 'other.bundle');
  const page = await open(t, browser, one.url);
  await sheet(page, /^Records/);
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /^Bundle for another van/ }).click(),
  ]);
  await saved.saveAs(bundle);
  const there = await open(t, browser, other.url);
  await sheet(there, /^Records/);
  await pick(there, there.getByRole('button', { name: /^Merge a bundle/ }), bundle);
  await there.getByText(/events were new/).waitFor();
  await there.getByText('Nothing contradicts.').waitFor();
  await there.getByRole('button', { name: 'Verify', exact: true }).click();
  await there.getByText(/events.* are as they were written/).waitFor();
  const { events } = JSON.parse(hosewright('register', '--db', other.db, 'verify', '--json'));
  assert.ok(events > 100, 'the events have come over');
});

/** A supplier's table as they come: a title over it, headings of its own, one row that can not be read. */
const TABLE = [
  'Crimp table, invented for the tests;;;;;;;;;;',
  'Norm;Type;DN;Fitting;Size;Shell;Insertion [mm];Skive;Die;Crimp diameter [mm];Tolerance [mm]',
  'EN 853;2SN;16;JIC 37 flare;-10;S16;34;none;die 28;28,5;0,1',
  'EN 853;2SN;16;ORFS;-10;S16;34;none;die 28;28,4;0,1',
  'EN 853;2SN;18;ORFS;-10;S18;34;none;die 28;28,4;0,1',
].join('\n');

test('a supplier’s table is matched, tried, taken in, looked up, used on the bench and removed', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const table = join(folder(t), 'north.csv');
  writeFileSync(table, TABLE);
  const page = await open(t, browser, url);
  const thumb = page.getByRole('contentinfo');
  await sheet(page, /^Supplier tables/);
  await pick(page, page.getByRole('button', { name: /^Take in a table/ }), table);
  await page.getByText('Headings stand in row 2').waitFor();
  await sound(page, 'columns');
  for (const [heading, is] of [
    ['Fitting', 'end family'],
    ['Size', 'end size'],
  ]) {
    await page.getByRole('button', { name: new RegExp(`^${heading}`) }).click();
    await page.getByRole('button', { name: is, exact: true }).click();
    await page.getByRole('button', { name: new RegExp(`^${heading}.*${is}$`, 's') }).waitFor();
  }
  await thumb.getByRole('button', { name: /^Say the supplier/ }).click();
  await page.getByLabel(/^supplier of all rows/).fill('North (invented)');
  await thumb.getByRole('button', { name: /^Try it/ }).click();
  await page.getByText('1 row can not be taken in').waitFor();
  await page.getByText(/^Row 5/).waitFor();
  await sound(page, 'dry run');
  assert.equal(await thumb.getByRole('button', { name: /^Take it in/ }).count(), 0);
  await thumb.getByRole('button', { name: /^Leave this row out/ }).click();
  await thumb.getByRole('button', { name: /^Take it in/ }).click();
  await page.getByText('Taken in:').waitFor();
  await thumb.getByRole('button', { name: /^Done/ }).click();

  await page.getByRole('button', { name: /^North \(invented\).*2/s }).click();
  await page.getByLabel('Look for').fill('orfs');
  await page.getByText('EN 853 2SN DN16, ORFS \u221210').waitFor();
  assert.equal(await page.getByText('JIC 37 flare').count(), 0);
  await sound(page, 'rows');

  const { spec, service } = demo('replacement.json');
  await keepJob(url, {
    step: 'make',
    spec,
    service: { duties: [], ...service },
  });
  await page.reload();
  await thumb.getByRole('button', { name: 'Tick: parts are here' }).waitFor();
  await page.getByText(/from North \(invented\), north.csv, row 3/).waitFor();
  await page.getByRole('button', { name: /^Crimp diameter, end B: 28.4/ }).waitFor();

  await sheet(page, /^Supplier tables/);
  await page.getByRole('button', { name: /^North/ }).click();
  await page.getByRole('button', { name: /^Remove all of North/ }).click();
  await page.getByRole('button', { name: 'Remove them' }).click();
  await page.getByText('No supplier’s table is here yet.').waitFor();
});

test('a half-matched table outlives a killed program, and is offered until it is taken in or put away', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const table = join(folder(t), 'north.csv');
  writeFileSync(table, TABLE);
  const page = await open(t, browser, url);
  const thumb = page.getByRole('contentinfo');
  await sheet(page, /^Supplier tables/);
  await pick(page, page.getByRole('button', { name: /^Take in a table/ }), table);
  await page.getByRole('button', { name: /^Fitting/ }).click();
  await page.getByRole('button', { name: 'end family', exact: true }).click();
  await thumb.getByRole('button', { name: /^Say the supplier/ }).click();
  await page.getByLabel(/^supplier of all rows/).fill('North (invented)');
  const kept = async () => (await ask(url, 'unfinished.read', { what: 'supplier-sheet' })).unfinished?.content;
  while ((await kept())?.fixed.supplier !== 'North (invented)') await page.waitForTimeout(50);

  // The browser goes without a word; only what is in the register is left.
  await page.context().close();
  const again = await open(t, browser, url);
  await sheet(again, /^Supplier tables/);
  await again.getByRole('button', { name: /^Go on with north.csv/ }).click();
  await again.getByRole('button', { name: /^Fitting.*end family$/s }).waitFor();
  assert.equal(await again.getByLabel(/^supplier of all rows/).inputValue(), 'North (invented)');
  await again
    .getByRole('contentinfo')
    .getByRole('button', { name: /^Try it/ })
    .click();
  await again.getByText('1 row can not be taken in').waitFor();
  await again.getByRole('button', { name: 'Put it away' }).click();
  await again.getByText('No supplier’s table is here yet.').waitFor();
  // What was put away is asked for anew, and is gone a moment later.
  await again.getByRole('button', { name: /^Go on with/ }).waitFor({ state: 'detached' });
  await still(again);
  assert.equal(await kept(), undefined);
});

test('a supplier’s row is entered by hand from the bench, fills its end, outlives a reload and is kept', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const { spec, service } = demo('replacement.json');
  await keepJob(url, {
    step: 'make',
    spec,
    service: { duties: [], ...service },
  });
  const page = await open(t, browser, url);
  await page.getByRole('button', { name: /^Enter your supplier’s row for end B/ }).click();
  await page.getByRole('heading', { level: 1, name: 'A supplier’s row' }).waitFor();
  // Hose and end are those of the job.
  await page.getByRole('button', { name: /^Hose type.*EN 853 2SN/s }).waitFor();
  await page.getByRole('button', { name: /^For which end.*ORFS/s }).waitFor();
  await page.getByLabel('Supplier').fill('South (invented)');
  await page.getByLabel('Ferrule').fill('S16');
  await sound(page, 'row');
  const type = async (cell, keys) => {
    await page.getByRole('button', { name: cell }).click();
    await page.keyboard.type(keys);
    await page.keyboard.press('Enter');
  };
  await type(/^Crimp diameter/, '28.4');
  await type(/^Crimp tolerance/, '0.1');
  await page.getByRole('button', { name: 'none', exact: true }).click();

  // Put away in the middle: it is offered where the tables are.
  await page.reload();
  await sheet(page, /^Supplier tables/);
  await page.getByRole('button', { name: /^Go on with the row/ }).click();
  await page.getByRole('button', { name: /^Crimp diameter.*28.4/s }).waitFor();
  await type(/^Insertion/, '34');
  await page.getByRole('contentinfo').getByRole('button', { name: /^Keep/ }).click();
  await page.getByRole('button', { name: /^South \(invented\).*1/s }).click();
  await page
    .getByText(/entered by hand/)
    .or(page.getByText('EN 853 2SN DN16, ORFS'))
    .first()
    .waitFor();

  const { rows } = await ask(url, 'supplier.list', {});
  assert.equal(rows.length, 1);
  const { row } = rows[0];
  assert.deepEqual(
    [row.supplier, row.standard, row.type, row.dn, row.family, row.size, row.ferrule, row.skive],
    ['South (invented)', 'EN 853', '2SN', 16, 'ORFS', '-10', 'S16', 'none'],
  );
  assert.deepEqual([row.insertion_mm, row.crimp_diameter_mm, row.crimp_tolerance_mm], [34, 28.4, 0.1]);
  assert.match(row.from, /^entered by hand/);
  // The job in hand is filled from it.
  await goTo(page, 'Job');
  await page.getByText(/from South \(invented\), entered by hand/).waitFor();
});

test('care of the press is set, done and due', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url);
  await sheet(page, /^Press/);
  await page.getByText('No crimp is on record yet.').waitFor();
  await page.getByLabel('What is done').fill('Grease the cones');
  await page.getByLabel('every so many months').fill('6');
  await page.getByRole('button', { name: 'Add to the care' }).click();
  await page.getByText('due', { exact: true }).waitFor();
  await page.getByRole('button', { name: 'Done today' }).click();
  await page.getByText(/due on /).waitFor();
  await page.reload();
  await goTo(page, 'Van');
  await page
    .getByRole('button', { name: /^Press/ })
    .first()
    .click();
  await page.getByText('Grease the cones', { exact: true }).waitFor();
  await sound(page, 'press');
});
