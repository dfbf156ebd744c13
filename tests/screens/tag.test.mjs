// Labels: the user's own stocks, how one comes out on each, printed, made again, and many at once.
import assert from 'node:assert/strict';
import test from 'node:test';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sound } from './looks.mjs';
import { made } from './states.mjs';
import { ask, browse, demo, folder, goTo, hosewright, keepJob, open, serve, sizes, still } from './support.mjs';
import { typeNumber } from './technician.mjs';

const { spec, service } = demo('replacement.json');
const thumb = (page) => page.getByRole('contentinfo');
const stocks = (page) => page.getByRole('group', { name: 'Your labels' });
const pickStock = (page, name) => stocks(page).getByRole('button', { name: new RegExp(`^${name}`) }).click();
const POINTS_A_MM = 72 / 25.4;

const stock = (name, width_mm, height_mm, form, dpi = 300) => ({ name, width_mm, height_mm, dpi, material: 'polyester', form });
const OWN = [
  stock('Flag', 60, 40, 'flag', 203),
  stock('Wrap', 60, 50, 'wrap'),
  stock('Small plate', 30, 20, 'plate', 600),
  stock('Strip', 10, 60, 'plate', 203),
];

/** A register whose device has these labels. */
async function served(t, kept = OWN) {
  const at = await serve(t);
  const { catalogue: _, program: __, unreadable: ___, ...settings } = await ask(at.url, 'settings.read', {});
  await ask(at.url, 'settings.write', { ...settings, label_stocks: kept });
  return at;
}

const tagged = (url) =>
  keepJob(url, { step: 'tag', spec, service: { duties: [], ...service }, ...made });

/** What stands in a saved file. */
async function saved(t, page, button) {
  const [file] = await Promise.all([page.waitForEvent('download'), button.click()]);
  const at = join(folder(t), 'saved');
  await file.saveAs(at);
  return readFileSync(at);
}

for (const size of sizes) {
  test(`labels are kept, added, changed, put first and taken away, ${size.width}`, async (t) => {
    const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
    const page = await open(t, browser, url, size);
    await goTo(page, 'Van');
    await page.getByRole('button', { name: /^Labels/ }).click();
    await page.getByRole('heading', { level: 1, name: 'Labels' }).waitFor();
    await sound(page, 'labels');
    await page.getByRole('button', { name: 'Another label' }).click();
    await page.getByLabel('What you call it').fill('Tie-on plate');
    await page.getByRole('button', { name: /^Width/ }).click();
    await typeNumber(page, '50', 'mm');
    await sound(page, 'a width');
    await page.getByRole('button', { name: /^Keep it/ }).click();
    await page.getByRole('button', { name: 'plate', exact: true }).click();
    await page.getByRole('button', { name: 'metal', exact: true }).click();
    await sound(page, 'a label');
    await thumb(page).getByRole('button', { name: /^Keep/ }).click();
    const row = page.getByRole('button', { name: /^Tie-on plate/ });
    await row.waitFor();
    const kept = async () => {
      await still(page);
      return (await ask(url, 'settings.read', {})).label_stocks;
    };
    assert.deepEqual((await kept()).at(-1), {
      ...{ name: 'Tie-on plate', width_mm: 50, height_mm: 40, dpi: 203 },
      ...{ material: 'metal', form: 'plate' },
    });

    await row.click();
    await page.getByRole('button', { name: 'Offer it first' }).click();
    await page.getByRole('button', { name: /^Tie-on plate.*offered first/s }).waitFor();
    await page.getByRole('button', { name: /^60 x 40/ }).click();
    await page.getByRole('button', { name: 'Remove it' }).click();
    await page.getByRole('button', { name: /^60 x 40/ }).waitFor({ state: 'hidden' });
    await still(page);
    assert.deepEqual((await kept()).map(({ name }) => name), ['Tie-on plate']);
  });

  test(`a label shows at its size on each of the user's own stocks, or says why not and which would do, ${size.width}`, async (t) => {
    const [browser, { url }] = await Promise.all([browse(t), served(t)]);
    await tagged(url);
    const page = await open(t, browser, url, size);
    const label = page.getByRole('img', { name: /^Label of/ });
    await label.waitFor();
    await page.getByText('The code holds the whole text').waitFor();
    const { width, height } = await label.boundingBox();
    assert.ok(Math.abs(width / height - 60 / 40) < 0.01, `${width} x ${height}`);
    await sound(page, 'flag');

    await pickStock(page, 'Wrap');
    await page.getByText(/a camera sees a code of .* in one look/).waitFor();
    await page.getByText('Nobody measured over the cover').waitFor();
    await sound(page, 'wrap');
    await page.getByRole('button', { name: /^Over the cover/ }).click();
    await typeNumber(page, '25', 'mm');
    await page.getByRole('button', { name: /^Keep it/ }).click();
    // The screen comes back with its first label; what was measured stays.
    await pickStock(page, 'Wrap');
    await page.getByText(/Round a hose of 25.mm \(as measured\)/).waitFor();

    await pickStock(page, 'Small plate');
    await page.getByText(/^Code only: no room for what the hose is/).waitFor();
    await sound(page, 'code only');

    await pickStock(page, 'Strip');
    await page.getByText('NO ROOM', { exact: true }).waitFor();
    await page.getByText('One of yours would do:').waitFor();
    assert.equal(await label.count(), 0, 'no label is shown that can not be made');
    await sound(page, 'no room');
    await page.getByRole('button', { name: 'Flag', exact: true }).first().click();
    await label.waitFor();
  });
}

