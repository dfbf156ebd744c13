import assert from 'node:assert/strict';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import test from 'node:test';
import { sound } from './looks.mjs';
import { ask, browse, folder, goTo, hosewright, keepJob, open, phone, serve, sizes } from './support.mjs';

/** Finds a machine as a person does, and opens it. */
async function openMachine(page, name) {
  await goTo(page, 'Machines');
  await page.getByRole('searchbox', { name: 'Search' }).fill(name);
  await page.getByRole('list', { name: 'Found' }).getByRole('button', { name }).first().click();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

const placesOf = (page) => page.getByRole('list', { name: 'Places', exact: true });

/** Where each balloon of the drawing stands, by what it says it is. */
async function balloonsOf(page) {
  const balloons = page.getByRole('main').getByRole('button', { name: /^Place \d+, / });
  await balloons.first().waitFor();
  const boxes = await balloons.evaluateAll((all) => all.map((one) => [one.ariaLabel, one.style.left, one.style.top]));
  return boxes.sort();
}

test('a machine is found by its name, and a place added to it stands there after a reload', async (t) => {
  const browser = await browse(t);
  for (const size of sizes) {
    await t.test(`${size.width} × ${size.height}`, async (t) => {
      const { url } = await serve(t);
      const page = await open(t, browser, url, size);
      await openMachine(page, 'Excavator 3');
      await placesOf(page).getByRole('button').first().waitFor();
      await sound(page, 'machine');
      const before = await placesOf(page).getByRole('button').count();

      await page.getByRole('button', { name: 'Add a place' }).click();
      await page.getByLabel('Name').fill('Blade cylinder, left');
      await page.getByRole('button', { name: 'Cylinder', exact: true }).click();
      await sound(page, 'place form');
      await page.getByRole('button', { name: /^Keep/ }).click();
      await placesOf(page)
        .getByRole('button', { name: /Blade cylinder, left/ })
        .waitFor();

      await page.reload();
      await openMachine(page, 'Excavator 3');
      await placesOf(page)
        .getByRole('button', { name: /Blade cylinder, left/ })
        .waitFor();
      assert.equal(await placesOf(page).getByRole('button').count(), before + 1, 'one place more');
    });
  }
});

test('a number that a place has already is not kept, and the next free one is named', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url);
  await openMachine(page, 'Excavator 3');
  await page.getByRole('button', { name: 'Add a place' }).click();
  await page.getByLabel('Name').fill('Somewhere');
  await page.getByLabel('Number').fill('1');
  await page.getByText(/^1 is .+ Next free: \d+\.$/).waitFor();
  assert.equal(await page.getByRole('button', { name: /^Keep/ }).count(), 0, 'no arrow');
});

test('an empty register takes a site and a machine, and its hours', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  const page = await open(t, browser, url, phone);
  await goTo(page, 'Machines');
  await page.getByRole('button', { name: 'Add a site' }).click();
  await page.getByLabel('Name').fill('North yard');
  await page.getByRole('button', { name: /^Keep/ }).click();
  await page.getByRole('heading', { name: /North yard/ }).waitFor();
  await page.getByRole('button', { name: 'Add a machine here' }).click();
  await page.keyboard.type('Loader 9');
  await page.getByRole('button', { name: 'Loader', exact: true }).click();
  await sound(page, 'machine form');
  await page.getByRole('button', { name: /^Keep/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Loader 9' }).waitFor();
  await sound(page, 'machine without places');
  await page.getByRole('button', { name: /Read hours/ }).click();
  for (const digit of '512') await page.getByRole('button', { name: digit, exact: true }).click();
  await page.getByRole('button', { name: /^Keep/ }).click();
  await page.getByText(/^512\sh, read /).waitFor();
});

test('a hose that is on a machine already is put on record where it sits', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url);
  const pick = (name) => page.getByRole('button', { name }).first().click();
  await openMachine(page, 'Excavator 3');
  await pick('Add a place');
  await page.keyboard.type('Blade cylinder, left');
  await page.keyboard.press('Enter');
  await placesOf(page)
    .getByRole('button', { name: /Blade cylinder, left/ })
    .click();
  await pick(/^There is a hose on it/);
  await sound(page, 'the hose on it');
  for (const choice of [/^hose/, 'DN12', /2SN/]) await pick(choice);
  for (const end of ['A', 'B']) {
    assert.equal(await page.getByRole('button', { name: /^Keep/ }).count(), 0, 'both ends belong to it');
    for (const choice of [`end ${end}`, /^JIC/, /^−8/, 'female', /^straight/]) await pick(choice);
  }
  await pick(/^Keep/);
  await page
    .getByRole('list', { name: 'Sits there' })
    .getByText(/2SN DN12 · JIC 37 flare −8 both ends/)
    .waitFor();
  await page.getByText(/^found fitted /).waitFor();
  await sound(page, 'a hose found');
  // Nobody gave a day: it is young nowhere.
  await page.getByText('Age not known', { exact: true }).waitFor();
  await goTo(page, 'Machines');
  await page.getByRole('main').getByRole('button', { name: /^Excavator 3.*1 without a date/s }).waitFor();
  assert.equal(await page.getByRole('main').getByText('without a date').count(), 1, 'of no other machine');
  await sound(page, 'a machine with a hose of no known age');
  await openMachine(page, 'Excavator 3');
  await placesOf(page).getByRole('button', { name: /Blade cylinder, left.*age not known/s }).waitFor();
});

