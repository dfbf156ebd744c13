import assert from 'node:assert/strict';
import test from 'node:test';
import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sound } from './looks.mjs';
import { ask, browse, folder, goTo, hosewright, keepJob, open, phone, pick, serve, sizes } from './support.mjs';
import { GREASE, label, labelAgain, photograph } from './pictures.mjs';

/** The first hose in the register that these words find. */
function hoseOf(db, words = 'stick rod') {
  const { hits } = JSON.parse(hosewright('register', '--db', db, 'search', words, '--json'));
  return hits.find((hit) => hit.what === 'hose');
}
const ownCode = (db) => hoseOf(db).code;

async function scan(page) {
  await goTo(page, 'Job');
  await page.getByRole('button', { name: /Scan or type the tag/ }).click();
  await page.getByRole('heading', { name: 'Scan a tag' }).waitFor();
}

/** Types a whole code on a keyboard. */
async function type(page, code) {
  await page.getByRole('button', { name: 'Type the code' }).click();
  await page.keyboard.type(code.replaceAll('-', '').toLowerCase());
}

/** A film of one JPEG picture, as the browser's fake camera plays it: pictures one behind the other. */
function motion(still) {
  const film = still.replace(/jpg$/, 'mjpeg');
  copyFileSync(still, film);
  return film;
}

const camera = (page) => page.getByRole('button', { name: /^Photograph the tag/ });
const title = (page, name) => page.getByRole('heading', { level: 1, name });
test('a tag of ours opens its hose, which says what the tag is, and stands in the log of scans', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const at = folder(t);
  const own = labelAgain(at, db, ownCode(db));
  const picture = await photograph(browser, join(at, 'own.jpg'), [{ ...own, x: 150, y: 120, width: 850 }]);
  for (const size of sizes) {
    const page = await open(t, browser, url, size);
    await scan(page);
    await sound(page, 'scan');
    await pick(page, camera(page), picture);
    await title(page, own.code).waitFor();
    await page.getByText('Tag read.').waitFor();
    await scan(page);
    await page.getByRole('button', { name: 'Scans on this device' }).click();
    await title(page, 'Scans on this device').waitFor();
    await sound(page, 'log');
    await page.getByRole('button', { name: new RegExp(own.code) }).first().click();
    await title(page, own.code).waitFor();
  }
  const { scans } = await ask(url, 'scan.list', {});
  assert.deepEqual([scans[0].code, scans[0].way], [own.code, 'picture']);
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
    await sound(page, 'damaged');
    await page.getByRole('button', { name: /^Type the code/ }).click();
    await page.getByRole('img', { name: 'The picture that was read' }).waitFor();
    await sound(page, 'typing');
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
  const page = await open(t, browser, url, phone, { refused: ['tag.open'] });
  const letters = ownCode(db).replaceAll('-', '');
  const wrong = letters.slice(0, 10) + (letters[10] === '0' ? '1' : '0');
  await scan(page);
  await type(page, wrong);
  await page.getByText('NOT RIGHT').waitFor();
  await sound(page, 'wrong letter');
  for (const _ of wrong) await page.keyboard.press('Backspace');
  await page.keyboard.type('7KQ4M2XR9DD');
  await page.getByText('CODE ALONE').waitFor();
  await page.getByText('This register has nothing of this code.').waitFor();
  await page.getByRole('button', { name: /^Measure/ }).waitFor();
  await sound(page, 'unknown code');
});

test('a tag that nobody here knows says so, shows what it carries and can be taken in', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const at = folder(t);
  const foreign = label(at);
  const picture = await photograph(browser, join(at, 'foreign.jpg'), [{ ...foreign, x: 150, y: 120, width: 850 }]);
  for (const size of sizes) {
    const page = await open(t, browser, url, size);
    await scan(page);
    await pick(page, camera(page), picture);
    await page.getByText('NOT SEALED').waitFor();
    await page.getByText('Its pressure and proof are the word of someone this device does not know.').waitFor();
    await page.getByText('EN 853 2SN DN16').waitFor();
    await sound(page, 'foreign');
  }
  const page = await open(t, browser, url);
  await scan(page);
  await pick(page, camera(page), picture);
  await page.getByRole('button', { name: 'Keep it here' }).click();
  await title(page, 'Scan a tag').waitFor({ state: 'hidden' });
  const kept = JSON.parse(hosewright('register', '--db', db, 'show', foreign.code, '--json'));
  assert.equal(kept.assembly.spec.overall_length_mm, 1240);
  assert.deepEqual(kept.assembly.proof, { state: 'not-proved', why: 'made-elsewhere' });
});

