import assert from 'node:assert/strict';
import { readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import test from 'node:test';
import { ask, axe, browse, demo, file, fits, folder, goTo, hosewright, keepJob, open, phone, pick, serve } from './support.mjs';
import { sizes } from './support.mjs';

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
      await axe(page, `${name} ${size.width}`);
      await fits(page, `${name} ${size.width}`);
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
  await axe(page, 'erase');
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
  await axe(page, 'backup');

  takeOff(db, join(at, 'off.json'));
  assert.notEqual(hoses(db, join(at, 'since.csv')), then, 'something was recorded since');

  await pick(page, page.getByRole('button', { name: 'Choose a backup' }), backup);
  await page.getByRole('heading', { name: 'Replace this register?' }).waitFor();
  await axe(page, 'restore');
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
    await axe(page, `kept backups ${size.width}`);
    await fits(page, `kept backups ${size.width}`);
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

test('a list is looked at first, and a bad row is named', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  const page = await open(t, browser, url);
  const [head, ...rows] = readFileSync(file('demo/fleet.csv'), 'utf8').split('\n');
  const bad = join(folder(t), 'bad.csv');
  writeFileSync(bad, [head, rows[0], rows[1].replace(/,[12]S[NT],/, ',9XX,')].join('\n'));
  await sheet(page, /^Records/);
  const look = page.getByRole('button', { name: /^Look at a list/ });
  await pick(page, look, bad);
  await page.getByText(/Row 3: type: "9XX"/).waitFor();
  assert.equal(await page.getByRole('button', { name: 'Take the list in' }).count(), 0, 'all rows or none');
  await axe(page, 'refused rows');
  await pick(page, look, file('demo/fleet.csv'));
  await page.getByRole('button', { name: 'Take the list in' }).click();
  await page.getByText('is taken in').waitFor();
});

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
  await axe(page, 'columns');
  await fits(page, 'columns');
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
  await axe(page, 'dry run');
  assert.equal(await thumb.getByRole('button', { name: /^Take it in/ }).count(), 0);
  await thumb.getByRole('button', { name: /^Leave this row out/ }).click();
  await thumb.getByRole('button', { name: /^Take it in/ }).click();
  await page.getByText('Taken in:').waitFor();
  await thumb.getByRole('button', { name: /^Done/ }).click();

  await page.getByRole('button', { name: /^North \(invented\).*2/s }).click();
  await page.getByLabel('Look for').fill('orfs');
  await page.getByText('EN 853 2SN DN16, ORFS \u221210').waitFor();
  assert.equal(await page.getByText('JIC 37 flare').count(), 0);
  await axe(page, 'rows');

  const { spec, service } = demo('replacement.json');
  await keepJob(url, { step: 'make', spec, service: { duties: [], ...service } });
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
  await page.getByRole('button', { name: /^Press/ }).first().click();
  await page.getByText('Grease the cones').waitFor();
  await axe(page, 'press');
});
