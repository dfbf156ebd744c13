// Finding: what stands where on a phone, and what is said of a reading that can not be.
import assert from 'node:assert/strict';
import test from 'node:test';
import { typeNumber } from './technician.mjs';
import { sound } from './looks.mjs';
import { browse, demo, keepJob, open, phone, serve, sizes } from './support.mjs';

/** An end that is half read, so that a look-alike is still possible; asked is one reading more. */
const asked = (key) => ({
  readings: {
    ends: [
      {
        role: 'B',
        gender: 'female',
        seal: 'o-ring-face',
        thread_diameter_mm: '23.55 mm',
      },
    ],
    mates: [],
  },
  finding: { part: 'B', asked: key, forms: {}, chosen: [] },
});

async function finding(t, content, more, size = phone) {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  await keepJob(url, { step: 'find', ...content });
  const page = await open(t, browser, url, size, more);
  // The first answer moves what is under the thumb: a refusal stands above all else.
  await page.waitForLoadState('networkidle');
  return page;
}

/** The same end with the keypad up. */
async function measuring(t, more, content = asked('form'), size = phone) {
  const page = await finding(t, content, more, size);
  await page.getByRole('button', { name: /^All readings/ }).click();
  await page.getByRole('button', { name: /^Hex of the nut/ }).click();
  return page;
}

test('a number that can not be is refused in the unit typed, and its candidates are withdrawn', async (t) => {
  const page = await measuring(t, { refused: ['find'] });
  const first = page.getByRole('list').getByText('ORFS', { exact: true });
  await first.waitFor();
  await typeNumber(page, ['6', '0'], 'inch');
  const refused = page.getByRole('alert');
  await refused.waitFor();
  // Which lengths there can be is the core's to say; here they are said in the unit typed.
  assert.match(await refused.innerText(), /60\sin: it lies between [\d.]+\sin and [\d.]+\sin\.$/);
  assert.equal(await first.isVisible(), false);
  assert.equal(await page.getByRole('button', { name: /^Keep/ }).count(), 0);
  for (const _ of '60') await page.getByRole('button', { name: 'Rub out' }).click();
  await first.waitFor();
  assert.equal(await first.isVisible(), true);
});

test('a look-alike is said whole over the keys while the keypad is up, and leads to the rest', async (t) => {
  // Seat unread: flares of 37 and 45 degrees and flareless ends share this thread.
  const end = {
    role: 'B',
    gender: 'female',
    seal: 'cone',
    thread_diameter_mm: '20.4 mm',
    tpi: 14,
  };
  const page = await measuring(t, {}, { ...asked('form'), readings: { ends: [end], mates: [] } });
  const alike = page.getByRole('button', { name: /^Look-alike: / });
  await alike.waitFor();
  const [named] = /Look-alike: [^.]+/.exec(await alike.innerText());
  const [box, pad] = [await alike.boundingBox(), await page.getByRole('group', { name: 'Keypad' }).boundingBox()];
  assert.ok(box.y + box.height <= pad.y, `${JSON.stringify(box)} ${JSON.stringify(pad)}`);
  assert.ok(box.height >= 48, `${box.height} px high`);
  await sound(page, 'find, a look-alike above the thumb');
  await alike.click();
  await page.getByRole('heading', { name: named }).first().waitFor();
});

for (const size of sizes.slice(0, 2)) {
  test(`no key moves under the thumb while a number is typed, ${size.width} × ${size.height}`, async (t) => {
    const end = {
      role: 'B',
      gender: 'female',
      seal: 'cone',
      thread_diameter_mm: '20.4 mm',
      tpi: 14,
    };
    const content = { ...asked('form'), readings: { ends: [end], mates: [] } };
    const page = await measuring(t, { refused: ['find'] }, content, size);
    const pad = page.getByRole('group', { name: 'Keypad' });
    await pad.waitFor();
    const stood = await pad.boundingBox();
    const alike = page.getByRole('button', { name: /^Look-alike: / });
    const seen = new Set();
    for (const key of ['2', '7', 'Rub out', 'Rub out', '6', '0', '0', 'Rub out', 'Rub out', 'Rub out', '3', '8']) {
      const answer = page.waitForResponse(/api.find$/, { timeout: 1000 }).catch(() => null);
      await pad.getByRole('button', { name: key, exact: true }).click();
      await answer;
      assert.deepEqual(await pad.boundingBox(), stood, `after ${key}`);
      seen.add(`look-alike ${await alike.isVisible()}`);
      seen.add(`refused ${await page.getByRole('alert').isVisible()}`);
    }
    assert.deepEqual([...seen].sort(), ['look-alike false', 'look-alike true', 'refused false', 'refused true']);
  });
}