test('an altered tag stops, shows nothing of what it says, and can not be taken in', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const { text } = await ask(url, 'tag.of', { code: ownCode(db) });
  const altered = text.replace('2SN', '1SN');
  assert.notEqual(altered, text);
  const judged = await ask(url, 'tag.open', { text: altered });
  const at = folder(t);
  const anyPicture = await photograph(browser, join(at, 'any.jpg'), [{ ...label(at), x: 150, y: 120, width: 850 }]);
  for (const size of sizes) {
    const page = await open(t, browser, url, size);
    // What the register says of the altered text; no printer of ours makes a code of it.
    await page.route('**/api/tag.read', (route) => route.fulfill({ json: { codes: [judged] } }));
    await scan(page);
    await pick(page, camera(page), anyPicture);
    await page.getByText('ALTERED', { exact: true }).waitFor();
    await page.getByText('Nothing on it counts.').waitFor();
    assert.equal(await page.getByText('1SN').count(), 0, 'nothing of an altered tag is shown as a hose');
    assert.equal(await page.getByRole('button', { name: 'Keep it here' }).count(), 0);
    assert.equal(await page.getByRole('button', { name: /^Make one like it/ }).count(), 0);
    await sound(page, 'altered');
  }
});

test('a withdrawn tag is refused wherever it is read', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const code = ownCode(db);
  const event = join(folder(t), 'withdrawn.json');
  writeFileSync(event, JSON.stringify({ body: { kind: 'tag-withdrawn', code, reason: 'lost on the road' } }));
  hosewright('register', '--db', db, 'record', event);
  for (const size of sizes) {
    const page = await open(t, browser, url, size);
    await scan(page);
    await type(page, code);
    await page.getByText('WITHDRAWN', { exact: true }).waitFor();
    await page.getByText('This tag was withdrawn: lost on the road.').waitFor();
    await page.getByRole('button', { name: new RegExp(`^Open ${code}.*do not fit`, 's') }).waitFor();
    await sound(page, 'withdrawn');
  }
});

test('a code that is fitted elsewhere is said at the place of the job', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const [here, other] = [hoseOf(db), hoseOf(db, 'boom')];
  assert.notEqual(here.at.place, other.at.place);
  await keepJob(url, { step: 'find', at: here.at, replaces: here.code });
  const page = await open(t, browser, url);
  await page.evaluate(() => history.pushState({ at: 'scan' }, ''));
  await page.evaluate(() => dispatchEvent(new PopStateEvent('popstate', { state: { at: 'scan' } })));
  await title(page, 'Scan a tag').waitFor();
  await type(page, other.code);
  await page.getByText('FITTED ELSEWHERE').waitFor();
  await page.getByText(/The register has this code fitted at .*, not here/).waitFor();
  await sound(page, 'fitted elsewhere');
});

test('of two tags in one picture one is chosen', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const at = folder(t);
  const [own, foreign] = [labelAgain(at, db, ownCode(db)), label(at)];
  const picture = await photograph(browser, join(at, 'two.jpg'), [
    { ...foreign, x: 10, y: 40, width: 620 },
    { ...own, x: 640, y: 500, width: 620 },
  ]);
  const page = await open(t, browser, url);
  await scan(page);
  await pick(page, camera(page), picture);
  await page.getByRole('button', { name: new RegExp(foreign.code) }).waitFor();
  await sound(page, 'choice');
  await page.getByRole('button', { name: new RegExp(own.code) }).click();
  await title(page, own.code).waitFor();
});

test('the live camera reads a tag by itself', async (t) => {
  const at = folder(t);
  const { url, db } = await serve(t);
  const own = labelAgain(at, db, ownCode(db));
  const still = await photograph(await browse(t), join(at, 'own.jpg'), [{ ...own, x: 150, y: 80, width: 850 }]);
  const browser = await browse(t, [
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
    `--use-file-for-fake-video-capture=${motion(still)}`,
  ]);
  // A frame in which nothing can be read is refused, and the camera goes on looking.
  const page = await open(t, browser, url, phone, { permissions: ['camera'], may: ['tag.read'] });
  const sent = [];
  page.on('request', (request) => {
    if (request.url().endsWith('/api/tag.read')) sent.push(request.postDataBuffer());
  });
  await scan(page);
  await page.getByRole('button', { name: /^Live camera/ }).click();
  await title(page, own.code).waitFor();
  // The light of each pixel goes to the reader as it is: no picture file is made of a frame.
  assert.ok(sent.length > 0);
  for (const body of sent) {
    const length = body.readUInt32LE(0);
    const { frame } = JSON.parse(body.subarray(4, 4 + length));
    assert.equal(Math.max(frame.width, frame.height), 640);
    assert.equal(body.length - 4 - length, frame.width * frame.height);
  }
});