test('the list comes back to the machine that was looked at, and a search stands alone', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url, sizes[2]);
  await openMachine(page, 'Loader 2');
  await goTo(page, 'Due');
  await goTo(page, 'Machines');
  await page.getByRole('heading', { level: 1, name: 'Loader 2' }).waitFor();
  await placesOf(page).waitFor();
  await page.getByRole('searchbox').fill('boom');
  await page.getByRole('list', { name: 'Found' }).waitFor();
  await placesOf(page).waitFor({ state: 'detached' });
});

test('by keys alone: a slip of the hours is warned of, struck out again, and Escape goes back', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url, sizes[2]);
  await openMachine(page, 'Excavator 3');
  const hours = page.getByRole('button', { name: /^Read hours/ });
  await hours.press('Enter');
  await page.keyboard.type('68120');
  await page.getByText(/no machine can have run that long/).waitFor();
  await sound(page, 'hours in doubt');
  await page.keyboard.press('Enter');
  await page.getByText(/^68120\sh, read /).waitFor();
  await hours.press('Enter');
  await page.keyboard.type('6812');
  await page.getByText(/the higher one stands/).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: /^Strike out 68120/ }).press('Enter');
  await page.getByText(/^6812\sh, read /).waitFor();

  await placesOf(page).getByRole('button').first().press('Enter');
  await page.getByRole('button', { name: /^line/ }).press('Enter');
  await page.keyboard.press('2');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /^line\s*Return/ }).waitFor();
  assert.equal(await page.evaluate(() => document.activeElement.localName), 'main', 'the focus goes into what opened');
  await page.keyboard.press('Escape');
  await hours.waitFor();
});

test('the same hose again is three taps from the list: machine, place, same for same', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url);
  await goTo(page, 'Machines');
  await page.getByRole('button', { name: /^Excavator 3/ }).click();
  await placesOf(page).getByRole('button', { name: /past limit/ }).first().click();
  await page.getByRole('button', { name: /^Same for same/ }).click();
  await page.locator('[aria-current=step]', { hasText: 'Check' }).waitFor();
});

test('while nothing is read, Find says what the register knows of the place', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url);
  const begin = async (words) => {
    const { hits } = await ask(url, 'register.search', { words });
    const { at } = hits.find(({ what }) => what === 'place');
    await keepJob(url, { step: 'find', at });
    await page.reload();
    return (await ask(url, 'register.place', { place: at.place })).again;
  };
  // Where hoses failed again and again, the same again is no short way.
  const repeated = await begin('stick rod');
  await page.getByText(repeated.why_not).waitFor();
  await page.getByText('By the register, not read: sits here').waitFor();
  assert.equal(await page.getByRole('button', { name: /^By the register/ }).count(), 0);
  await sound(page, 'find, what failed there');
  const again = await begin('Pilot block');
  const line = page.getByText('By the register, not read: sits here');
  await line.waitFor();
  await page.getByText(`${again.spec.hose.type} DN${again.spec.hose.dn}`).first().waitFor();
  await sound(page, 'find, what sits there');
  // What is read is another matter: the line is gone with the first reading.
  await page.getByRole('button', { name: /^Male/ }).click();
  await line.waitFor({ state: 'detached' });
});

test('a machine leads to the place whose hose failed and was not replaced, then to the job that is open there', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const at = join(folder(t), 'off.json');
  const place = JSON.parse(hosewright('register', '--db', db, 'show', 'stick rod', '--json'));
  const { code } = place.stays.at(-1);
  const body = { kind: 'taken-off', code, place: place.at.place, date: '2026-11-25', cause: 'ABR' };
  writeFileSync(at, JSON.stringify({ body }));

  const page = await open(t, browser, url);
  await openMachine(page, 'Excavator 3');
  const first = placesOf(page).getByRole('button').first();
  assert.match(await first.innerText(), /^7\n/, 'nothing is open: the hose longest past its limit comes first');
  const stood = await balloonsOf(page);
  assert.equal(await page.getByRole('contentinfo').getByRole('button').count(), 0, 'no place is chosen beforehand');
  hosewright('register', '--db', db, 'record', at);
  await page.reload();
  await openMachine(page, 'Excavator 3');
  await placesOf(page)
    .getByRole('button', { name: /Stick cylinder, rod side.*failed, not replaced/s })
    .waitFor();
  await sound(page, 'a place without its hose');
  assert.match(await first.innerText(), /^14\n/);
  assert.deepEqual(await balloonsOf(page), stood, 'no balloon moved');
  const rows = await placesOf(page).getByRole('button').allInnerTexts();
  await first.click();
  await page.getByRole('button', { name: /^Measure it/ }).click();
  await page.locator('[aria-current=step]', { hasText: 'Find' }).waitFor();

  await openMachine(page, 'Excavator 3');
  await page.getByRole('button', { name: /^Go on at place 14/ }).waitFor();
  assert.deepEqual(await balloonsOf(page), stood, 'no balloon moved');
  const numbers = (texts) => texts.map((text) => text.split('\n')[0]);
  assert.deepEqual(numbers(await placesOf(page).getByRole('button').allInnerTexts()), numbers(rows), 'no row moved');
  await sound(page, 'a machine with an open job');
  await placesOf(page).getByRole('button', { name: /job open/ }).click();
  await page.getByRole('button', { name: /^Go on with the job begun here/ }).waitFor();
  await sound(page, 'a place with an open job');
  assert.equal(await page.getByRole('button', { name: /^(Measure it|Same for same)/ }).count(), 0);
  await page.getByRole('button', { name: /^Go on with the job begun here/ }).click();
  await page.locator('[aria-current=step]', { hasText: 'Find' }).waitFor();
});