test('what goes on under the keys has a sign, and scrolls clear of them', async (t) => {
  const page = await measuring(t);
  const main = page.getByRole('main');
  const sign = page.locator('.more');
  await sign.waitFor();
  await main.evaluate((it) => it.scrollTo(0, it.scrollHeight));
  await sign.waitFor({ state: 'detached' });
  const [last, pad] = await Promise.all([
    page.getByRole('button', { name: /^All candidates/ }).boundingBox(),
    page.getByRole('group', { name: 'Keypad' }).boundingBox(),
  ]);
  assert.ok(last.y + last.height <= pad.y, `to ${last.y + last.height}, keys from ${pad.y}`);
});

for (const size of sizes.slice(0, 2)) {
  const at = `${size.width} × ${size.height}`;
  test(`a kept reading is typed anew, and as many figures as it takes stand whole, ${at}`, async (t) => {
    const end = {
      role: 'B',
      gender: 'female',
      seal: 'o-ring-face',
      swivel_hex_mm: '2.06 mm',
    };
    const content = { ...asked('form'), readings: { ends: [end], mates: [] } };
    const page = await measuring(t, { refused: ['find'] }, content, size);
    await typeNumber(page, ['2', '0', '.', '6']);
    await page.getByRole('button', { name: /^Keep 20\.6.mm/ }).waitFor();
    await typeNumber(page, [], 'inch');
    for (const key of '8888') {
      await typeNumber(page, [key]);
      const figure = page.getByRole('main').locator('.typed');
      const right = await figure.evaluate((it) =>
        Math.max(...[...it.children].map((part) => part.getBoundingClientRect().right)),
      );
      assert.ok(right <= size.width, `${await figure.innerText()} ends at ${right}`);
    }
  });
}

test('why a candidate stands where it stands is told by what each reading says against the rival picked', async (t) => {
  // As the burst hose of the demo with few readings: the nut alone leaves two dozen kinds open.
  const end = {
    role: 'A',
    gender: 'female',
    thread_diameter_mm: '20.4 mm',
    tpi: 14,
    seal: 'cone',
  };
  const page = await finding(t, {
    readings: { ends: [end], mates: [] },
    finding: { part: 'A', asked: 'gender', forms: {}, chosen: [] },
  });
  await page.getByRole('button', { name: /^All candidates, and why/ }).click();
  const ruler = page.getByRole('region', { name: 'Candidates on one ruler' });
  // A component's scope was once named as the class that hides text: everything was there, and nothing was seen.
  const drawn = await ruler.boundingBox();
  assert.ok(drawn.width > 300 && drawn.height > 100, `drawn ${drawn.width} by ${drawn.height}`);
  const first = await ruler.getByRole('button').first().innerText();
  await ruler.getByRole('button').first().click();
  const rows = page.getByRole('list', { name: 'What each reading says' }).getByRole('listitem');
  // Four readings, what is left, and the sum.
  await rows.nth(5).waitFor();
  assert.equal(await rows.count(), 6);
  const rival = page.getByRole('group', { name: 'Against' }).locator('[aria-pressed=true]');
  const [before, against] = [await rows.allInnerTexts(), await rival.innerText()];
  assert.notEqual(against, first.replaceAll('\n', ' '));
  await sound(page, 'find, why');

  await page.getByRole('button', { name: 'none of these', exact: true }).click();
  await page.getByText(/^For none of these to be right, these readings would have to be wrong: .*Thread/).waitFor();
  assert.equal(await rival.innerText(), 'none of these');
  assert.notDeepEqual(await rows.allInnerTexts(), before);
  const thread = rows.filter({ hasText: 'Thread Ø' });
  assert.match(await thread.innerText(), /20\.4\smm[\s\S]*table [\d.]+–[\d.]+\smm[\s\S]*bits for /);
});

