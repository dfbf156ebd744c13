// Check: a limit of prudence is taken on with a name and a reason and stands on the record; a hose that is made comes
// back from Check to its fitting.
import assert from 'node:assert/strict';
import test from 'node:test';
import { made } from './states.mjs';
import { typeNumber } from './technician.mjs';
import { sound } from './looks.mjs';
import { ask, browse, demo, keepJob, open, phone, serve } from './support.mjs';

const { spec, service } = demo('replacement.json');
const thumb = (page) => page.getByRole('contentinfo');

test('a limit of prudence is taken on with a name and a reason, and both go on the record of the hose', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  const fast = { ...service, duties: [], flow_l_min: 150 };
  await keepJob(url, {
    step: 'check',
    readings: demo('burst-readings.json'),
    spec,
    service: fast,
    ...made,
  });
  const page = await open(t, browser, url, phone);
  const finding = page.getByRole('listitem').filter({ hasText: 'Flow' }).first();
  await finding.getByRole('button').first().click();
  const take = page.getByRole('button', {
    name: 'Take it on, with a name and a reason',
  });
  assert.equal(await take.isDisabled(), true, 'nobody and nothing');
  await page.getByLabel('Name').fill('Technician 1');
  assert.equal(await take.isDisabled(), true, 'no reason');
  await page.getByLabel('Reason').fill('Short run, twice a day');
  await sound(page, 'check, taking on');
  await take.click();
  const taken = page.getByRole('listitem').filter({ hasText: 'Technician 1 takes this on: Short run, twice a day' });
  await taken.waitFor();
  // The row moved under the thumb, where a tap that came at once would fall.
  await page.waitForTimeout(500);
  await taken.getByRole('button').first().click();
  await taken.getByRole('button', { name: 'Take it back' }).waitFor();

  await page.getByRole('button', { name: 'Tag', exact: true }).click();
  const keep = page.getByRole('button', {
    name: /^Save the label and keep the hose/,
  });
  await Promise.all([page.waitForEvent('download'), keep.click()]);
  await page.getByRole('button', { name: 'Fit', exact: true }).and(page.locator('[aria-current]')).waitFor();
  const { jobs } = await ask(url, 'job.list', {});
  const { overrides } = await ask(url, 'register.show', {
    code: jobs[0].content.code,
  });
  const on = overrides.map(({ rule, name, reason }) => ({
    rule,
    name,
    reason,
  }));
  assert.deepEqual(on, [
    {
      rule: 'flow-speed',
      name: 'Technician 1',
      reason: 'Short run, twice a day',
    },
  ]);
});

test('a hose of which nobody said what its line asks goes from Fit to Check, and on fitting from there', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const { catalogue, program, hits } = await ask(url, 'register.search', {
    words: 'stick rod',
  });
  const { at } = hits[0];
  const code = '0AAKG-EWXTN-P';
  const unsaid = { duties: [] };
  const proof = { state: 'not-proved', why: 'no-rig' };
  const made = {
    kind: 'assembly-made',
    code,
    spec,
    service: unsaid,
    proof,
    pressure_bar: 206,
    catalogue,
    program,
  };
  const { written } = await ask(url, 'register.record', {
    events: [{ body: made }],
  });
  await keepJob(url, {
    step: 'fit',
    at,
    code,
    spec,
    service: unsaid,
    written: { made: written[0], fitted: null },
  });
  // There is no sheet of a hose that stops, and that is what Fit says.
  const page = await open(t, browser, url, phone, { refused: ['make'] });
  const arrow = thumb(page).getByRole('button', {
    name: /^Enter what the place asks/,
  });
  await arrow.waitFor();
  assert.equal(await page.getByRole('status').getByText('DO NOT FIT YET').count(), 1);
  assert.equal(await page.getByText('NOT MADE').count(), 0, 'it is made');
  await sound(page, 'fit, what the place asks is not known');
  await arrow.click();
  // What stops is cured in turn; then fitting goes on where it was left.
  await thumb(page).getByRole('button', { name: 'Enter the working pressure' }).click();
  await typeNumber(page, ['1', '8', '5'], 'bar');
  await thumb(page).getByRole('button', { name: /^Keep/ }).click();
  await thumb(page).getByRole('button', { name: /fluid/ }).click();
  await page.getByRole('button', { name: /^HM\b/ }).click();
  await thumb(page)
    .getByRole('button', { name: /^Go on fitting/ })
    .click();
  await thumb(page)
    .getByRole('button', { name: /^Tick: / })
    .waitFor();
  const { jobs } = await ask(url, 'job.list', {});
  assert.equal(jobs[0].content.step, 'fit');
  assert.deepEqual([jobs[0].content.service.working_pressure_bar, jobs[0].content.service.fluid], [185, 'HM']);
});

