// Photos of a place, a machine and a hose: added, looked at, taken back, and what is said where a picture is not there.
import assert from 'node:assert/strict';
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import test from 'node:test';
import { sound } from './looks.mjs';
import { ask, browse, file, folder, goTo, hosewright, open, phone, serve, sizes } from './support.mjs';

const PICTURE = file('demo/pictures/make.png');
const OTHER = file('demo/pictures/tag.png');

/** Opens a screen by its name, as a link in the program does. */
async function openAt(page, at) {
  await page.evaluate((state) => {
    history.pushState(state, '');
    dispatchEvent(new PopStateEvent('popstate', { state }));
  }, at);
}

const row = (page) => page.getByRole('list', { name: 'Photos' });
const small = (page) => row(page).getByRole('button');

async function add(page, path) {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Add a photo' }).click(),
  ]);
  await chooser.setFiles(path);
}

const shown = (image) => image.evaluate((img) => img.complete && img.naturalWidth > 0);

for (const size of sizes) {
  test(`photos of a place, ${size.width} × ${size.height}`, async (t) => {
    const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
    const page = await open(t, browser, url, size, { refused: ['photo.add'] });
    const { hits } = await ask(url, 'register.search', { words: 'stick rod' });
    const { at } = hits.find((hit) => hit.at);
    await openAt(page, { at: 'place', place: at.place });
    await page.getByRole('heading', { name: 'Photos' }).waitFor();
    assert.equal(await small(page).count(), 0);

    await t.test('are added, and one that is there already is said', async () => {
      await add(page, PICTURE);
      await small(page).getByRole('img').waitFor();
      assert.ok(await shown(small(page).getByRole('img')));
      assert.match(await small(page).getByRole('img').getAttribute('alt'), /^Photo of Stick cylinder, rod side, added /);
      await add(page, PICTURE);
      await page.getByText('This picture is here already.').waitFor();
      await add(page, OTHER);
      await small(page).nth(1).waitFor();
      const letter = join(folder(t), 'letter.jpg');
      writeFileSync(letter, 'Dear customer');
      await add(page, letter);
      await page.getByText(/this is no PNG or JPEG picture/).waitFor();
      assert.equal(await small(page).count(), 2);
      await sound(page, 'two photos');
    });

    await t.test('stand whole when they are tapped, by the keyboard too', async () => {
      const box = await small(page).first().boundingBox();
      assert.ok(box.width >= 48 && box.height >= 48, JSON.stringify(box));
      await small(page).first().focus();
      await page.keyboard.press('Enter');
      const whole = page.getByRole('figure').getByRole('img');
      await whole.waitFor();
      assert.ok(await shown(whole));
      await page.getByText(/^Added \d/).waitFor();
      await sound(page, 'a photo whole');
      if (process.env.PICTURES) {
        await page.getByRole('figure').scrollIntoViewIfNeeded();
        await page.screenshot({ path: join(process.env.PICTURES, `photos-${size.width}.png`) });
      }
    });

    await t.test('are taken back once it was asked again', async () => {
      await page.getByRole('button', { name: /^Take it back/ }).click();
      await page.getByText('Take this photo back?').waitFor();
      await sound(page, 'asked again');
      await page.getByRole('button', { name: 'Keep it' }).click();
      await page.getByRole('button', { name: /^Take it back/ }).click();
      await page.getByRole('button', { name: 'Take it back', exact: true }).click();
      await small(page).nth(1).waitFor({ state: 'detached' });
      assert.equal(await small(page).count(), 1);
      const { photos } = await ask(url, 'photo.list', { about: { place: at.place } });
      assert.equal(photos.length, 1);
    });

    await t.test('whose pictures are not here are said and drawn as such', async () => {
      for (const name of readdirSync(`${db}.photos`)) rmSync(join(`${db}.photos`, name));
      await openAt(page, { at: 'scan', part: 'log' });
      await openAt(page, { at: 'place', place: at.place });
      await small(page).getByText('Its picture has not come yet.').waitFor();
      await small(page).click();
      await page.getByText('It comes with an exchange after the device that took it.').waitFor();
      await sound(page, 'not come yet');
      if (process.env.PICTURES) {
        await page.getByRole('figure').scrollIntoViewIfNeeded();
        await page.screenshot({ path: join(process.env.PICTURES, `photos-missing-${size.width}.png`) });
      }
    });
  });
}

test('a machine and a hose have theirs too', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url, phone);
  const { machine } = JSON.parse(hosewright('register', '--db', db, 'show', 'Excavator 3', '--json'));
  const { rows } = await ask(url, 'desk.hoses', { limit: 1 });
  for (const at of [{ at: 'machine', machine: machine.machine }, { at: 'hose', code: rows[0].code }]) {
    await openAt(page, at);
    await page.getByRole('heading', { name: 'Photos' }).waitFor();
    await add(page, PICTURE);
    await small(page).getByRole('img').waitFor();
    await sound(page, at.at);
  }
  const { photos } = await ask(url, 'photo.list', {});
  assert.deepEqual(photos.map(({ about }) => Object.keys(about)[0]).toSorted(), ['hose', 'machine']);
});

test('Other vans says how many pictures went, and which have not come', async (t) => {
  const [browser, one, two] = await Promise.all([browse(t), serve(t), serve(t, { empty: true })]);
  const meeting = join(folder(t), 'meeting');
  mkdirSync(meeting);
  await ask(one.url, 'fleet.begin', { name: 'North vans' });
  const { text } = await ask(one.url, 'fleet.hand-on', {});
  const { device } = await ask(one.url, 'fleet.show', {});
  await ask(two.url, 'fleet.join', { text, from: device.mark, as: 'own' });
  for (const { url } of [one, two]) await ask(url, 'share.set', { url: `file://${meeting}` });
  hosewright('register', '--db', one.db, 'photo', 'add', 'Excavator 3', PICTURE);
  const page = await open(t, browser, one.url, phone);
  const others = async (page) => {
    await goTo(page, 'Van');
    await page.getByRole('button', { name: /^Other vans/ }).click();
  };
  await others(page);
  await page.getByText('1 of 1 photos are on this device.').waitFor();
  await page.getByText('All that this device wrote was sent').waitFor();
  await sound(page, 'sent');
  for (const name of readdirSync(join(meeting, 'photos'))) rmSync(join(meeting, 'photos', name));
  const there = await open(t, browser, two.url, phone);
  await others(there);
  await there.getByText('0 of 1 photos are on this device.').waitFor();
  await there.getByText('1 photo has not come yet.').waitFor();
  await sound(there, 'not come');
});
