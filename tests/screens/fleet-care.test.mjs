// The care of a fleet: limits of its owner's own, findings that stop a machine, a machine looked over, all hoses in one table.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sound } from './looks.mjs';
import { ask, browse, goTo, hosewright, open, phone, serve, sizes, still } from './support.mjs';

const desk = sizes[2];
async function openMachine(page, name) {
  await goTo(page, 'Machines');
  await page.getByRole('searchbox', { name: 'Search' }).fill(name);
  await page.getByRole('list', { name: 'Found' }).getByRole('button', { name }).first().click();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

for (const size of sizes) {
  test(`a rule of the owner stands beside the guide and shows its effect before it is kept at ${size.width}x${size.height}`, async (t) => {
    const { url } = await serve(t);
    const page = await open(t, await browse(t), url, size);
    await goTo(page, 'Due');
    await page.getByRole('button', { name: /^Limits of age/ }).click();
    const guides = page.getByRole('list', { name: 'Service life, from assembly' });
    await guides.getByText(/6 y/).first().waitFor();
    assert.match(await guides.innerText(), /DIN 20066/, 'the source stands beside the figure');
    await page.getByText('No rule of yours yet').waitFor();
    await sound(page, 'no rule yet');

    await page.getByRole('button', { name: /^Set a rule of yours/ }).click();
    assert.equal(await page.getByRole('button', { name: /^Keep this rule/ }).count(), 0, 'nothing to keep yet');
    await page.getByRole('button', { name: /^Service life/ }).click();
    await page.getByRole('button', { name: '3', exact: true }).click();
    await sound(page, 'a limit typed');
    await page.getByRole('button', { name: /^Take this/ }).click();
    await page.getByText('EFFECT').waitFor();
    await page.getByText(/[1-9]\d* days move, of \d+ hoses/).waitFor();
    await sound(page, 'effect');
    const { due: before } = await ask(url, 'register.due', { what: ['service'] });
    assert.ok(
      before.every((one) => one.rule.whose === 'guide'),
      'trying writes nothing',
    );
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    await page.getByRole('button', { name: /^Keep this rule/ }).click();
    const yours = page.getByRole('list', { name: 'Your rules' });
    await yours.getByRole('button', { name: /Service life 3 y.*crossed: stop/s }).waitFor();
    await sound(page, 'a rule');
    const { due: after } = await ask(url, 'register.due', { what: ['service'] });
    assert.ok(
      after.every((one) => one.years === 3 && one.rule.whose === 'yours'),
      'it holds for every hose',
    );

    await yours.getByRole('button').first().click();
    await page.getByRole('button', { name: /^Take the rule away/ }).click();
    await page.getByRole('button', { name: /^Keep this rule/ }).click();
    await page.getByText('No rule of yours yet').waitFor();
  });
}

test('a finding that stops says so before it is kept; the machine is stopped until the hose is off', async (t) => {
  const { url, db } = await serve(t);
  const page = await open(t, await browse(t), url);
  await openMachine(page, 'Excavator 3');
  await page.getByRole('list', { name: 'Places', exact: true }).getByRole('button').first().click();
  await page.getByRole('button', { name: /^Inspected/ }).click();
  await sound(page, 'what is seen');
  await page.getByRole('button', { name: /^Leak/ }).click();
  await page.getByText('NO HANDS').waitFor();
  await page.getByRole('list', { name: 'Leak' }).getByRole('button').first().click();
  await page.getByText(/Excavator 3 is stopped by this/).waitFor();
  await sound(page, 'a finding that stops');
  const { machine } = JSON.parse(hosewright('register', '--db', db, 'show', 'Excavator 3', '--json'));
  const stopped = async () => (await ask(url, 'register.machine', { machine: machine.machine })).stopped_by.length;
  assert.equal(await stopped(), 0, 'nothing is written before it is kept');
  await page.getByRole('button', { name: /^Keep/ }).click();
  await page.getByRole('button', { name: /all its places/ }).click();
  await page.getByText('STOPPED', { exact: true }).waitFor();
  await sound(page, 'a machine that is stopped');
  assert.equal(await stopped(), 1);
  // Every list says so: of machines, of the walk, of what falls due.
  await goTo(page, 'Due');
  const first = page.getByRole('list', { name: 'Stopped', exact: true }).getByRole('button').first();
  assert.match(await first.innerText(), /Excavator 3[^]*fluid|Excavator 3[^]*[Ll]eak/);
  assert.doesNotMatch(await first.innerText(), /0 y over/);
  await sound(page, 'what is stopped stands first');
  await goTo(page, 'Machines');
  const row = page.getByRole('button', { name: /^Excavator 3/ }).first();
  assert.match(await row.innerText(), /stopped/);
  await sound(page, 'the list of machines');
  await row.click();
  await page.getByText('STOPPED', { exact: true }).waitFor();

  await page.getByRole('list', { name: 'STOPPED' }).getByRole('button').first().click();
  await page.getByRole('list', { name: 'Sits there' }).getByRole('button').first().click();
  await page.getByText('Three clocks').waitFor();
  await sound(page, 'its hose');
  // Nothing wrong seen later lifts no stop.
  await page.getByRole('button', { name: /^Inspected/ }).click();
  await page.getByRole('button', { name: /^Nothing wrong/ }).click();
  await page.getByText(/STOP Excavator 3 stays stopped/).waitFor();
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  // What was seen by mistake is struck out with a reason, and the machine may run.
  const mistake = page.getByRole('button', { name: /^Seen by mistake/ });
  await mistake.click();
  const strike = page.getByRole('button', { name: 'Strike it out' });
  assert.equal(await strike.isDisabled(), true, 'without a reason');
  await page.getByLabel('Why', { exact: false }).fill('another hose');
  await sound(page, 'strike out what was seen');
  await strike.click();
  await mistake.waitFor({ state: 'detached' });
  await still(page);
  assert.equal(await stopped(), 0, 'nothing was seen');
  await page.getByRole('button', { name: /^Inspected/ }).click();
  await page.getByRole('button', { name: /^Leak/ }).click();
  await page.getByRole('list', { name: 'Leak' }).getByRole('button').first().click();
  await page.getByRole('button', { name: /^Keep/ }).click();
  await mistake.waitFor();
  await still(page);
  assert.equal(await stopped(), 1);
  await page.getByRole('button', { name: /^Came off/ }).click();
  const why = page.getByRole('list', { name: 'Why it failed' });
  await why.getByRole('button', { name: /^pinhole/ }).click();
  await sound(page, 'came off');
  await page.getByRole('button', { name: /^Keep/ }).click();
  await why.waitFor({ state: 'detached' });
  assert.equal(await stopped(), 0, 'the hose is off');
});

for (const size of sizes) {
  test(`a machine is looked over, one place after the other, at ${size.width}x${size.height}`, async (t) => {
    const { url, db } = await serve(t);
    const { machine } = JSON.parse(hosewright('register', '--db', db, 'show', 'Excavator 3', '--json'));
    const page = await open(t, await browse(t), url, size);
    await openMachine(page, 'Excavator 3');
    await page.getByRole('button', { name: /^Look it over/ }).click();
    await page.getByText('FIRST', { exact: true }).waitFor();
    await sound(page, 'before the walk');
    await page.getByRole('button', { name: /^Begin/ }).click();
    assert.equal(await page.getByRole('button', { name: /^Keep/ }).count(), 0, 'nothing is answered yet');
    await page.getByRole('button', { name: 'Hose there' }).click();
    assert.equal(await page.getByRole('button', { name: /^Keep/ }).count(), 0, 'what is seen on it is an answer too');
    await page.getByRole('button', { name: 'Nothing wrong' }).click();
    await sound(page, 'a place of the walk');
    await page.getByRole('button', { name: /^Keep/ }).click();
    await page.getByText(/^2\//).waitFor();
    await page.getByRole('button', { name: 'Can’t reach' }).click();
    await page.getByRole('button', { name: /^Keep/ }).click();
    await page.getByText(/^3\//).waitFor();
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await page.getByText(/1 looked at · 1 not reached · 0 without hose/).waitFor();
    await sound(page, 'the walk so far');

    const { places } = await ask(url, 'register.survey', { machine: machine.machine });
    assert.deepEqual(
      places.slice(0, 3).map(({ last }) => last?.state ?? null),
      ['not-opened', 'not-reached', null],
    );
    await page.getByRole('button', { name: /^Go on/ }).click();
    await page.getByText(/^3\//).waitFor();
  });
}

test('the desk shows every hose, sorted, filtered, chosen and saved by keys alone', async (t) => {
  const { url } = await serve(t);
  const page = await open(t, await browse(t), url, desk);
  await goTo(page, 'Machines');
  await page.getByRole('button', { name: /^All hoses/ }).press('Enter');
  const table = page.getByRole('grid', { name: 'Hoses' });
  await table.getByRole('row').nth(3).waitFor();
  const count = async () => Number(await table.getAttribute('aria-rowcount')) - 1;
  const all = await count();
  assert.ok(all > 50, `${all} hoses`);
  await page.getByRole('img', { name: /How many hoses of which age/ }).waitFor();
  await sound(page, 'all hoses');

  await page.getByRole('searchbox', { name: 'Search' }).press('s');
  await page.getByRole('searchbox', { name: 'Search' }).fill('stick');
  await page.waitForFunction(
    ([of]) => Number(document.querySelector('[role=grid]').getAttribute('aria-rowcount')) - 1 < of,
    [all],
  );
  await page.getByRole('searchbox', { name: 'Search' }).fill('');
  await page.waitForFunction(
    ([of]) => Number(document.querySelector('[role=grid]').getAttribute('aria-rowcount')) - 1 === of,
    [all],
  );
  await page.getByRole('button', { name: 'Age', exact: true }).press('Enter');
  await page.locator('[role=columnheader][aria-sort=descending]', { hasText: 'Age' }).waitFor();

  await table.focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Space');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Shift+ArrowDown');
  await page.getByRole('heading', { name: '3 hoses chosen' }).waitFor();
  assert.equal(await table.locator('[aria-selected=true]').count(), 3);
  await sound(page, 'hoses chosen');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /^Save the list/ }).press('Enter'),
  ]);
  assert.match(download.suggestedFilename(), /\.xlsx$/);
  await page.getByRole('button', { name: 'Labels of these' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Labels' }).waitFor();
  await page.goBack();
  await table.getByRole('row').nth(3).waitFor();

  await table.focus();
  await page.keyboard.press('Control+a');
  await page.getByRole('heading', { name: `${all} hoses chosen` }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('heading', { name: /hoses chosen/ }).waitFor({ state: 'detached' });
  await page.keyboard.press('End');
  await table.locator(`[aria-rowindex="${all + 1}"]`).waitFor();
  await page.keyboard.press('Enter');
  await page.getByText('Three clocks').waitFor();
});

test('on a phone the table keeps what is most needed', async (t) => {
  const { url } = await serve(t);
  const page = await open(t, await browse(t), url);
  await goTo(page, 'Machines');
  await page.getByRole('button', { name: /^All hoses/ }).click();
  await page.getByRole('grid', { name: 'Hoses' }).getByRole('row').nth(3).waitFor();
  await sound(page, 'all hoses');
  // There is no panel beside it: a tap opens the hose.
  await page.getByRole('grid', { name: 'Hoses' }).getByRole('row').nth(1).locator('.place').click();
  await page.getByText('Three clocks').waitFor();
});

test('hoses that rest on rows as they are now are said to be none', async (t) => {
  const { url } = await serve(t);
  const page = await open(t, await browse(t), url);
  await goTo(page, 'Due');
  await page.getByRole('button', { name: /^Tables that changed/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Tables that changed' }).waitFor();
  await page
    .getByText(/NONE|nobody knows which rows/)
    .first()
    .waitFor();
  await sound(page, 'affected');
});

test('what a failure does at a place is said there, and counts in the order of risk', async (t) => {
  const { url } = await serve(t);
  const page = await open(t, await browse(t), url);
  await openMachine(page, 'Excavator 3');
  await page.getByRole('list', { name: 'Places', exact: true }).getByRole('button').first().click();
  await page.getByRole('button', { name: /^What a failure does here/ }).click();
  await page.getByRole('button', { name: '5', exact: true }).click();
  await sound(page, 'what a failure does');
  await page.getByRole('button', { name: /^Keep/ }).click();
  await page.getByRole('button', { name: /^What a failure does here/ }).waitFor();
  const { due } = await ask(url, 'register.due', { by: 'risk', what: ['service'] });
  assert.ok(
    due.some(({ risk }) => risk?.consequence === 5 && risk.why.includes('owner')),
    'the owner’s word counts',
  );
});