/** A page on a check of the demo's replacement with that service. */
async function atCheck(t, service) {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const { spec, service: known } = demo('replacement.json');
  await keepJob(url, {
    step: 'check',
    spec,
    service: { duties: [], ...known, ...service },
    sameForSame: true,
  });
  return open(t, browser, url, phone);
}

test('after a value is kept the page stands where it was', async (t) => {
  const page = await atCheck(t);
  const cell = page.getByRole('main').getByRole('button', { name: /^flow/ }).first();
  // The findings stand above the cells.
  await page.getByRole('main').locator('li.finding').first().waitFor();
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
  await sound(page, 'another hose');
  await thumb.getByRole('button', { name: 'Take it back' }).click();
  await page.getByText(/^Same for same/).waitFor();
});

test('what failed at the place and what its sisters carry stand under the findings, and what was not looked at above them', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const { hits } = await ask(url, 'register.search', { words: 'stick rod' });
  const { at } = hits[0];
  const { machine, places } = await ask(url, 'register.machine', {
    machine: at.machine,
  });
  const [{ id: circuit }, here] = await Promise.all([
    ask(url, 'register.id', {}),
    ask(url, 'register.place', { place: at.place }),
  ]);
  const other = places.find(({ place, hoses }) => place.place !== at.place && hoses.length > 0).place;
  const on = ({ version, ...place }) => ({
    body: { kind: 'place-set', ...place, circuit },
    builds_on: [version],
  });
  await ask(url, 'register.record', {
    events: [
      {
        body: {
          kind: 'circuit-set',
          circuit,
          machine: machine.machine,
          name: 'Boom and stick',
        },
      },
      on(here.place),
      on(other),
    ],
  });
  const { sisters } = await ask(url, 'register.place', { place: at.place });
  assert.deepEqual(
    sisters.map(({ place }) => place),
    [other.place],
  );
  await keepJob(url, {
    step: 'check',
    at,
    spec,
    service: { duties: [], ...service },
    sameForSame: true,
  });
  const page = await open(t, browser, url, phone);
  await page.getByText('The route over the machine').waitFor();
  await page.getByRole('main').locator('li.finding').filter({ hasText: 'Failed here before' }).waitFor();
  const row = page.getByRole('list', { name: 'On the same circuit Boom and stick' }).getByRole('button');
  await row.filter({ hasText: other.name }).waitFor();
  await sound(page, 'check, sisters');
  await row.click();
  await page.getByRole('heading', { level: 1 }).filter({ hasText: other.name }).waitFor();
});

test('a stop at an end has two ways; a rating of one’s own is asked from where it is and stays marked', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  const more = {
    ...service,
    duties: [],
    relief_bar: 210,
    surge_pressure_bar: 211,
  };
  await keepJob(url, { step: 'check', spec, service: more, ...made });
  const page = await open(t, browser, url, phone);
  await page.getByText('STOP', { exact: true }).first().waitFor();
  await thumb(page).getByRole('button', { name: 'Change end A' }).waitFor();
  await thumb(page).getByRole('button', { name: 'Enter the supplier’s rating of end A' }).click();
  await typeNumber(page, '250', 'bar');
  await page.getByRole('button', { name: /^Keep 250/ }).click();
  assert.equal(await page.getByRole('button', { name: /^Keep/ }).count(), 0, 'nothing is kept before its source');
  await page.getByRole('textbox').fill('Supplier S, table 12');
  await sound(page, 'check, where a rating is from');
  await page.getByRole('button', { name: /^Keep 250/ }).click();
  const mark = page.getByText(/^250\sbar AT A: YOURS$/);
  await mark.waitFor();
  await page.getByText('Not the table’s. From: Supplier S, table 12.').waitFor();
  await page.getByRole('listitem').filter({ hasText: 'JIC 37 flare' }).getByText('yours', { exact: true }).waitFor();
  await sound(page, 'check, a rating of one’s own');
  await page.getByRole('button', { name: 'Tag', exact: true }).click();
  await mark.waitFor();
  await sound(page, 'tag, a rating of one’s own');
  const keep = page.getByRole('button', {
    name: /^Save the label and keep the hose/,
  });
  assert.equal(await page.getByRole('button', { name: 'Save as picture' }).count(), 0, 'the arrow leaves it once');
  await Promise.all([page.waitForEvent('download'), keep.click()]);
  await page.getByRole('button', { name: 'Fit', exact: true }).and(page.locator('[aria-current]')).waitFor();
  const { jobs } = await ask(url, 'job.list', {});
  const { notes } = await ask(url, 'register.show', {
    code: jobs[0].content.code,
  });
  assert.match(notes.map(({ text }) => text).join(), /End A .*250\sbar.*Supplier S, table 12/);
});
