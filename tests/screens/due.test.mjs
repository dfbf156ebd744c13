// What falls due: by day and by risk, by site, and the lists to save.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sound } from './looks.mjs';
import { browse, goTo, open, serve, sizes, still } from './support.mjs';

/** The file that a button leaves. */
async function saved(page, name) {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name, exact: true }).click(),
  ]);
  await page.getByText(`Saved: ${download.suggestedFilename()}`).waitFor();
  return download.suggestedFilename();
}

for (const size of sizes) {
  test(`what falls due is seen at once, narrowed to a site and saved at ${size.width}x${size.height}`, async (t) => {
    const { url } = await serve(t);
    const page = await open(t, await browse(t), url, size);
    await goTo(page, 'Due');
    const past = page.getByRole('list', { name: 'Past the limit' });
    await past.waitFor();
    const all = await past.getByRole('button').count();
    await sound(page, 'Due');
    const first = await past.getByRole('button').first().innerText();
    assert.match(first, /\d{1,2} \p{L}+ 20\d\d/u, 'the day it fell due');
    assert.match(first, /Yard|Quarry|Workshop/, 'the site');
    assert.match(first, /guide 6 y/, 'what it is held against');
    await page.getByText(/^Guide: .*DIN 20066/).waitFor();

    await page.getByRole('button', { name: /^Plan / }).click();
    await page.getByRole('button', { name: /^Open / }).waitFor();
    // The rows of all sites stand until those of the one have come.
    await still(page);
    const here = await past.getByRole('button').count();
    assert.ok(here > 0 && here < all, `${here} of ${all} hoses are past their limit at one site`);
    const total = page.getByRole('banner').or(page.locator('.title')).first();
    assert.match(
      await total.innerText(),
      new RegExp(`\\b${here}\\b[^]*Ostrel Quarry`),
      'the head counts what is shown',
    );

    await page.getByRole('button', { name: /^Inspection/ }).click();
    await page.getByRole('img', { name: /since \d+ hoses were last looked at/ }).waitFor();
    await sound(page, 'inspections');
    await page.getByRole('button', { name: /^Service life/ }).click();

    assert.match(await saved(page, 'Save the list spreadsheet'), /\.xlsx$/);
    assert.match(await saved(page, 'Save the dates calendar'), /\.ics$/);
    assert.match(await saved(page, 'Save as text for other programs'), /\.csv$/);

    await page.getByRole('button', { name: 'By risk' }).click();
    await page.getByText(/Chance of failing in the next 90 days/).waitFor();
    const risky = page.getByRole('list', { name: 'Chance times consequence' });
    assert.match(await risky.getByRole('button').first().innerText(), /consequence \d of 5: /);
    await sound(page, 'by risk');

    await risky.getByRole('button').first().click();
    await page.getByRole('heading', { name: 'Hoses of this place' }).waitFor();
  });
}

test('an empty register says that nothing falls due', async (t) => {
  const { url } = await serve(t, { empty: true });
  const page = await open(t, await browse(t), url);
  await goTo(page, 'Due');
  await page.getByText('Nothing falls due here within 12 months.').waitFor();
  await sound(page, 'nothing due');
});

for (const size of sizes) {
  test(`how long hoses last is told with its bounds, and too few are told as such, at ${size.width}x${size.height}`, async (t) => {
    const { url } = await serve(t);
    const page = await open(t, await browse(t), url, size);
    await goTo(page, 'Due');
    await page.getByRole('button', { name: /^How long hoses last here/ }).click();
    await page.getByRole('img', { name: /^EN 853 2SN: part still holding/ }).waitFor();
    await page
      .getByText(/^One in ten has failed by/)
      .first()
      .waitFor();
    await sound(page, 'lives');
    await page.getByRole('button', { name: 'Line', exact: true }).click();
    await page.getByRole('img', { name: /^Pressure: part still holding/ }).waitFor();
    await sound(page, 'lives by line');
  });
}

test('what to expect, bad places and the age of least cost are told, each with its bounds', async (t) => {
  const { url } = await serve(t);
  const page = await open(t, await browse(t), url);
  await goTo(page, 'Due');
  await page.getByRole('button', { name: /^How long hoses last here/ }).click();
  await page.getByRole('img', { name: /^Failures expected in the next quarter: \d/ }).waitFor();
  await page.getByText(/Of \d+ places that were looked at. Of so many some are bad by chance alone./).waitFor();
  await page.getByLabel('A failure').fill('100');
  await page.getByLabel('A planned replacement').fill('200');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await page.getByText('Two amounts above nothing, the failure the dearer one.').waitFor();
  await page.getByLabel('A failure').fill('2000');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await page
    .getByText(/^Costs least replaced at|No age costs less than waiting/)
    .first()
    .waitFor();
  await sound(page, 'costs');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /^Save it as a sheet/ }).click(),
  ]);
  assert.equal(download.suggestedFilename(), 'lives.pdf');
});

test('with too few failures no life is told', async (t) => {
  const { url } = await serve(t, { empty: true });
  const page = await open(t, await browse(t), url);
  await goTo(page, 'Due');
  await page.getByRole('button', { name: /^How long hoses last here/ }).click();
  await page.getByText('Too few failures are on record to tell how long hoses last here.').waitFor();
});
