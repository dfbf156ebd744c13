import assert from 'node:assert/strict';
import test from 'node:test';
import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { axe, browse, fits, folder, goTo, hosewright, open, phone, pick, serve, sizes } from './support.mjs';
import { GREASE, label, photograph } from './pictures.mjs';

/** The code of a hose in the register. */
function ownCode(db) {
  const { hits } = JSON.parse(hosewright('register', '--db', db, 'search', 'stick rod', '--json'));
  return hits.find((hit) => hit.what === 'hose').code;
}

async function scan(page) {
  await goTo(page, 'Job');
  await page.getByRole('button', { name: /Scan the old tag/ }).click();
  await page.getByRole('heading', { name: 'Scan a tag' }).waitFor();
}

/** A film of one JPEG picture, as the browser's fake camera plays it: pictures one behind the other. */
function motion(still) {
  const film = still.replace(/jpg$/, 'mjpeg');
  copyFileSync(still, film);
  return film;
}

const camera = (page) => page.getByRole('button', { name: /^Photograph the tag/ });
const title = (page, name) => page.getByRole('heading', { level: 1, name });

test('a tag of ours opens its hose', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const at = folder(t);
  const own = label(at, ownCode(db));
  const picture = await photograph(browser, join(at, 'own.jpg'), [{ ...own, x: 150, y: 120, width: 850 }]);
  const page = await open(t, browser, url);
  await scan(page);
  await axe(page, 'scan');
  await pick(page, camera(page), picture);
  await page.getByText(own.code).first().waitFor();
  await title(page, 'Scan a tag').waitFor({ state: 'hidden' });
});

test('a damaged tag is told, its picture stays, and its letters find the hose', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const at = folder(t);
  const own = label(at, ownCode(db));
  const picture = await photograph(browser, join(at, 'damaged.jpg'), [{ ...own, x: 150, y: 120, width: 850 }], GREASE);
  for (const size of sizes) {
    const page = await open(t, browser, url, size, { refused: ['tag.read'] });
    await scan(page);
    await pick(page, camera(page), picture);
    await page.getByText('NOT READ').waitFor();
    await page.getByRole('img', { name: 'The picture that was read' }).waitFor();
    await axe(page, `damaged ${size.width}`);
    await fits(page, `damaged ${size.width}`);
    await page.getByRole('button', { name: /^Type the code/ }).click();
    await page.getByRole('img', { name: 'The picture that was read' }).waitFor();
    await axe(page, `typing ${size.width}`);
    await fits(page, `typing ${size.width}`);
    for (const letter of own.code.replaceAll('-', '').slice(0, 8)) {
      await page.getByRole('group', { name: 'Letters' }).getByRole('button', { name: letter, exact: true }).click();
    }
    await page.getByRole('button', { name: new RegExp(`^Use ${own.code}`) }).click();
    await title(page, 'Scan a tag').waitFor({ state: 'hidden' });
    await page.getByText(own.code).first().waitFor();
  }
});

test('a wrong check letter is said at once, and a code that is known nowhere too', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const page = await open(t, browser, url, phone, { refused: ['register.show'] });
  const letters = ownCode(db).replaceAll('-', '');
  const wrong = letters.slice(0, 10) + (letters[10] === '0' ? '1' : '0');
  await scan(page);
  await page.getByRole('button', { name: 'Type the code' }).click();
  await page.keyboard.type(wrong.toLowerCase());
  await page.getByText('NOT RIGHT').waitFor();
  await axe(page, 'wrong letter');
  for (const _ of wrong) await page.keyboard.press('Backspace');
  await page.keyboard.type('7KQ4M2XR9DD');
  await page.getByText('NOT KNOWN HERE').waitFor();
  await page.getByRole('button', { name: /^Measure/ }).waitFor();
  await axe(page, 'unknown code');
});

test("another van's tag shows what it carries and can be kept", async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const at = folder(t);
  const foreign = label(at);
  const picture = await photograph(browser, join(at, 'foreign.jpg'), [{ ...foreign, x: 150, y: 120, width: 850 }]);
  for (const size of sizes) {
    const page = await open(t, browser, url, size, { refused: ['register.show'] });
    await scan(page);
    await pick(page, camera(page), picture);
    await page.getByText('NEW HERE').waitFor();
    await page.getByText('EN 853 2SN DN16').waitFor();
    await axe(page, `foreign ${size.width}`);
    await fits(page, `foreign ${size.width}`);
  }
  const page = await open(t, browser, url, phone, { refused: ['register.show'] });
  await scan(page);
  await pick(page, camera(page), picture);
  await page.getByRole('button', { name: 'Keep it here' }).click();
  await title(page, 'Scan a tag').waitFor({ state: 'hidden' });
  const kept = JSON.parse(hosewright('register', '--db', db, 'show', foreign.code, '--json'));
  assert.equal(kept.assembly.spec.overall_length_mm, 1240);
  assert.deepEqual(kept.assembly.proof, { state: 'not-proved', why: 'made-elsewhere' });
});

test('of two tags in one picture one is chosen', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const at = folder(t);
  const [own, foreign] = [label(at, ownCode(db)), label(at)];
  const picture = await photograph(browser, join(at, 'two.jpg'), [
    { ...foreign, x: 10, y: 40, width: 620 },
    { ...own, x: 640, y: 500, width: 620 },
  ]);
  const page = await open(t, browser, url);
  await scan(page);
  await pick(page, camera(page), picture);
  await page.getByRole('button', { name: new RegExp(foreign.code) }).waitFor();
  await axe(page, 'choice');
  await page.getByRole('button', { name: new RegExp(own.code) }).click();
  await title(page, 'Scan a tag').waitFor({ state: 'hidden' });
});

test('the live camera reads a tag by itself', async (t) => {
  const at = folder(t);
  const { url, db } = await serve(t);
  const own = label(at, ownCode(db));
  const still = await photograph(await browse(t), join(at, 'own.jpg'), [{ ...own, x: 150, y: 80, width: 850 }]);
  const browser = await browse(t, [
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
    `--use-file-for-fake-video-capture=${motion(still)}`,
  ]);
  const page = await open(t, browser, url, phone, { permissions: ['camera'] });
  await scan(page);
  await page.getByRole('button', { name: /^Live camera/ }).click();
  await title(page, 'Scan a tag').waitFor({ state: 'hidden' });
  await page.getByText(own.code).first().waitFor();
});
