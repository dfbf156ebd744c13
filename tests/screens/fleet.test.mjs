// The fleet: begun, handed on from one screen to the other, left; and its tags, on a device that knows it and one that
// does not.
import assert from 'node:assert/strict';
import test from 'node:test';
import { join } from 'node:path';
import { sound } from './looks.mjs';
import { ask, browse, folder, goTo, hosewright, open, phone, pick, serve, sizes } from './support.mjs';
import { labelAgain, photograph } from './pictures.mjs';

async function fleet(page) {
  await goTo(page, 'Van');
  await page.getByRole('button', { name: /^Fleet/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Fleet' }).waitFor();
}

const key = (page) => page.getByRole('img', { name: /^QR code that holds the key/ });
const heading = (page, name) => page.getByRole('heading', { level: 2, name });

for (const size of sizes) {
  test(`a fleet is begun, its key shown only while it is asked for, and left, ${size.width}`, async (t) => {
    const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
    const page = await open(t, browser, url, size);
    await fleet(page);
    await page.getByText('Tags from this device carry no seal.').waitFor();
    await sound(page, 'no fleet');
    assert.equal(await page.getByRole('button', { name: /^Begin a fleet/ }).isDisabled(), true, 'it has no name yet');
    await page.getByLabel('Name of the fleet').fill('North workshop');
    await page.getByRole('button', { name: /^Begin a fleet/ }).click();
    const handOn = page.getByRole('button', { name: /^Hand the key on/ });
    await handOn.waitFor();
    await sound(page, 'own fleet');

    await handOn.click();
    await key(page).waitFor();
    await page.getByText('WHO HAS IT CAN SEAL TAGS').waitFor();
    await sound(page, 'the key');
    const { text } = await ask(url, 'fleet.hand-on', {});
    const secret = text.split('\n').find((line) => /KEY/i.test(line)) ?? text;
    assert.equal(await page.getByText(secret).count(), 0, 'not as text before it is asked for');
    await page.getByRole('button', { name: 'Show it as text' }).click();
    await page.getByText(secret).waitFor();
    await sound(page, 'the key as text');
    await page.getByRole('button', { name: /^Put it away/ }).click();
    await handOn.waitFor();
    assert.equal(await key(page).count(), 0);

    // A phone that is put into the pocket shows it no longer.
    await handOn.click();
    await key(page).waitFor();
    await page.evaluate(() => {
      Object.defineProperty(document, 'hidden', { get: () => true });
      document.dispatchEvent(new Event('visibilitychange'));
    });
    await key(page).waitFor({ state: 'hidden' });

    await page.getByRole('button', { name: 'Leave' }).click();
    await heading(page, 'Leave North workshop?').waitFor();
    await sound(page, 'leaving');
    await page.getByRole('button', { name: 'Leave it' }).click();
    await page.getByText('Tags from this device carry no seal.').waitFor();
    assert.equal((await ask(url, 'fleet.show', {})).own, null);
  });
}

test('the key goes from screen to screen; the partner’s tags are then known, and strange before', async (t) => {
  const [browser, north, south] = await Promise.all([browse(t), serve(t), serve(t)]);
  const at = folder(t);
  await ask(north.url, 'fleet.begin', { name: 'North workshop' });
  await ask(south.url, 'fleet.begin', { name: 'South workshop' });

  // A tag of the north, read in the south.
  const { hits } = JSON.parse(hosewright('register', '--db', north.db, 'search', 'stick rod', '--json'));
  const own = labelAgain(at, north.db, hits.find((hit) => hit.what === 'hose').code);
  const tag = await photograph(browser, join(at, 'tag.jpg'), [{ ...own, x: 150, y: 120, width: 850 }]);
  const page = await open(t, browser, south.url, phone, { refused: ['fleet.look'] });
  const scanned = async (word) => {
    await goTo(page, 'Job');
    await page.getByRole('button', { name: /Scan or type the tag/ }).click();
    await pick(page, page.getByRole('button', { name: /^Photograph the tag/ }), tag);
    await page.getByText(word, { exact: true }).waitFor();
  };
  await scanned('A STRANGER’S');
  await sound(page, 'a stranger’s tag');

  // The key is photographed off the other screen.
  const other = await open(t, browser, north.url);
  await fleet(other);
  await other.getByRole('button', { name: /^Hand the key on/ }).click();
  await key(other).waitFor();
  const picture = join(at, 'key.png');
  await other.screenshot({ path: picture });

  await fleet(page);
  await page.getByRole('button', { name: /^Join a partner/ }).click();
  await sound(page, 'joining');
  // A picture without a key says so, and joins nothing.
  await pick(page, page.getByRole('button', { name: /^Photograph the key/ }), tag);
  await page.getByText('NOT KEPT').waitFor();
  await sound(page, 'no key');
  await pick(page, page.getByRole('button', { name: /^Photograph the key/ }), picture);
  await page.getByText('The key of North workshop. Nothing is kept yet.').waitFor();
  assert.deepEqual((await ask(south.url, 'fleet.show', {})).partners, [], 'the marks are compared first');
  await sound(page, 'the marks to compare');
  await page.getByRole('button', { name: /^The marks are the same/ }).click();
  await page.getByRole('button', { name: /^Hand the key on/ }).waitFor();
  const { partners } = await ask(south.url, 'fleet.show', {});
  assert.deepEqual(partners.map(({ name }) => name), ['North workshop']);
  await sound(page, 'a partner');

  await scanned('A PARTNER’S');
  await page.getByText('Its seal is true.').waitFor();
  await sound(page, 'a partner’s tag');
});

test('a second device joins by the pasted text, and both have one fleet', async (t) => {
  const [browser, first, second] = await Promise.all([browse(t), serve(t, { empty: true }), serve(t, { empty: true })]);
  await ask(first.url, 'fleet.begin', { name: 'North workshop' });
  const { text } = await ask(first.url, 'fleet.hand-on', {});
  const page = await open(t, browser, second.url);
  await fleet(page);
  await page.getByRole('button', { name: /^Join a fleet/ }).click();
  await page.getByLabel('Or paste it as text').fill(text);
  await page.getByRole('button', { name: /^Look at the text/ }).click();
  await page.getByRole('button', { name: /^The marks are the same/ }).click();
  await page.getByRole('button', { name: /^Hand the key on/ }).waitFor();
  const [one, two] = await Promise.all([first, second].map(({ url }) => ask(url, 'fleet.show', {})));
  assert.equal(one.own.mark, two.own.mark);
  assert.equal(two.own.from, one.device.mark);
});
