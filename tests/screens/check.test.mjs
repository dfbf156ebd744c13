// What the check shows stays where the person was, whatever was tapped.
import assert from 'node:assert/strict';
import test from 'node:test';
import { axe, browse, demo, keepJob, open, phone, serve } from './support.mjs';
import { typeNumber } from './technician.mjs';

/** A page on a check of the demo's replacement with that service. */
async function atCheck(t, service) {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const { spec, service: known } = demo('replacement.json');
  await keepJob(url, { step: 'check', spec, service: { duties: [], ...known, ...service }, sameForSame: true });
  return open(t, browser, url, phone);
}

test('after a value is kept the page stands where it was', async (t) => {
  const page = await atCheck(t);
  const cell = page.getByRole('main').getByRole('button', { name: /^flow/ }).first();
  await cell.scrollIntoViewIfNeeded();
  const top = () => page.evaluate(() => document.querySelector('main').scrollTop);
  const before = await top();
  assert.ok(before > 100, `scrolled ${before} px`);
  await cell.click();
  await typeNumber(page, '60');
  await page.getByRole('button', { name: /^Keep/ }).click();
  await cell.waitFor();
  await page.waitForTimeout(300);
  assert.ok(Math.abs((await top()) - before) <= 2, `at ${await top()}, was at ${before}`);
});

test('a speed over its limit stands first, and another hose is swapped with Undo at the thumb', async (t) => {
  const page = await atCheck(t, { flow_l_min: 250 });
  const first = page.getByRole('main').locator('li.finding').first();
  await first.getByText('Flow speed').waitFor();
  await page.getByText(/^Same for same/).waitFor();
  await first.getByRole('button', { name: 'Choose another hose' }).click();
  await page
    .getByRole('main')
    .getByRole('button', { name: /^(PASS|CAUTION) .* DN/ })
    .first()
    .click();
  const thumb = page.getByRole('contentinfo');
  await thumb.getByText(/ instead of EN 853 2SN/).waitFor();
  assert.equal(await page.getByText(/^Same for same/).count(), 0);
  await axe(page, 'another hose');
  await thumb.getByRole('button', { name: 'Undo' }).click();
  await page.getByText(/^Same for same/).waitFor();
});