test('the scale of a screen is set with a card, and a label then is as long as it says', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), served(t)]);
  await tagged(url);
  const page = await open(t, browser, url, sizes[2]);
  await page.getByText('about true size').waitFor();
  await page.getByRole('button', { name: 'set scale with a card' }).click();
  await sound(page, 'scale');
  await page.getByRole('slider').fill('270');
  await page.getByRole('button', { name: /^Keep the scale/ }).click();
  await page.getByText('true size', { exact: true }).waitFor();
  const label = page.getByRole('img', { name: /^Label of/ });
  // The card's short side, 53.98 mm, took 270 px.
  assert.ok(Math.abs((await label.boundingBox()).width - (60 * 270) / 53.98) < 1);
  await page.reload();
  await page.getByText('true size', { exact: true }).waitFor();
});

test('the print window gets the label alone, on a page of its size; the next one says that it is a reprint', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), served(t)]);
  const { hits } = JSON.parse(hosewright('register', '--db', db, 'search', 'stick rod', '--json'));
  const { code } = hits.find((hit) => hit.what === 'hose');
  const page = await open(t, browser, url);
  await page.evaluate(() => {
    window.prints = 0;
    window.print = () => (window.prints += 1);
  });
  await goTo(page, 'Job');
  await page.getByRole('button', { name: /Scan or type the tag/ }).click();
  await page.getByRole('button', { name: 'Type the code' }).click();
  await page.keyboard.type(code.replaceAll('-', ''));
  await page.getByRole('button', { name: /^Print the label again/ }).click();
  await page.getByText('None was printed from this record yet.').waitFor();
  assert.equal(await page.getByText('A reprint: the same code').count(), 0);
  await sound(page, 'label again');
  await thumb(page).getByRole('button', { name: /^Print the label/ }).click();
  await page.getByText('A reprint: the same code').waitFor();
  assert.equal(await page.evaluate(() => window.prints), 1);
  await page.emulateMedia({ media: 'print' });
  assert.equal(await page.getByRole('heading', { level: 1 }).isVisible(), false, 'the sheet is not printed');
  assert.equal(await page.locator('.printed').isVisible(), true);
  await page.emulateMedia({ media: 'screen' });
  assert.equal(await page.locator('.printed').isVisible(), false);
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  const boxes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(([, ...box]) => box.map(Number));
  assert.equal(boxes.length, 1, 'one page');
  assert.ok(Math.abs(boxes[0][0] - 60 * POINTS_A_MM) < 1 && Math.abs(boxes[0][1] - 40 * POINTS_A_MM) < 1, `${boxes}`);
  // The window is closed, and nothing of it is left on the screen.
  assert.equal(await page.locator('.printed').count(), 0);
  const { history } = JSON.parse(hosewright('register', '--db', db, 'show', code, '--json'));
  assert.equal(history.filter(({ body }) => body.kind === 'labelled').length, 1);
});

for (const size of sizes) {
  test(`labels of a machine and of what is due are saved in one file, ${size.width}`, async (t) => {
    const [browser, { url }] = await Promise.all([browse(t), served(t)]);
    const page = await open(t, browser, url, size);
    await goTo(page, 'Machines');
    await page.getByRole('button', { name: /Excavator 3/ }).first().click();
    // The sheet is scrolled first, so a tap near the last one would fall as its second.
    await page.waitForTimeout(400);
    await page.getByRole('button', { name: /^Labels of this machine/ }).click();
    const save = thumb(page).getByRole('button', { name: /^Save \d+ labels/ });
    await save.waitFor();
    await sound(page, 'labels of a machine');
    const count = Number((await save.innerText()).match(/\d+/)[0]);
    const each = await saved(t, page, save);
    assert.equal(each.subarray(0, 5).toString(), '%PDF-');
    await page.getByText('reprint').first().waitFor();
    await page.getByRole('button', { name: 'A4', exact: true }).click();
    await thumb(page).getByText(/^PDF, [12] pages?$/).waitFor();
    assert.ok(count > 2, 'as many labels stand on fewer sheets');

    await pickStock(page, 'Strip');
    await page.getByText('LEFT OUT').waitFor();
    await sound(page, 'none has room');
    assert.equal(await save.count(), 0, 'nothing is saved where none can be made');

    await goTo(page, 'Due');
    await page.getByRole('button', { name: /^Labels of what falls due/ }).click();
    await save.waitFor();
    await sound(page, 'labels of what is due');
  });
}