test('of a hose that is still fitted only what can be reached is asked, and then what taking it off would give', async (t) => {
  const page = await finding(t, {
    readings: {
      ends: [{ role: 'A', kind: 'nut', gender: 'female' }],
      mates: [],
    },
    finding: { part: 'A', asked: null, forms: {}, chosen: [] },
  });
  await page.getByText(/^Now: /).waitFor();
  await page.getByRole('button', { name: 'still fitted', exact: true }).click();
  await page.getByText('Now: measure the hex').waitFor();
  const asked = [];
  const done = page.getByText('Still fitted, it tells no more. Off the machine, more can be read.');
  const cannot = page.getByRole('button', {
    name: /^(can’t tell|Nothing can be read)/,
  });
  const task = page.getByRole('main').locator('.what');
  while ((await done.count()) === 0 && asked.length < 20) {
    asked.push(await task.innerText());
    await cannot.first().click();
    await page.waitForFunction((was) => document.querySelector('main .what')?.innerText !== was, asked.at(-1));
  }
  // No thread, no seat, nothing that needs the cut, nothing on the machine.
  const end = ['Hex of the nut', 'Bolt spacing, long', 'Bolt spacing, short'];
  assert.deepEqual(asked, [
    ...['Hex of the nut', 'How the end leaves the hose'],
    ...['What kind of end', 'Which half', ...end, 'How the end leaves the hose'],
    ...['Print on the cover', 'Ø over the cover', 'Kind of cover'],
  ]);
  await done.waitFor();
  await sound(page, 'find, nothing more within reach');
  await page.getByRole('button', { name: 'off the machine', exact: true }).click();
  await page.getByText('Now: tape the overall length').waitFor();
});

test('a date code of the print that can be read in two ways is told with both', async (t) => {
  const page = await finding(t, {
    readings: { ends: [], mates: [] },
    finding: { part: 'A', asked: 'gender', forms: {}, chosen: [] },
  });
  await page.getByRole('button', { name: /^Hose:/ }).click();
  await page.getByText('Now the hose').waitFor();
  // While a button has the focus the space bar is the button's.
  await page.evaluate(() => document.activeElement.blur());
  await page.keyboard.type('EN 853 2SN 12/24');
  await page.getByText('made December 2024, or week 12 of 2024').waitFor();
  await sound(page, 'find, print');
});

for (const [key, most] of [
  ['form', 6],
  ['seal', 8],
]) {
  test(`each ${key} of an end has a picture of its own`, async (t) => {
    const page = await finding(t, asked(key));
    const pictures = page.getByRole('main').locator('button.choice svg');
    await pictures.nth(most - 1).waitFor();
    const drawn = await pictures.evaluateAll((all) => all.map((one) => one.innerHTML.replace(/<!--.*?-->/g, '')));
    assert.equal(drawn.length, most);
    assert.equal(new Set(drawn).size, most);
    await sound(page, key);
  });
}

test('letters of the drawing and the words of the question do not cross', async (t) => {
  const page = await finding(t, asked('form'));
  const words = await page.getByText('How the end leaves the hose', { exact: true }).boundingBox();
  const letters = page.getByRole('main').locator('svg text', { hasText: /^[AB]$/ });
  assert.equal(await letters.count(), 2);
  for (const letter of await letters.all()) {
    const { y } = await letter.boundingBox();
    assert.ok(y >= words.y + words.height, `letter at ${y}, words to ${words.y + words.height}`);
  }
});

test('on the settled sheet each part leads to why it is what it is', async (t) => {
  const page = await finding(t, {
    readings: { ...demo('burst-readings.json'), overall_length_mm: 1240 },
    finding: {
      part: 'A',
      asked: null,
      forms: { A: 'elbow45', B: 'elbow90' },
      chosen: [],
    },
  });
  const use = page.getByRole('contentinfo').getByRole('button', { name: /^Check what may replace it/ });
  await use.waitFor();
  for (const [part, name] of [
    ['End B', 'ORFS'],
    ['Hose', 'EN 853 2SN'],
  ]) {
    await page.getByRole('main').getByRole('listitem').filter({ hasText: part }).getByRole('button').first().click();
    await page.getByRole('heading', { name: new RegExp(`^${name}.* and the readings`) }).waitFor();
    await sound(page, `why ${part}`);
    await page.getByRole('button', { name: 'Back to the reading' }).click();
    await use.waitFor();
  }
});

test('one tap counts as one reading', async (t) => {
  const page = await finding(t, { readings: { ends: [], mates: [] } });
  await page.getByRole('button', { name: /^Loose nut/ }).click();
  await page.getByRole('navigation', { name: 'Parts' }).getByText('1 read', { exact: true }).waitFor();
});

test('pressure is spoken of before anything is loosened', async (t) => {
  const first = { readings: { ends: [], mates: [] }, finding: { part: 'A', asked: null, forms: {}, chosen: [] } };
  const page = await finding(t, first);
  await page.getByText(/pressure proved gone before you loosen anything/).waitFor();
  await sound(page, 'the first question');
});
