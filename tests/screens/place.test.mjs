// A place and the hose on it: what failed there, the same again, a note that stays, a value of its service.
import assert from 'node:assert/strict';
import test from 'node:test';
import { sound } from './looks.mjs';
import { browse, goTo, hosewright, open, serve, sizes } from './support.mjs';

const thumb = (page) => page.getByRole('contentinfo');
const rows = (page, name) => page.getByRole('list', { name }).getByRole('button');

/** Opens what the search finds under these words. */
async function search(page, words, hit) {
  await goTo(page, 'Machines');
  await page.getByRole('searchbox').fill(words);
  await page.getByRole('button', { name: hit }).first().click();
}

for (const size of sizes) {
  test(`the place of the burst hose, ${size.width} × ${size.height}`, async (t) => {
    const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
    const page = await open(t, browser, url, size);

    await t.test('says what failed there, and offers the long way first', async () => {
      await search(page, 'stick rod', /^(?=.*Stick cylinder, rod side)(?=.*Excavator 3)(?!.*-)/);
      await page.getByText('FAILED TWICE', { exact: true }).waitFor();
      await page.getByText(/abrasion once, bent too tight once\. Look at why/).waitFor();
      await thumb(page)
        .getByRole('button', { name: /^Measure it/ })
        .waitFor();
      assert.equal(await rows(page, 'Hoses of this place').count(), 3);
      await sound(page, 'place');
    });

    await t.test('keeps a value of its service', async () => {
      await page.getByRole('button', { name: /^surge/ }).click();
      const keypad = page.getByRole('group', { name: 'Keypad' });
      for (const key of '205') await keypad.getByRole('button', { name: key, exact: true }).click();
      await sound(page, 'surge');
      await page.getByRole('button', { name: /^Keep it/ }).click();
      await page.getByRole('button', { name: /^surge\s*205/ }).waitFor();
      await page.getByRole('button', { name: /^fluid/ }).click();
      await page.getByRole('button', { name: /^HV/ }).click();
      await page.getByRole('button', { name: /^Keep it/ }).click();
      await page.getByRole('button', { name: /^fluid\s*HV/ }).waitFor();
    });

    await t.test('says that a raised relief is too much for the hose there, before it is kept and after', async () => {
      const relief = async (bar) => {
        await page.getByRole('button', { name: /^relief/ }).click();
        await page.getByText(/^now \d+\sbar$/).waitFor();
        await page.keyboard.type(String(bar));
      };
      const keep = () => page.getByRole('button', { name: /^Keep it/ }).click();
      await relief(300);
      await page.getByText(/may carry 250\sbar .* may see 300\sbar/).waitFor();
      await sound(page, 'too much, not kept');
      await keep();
      const over = page.getByRole('list', { name: 'Asked too much of it' });
      await over.getByText('Pressure, end A').waitFor();
      await thumb(page)
        .getByRole('button', { name: /^Make its replacement/ })
        .waitFor();
      await sound(page, 'too much');
      await page.getByRole('button', { name: /all its places/ }).click();
      await page
        .getByRole('list', { name: 'Places', exact: true })
        .getByRole('button', { name: /Stick cylinder, rod side.*Asked too much of it: .*failed here twice/s })
        .waitFor();
      await page.goBack();
      await relief(100);
      await page.getByText(/one of the two is wrong/).waitFor();
      await page.getByRole('button', { name: 'Back' }).click();
      await relief(204);
      await keep();
      await page.getByRole('button', { name: /^relief\s*204/ }).waitFor();
      await over.waitFor({ state: 'detached' });
    });

    await t.test('its hose is inspected, with what was found', async () => {
      await page.getByRole('button', { name: /^Inspected/ }).click();
      await page.getByRole('button', { name: /^Cover/ }).click();
      assert.equal(await thumb(page).getByRole('button').count(), 0, 'nothing is answered yet');
      await page
        .getByRole('list', { name: 'Cover' })
        .getByRole('button', { name: /^cover scuffed/ })
        .click();
      await sound(page, 'inspected');
      await page.getByRole('button', { name: /^Keep/ }).click();
      await page.getByRole('button', { name: /^Inspected/ }).waitFor();
    });

    await t.test('leads to its hose, whose notes outlive a reload', async () => {
      await rows(page, 'Sits there').click();
      const code = await page.getByRole('heading', { level: 1 }).innerText();
      await page.getByText(/^Put on record/).waitFor();
      await page.getByText(/^Inspected .* cover scuffed, no reinforcement seen, to watch$/).waitFor();
      await sound(page, 'hose');
      await page.getByLabel('A note on this hose').fill('Clamp renewed');
      await page.getByRole('button', { name: 'Keep the note' }).click();
      await page.getByText('Note: Clamp renewed').waitFor();
      await page.reload();
      await search(page, code, new RegExp(code));
      await page.getByText('Clamp renewed', { exact: true }).waitFor();
      const { notes } = JSON.parse(hosewright('register', '--db', db, 'show', code, '--json'));
      assert.deepEqual(
        notes.map(({ text }) => text),
        ['Clamp renewed'],
      );
    });

    await t.test('takes the same to the check, with the hose and the service in it', async () => {
      await thumb(page)
        .getByRole('button', { name: /^Same for same/ })
        .click();
      await page.getByText('Same for same: made as the record says').waitFor();
      await page.getByRole('heading', { name: 'Stick cylinder, rod side' }).waitFor();
      await page.getByText('1240').first().waitFor();
      await page.getByText('2SN DN16').first().waitFor();
      await page.getByText('205 bar').first().waitFor();
      await sound(page, 'check');
    });

    await t.test('a tag is withdrawn with a reason, and its hose is still to be replaced', async () => {
      const code = JSON.parse(hosewright('register', '--db', db, 'search', 'stick rod', '--json')).hits.find(
        (hit) => hit.what === 'hose',
      ).code;
      await search(page, code, new RegExp(code));
      await page.getByRole('button', { name: /^Withdraw its tag/ }).click();
      assert.ok(await page.getByRole('button', { name: 'Withdraw the tag' }).isDisabled());
      await page.getByRole('button', { name: 'Tag lost' }).click();
      await sound(page, 'withdrawing');
      await page.getByRole('button', { name: 'Withdraw the tag' }).click();
      await page.getByText('WITHDRAWN', { exact: true }).waitFor();
      await sound(page, 'withdrawn');
      // The job that was begun for it is still open.
      await thumb(page)
        .getByRole('button', { name: /^Begin another/ })
        .click();
      await thumb(page)
        .getByRole('button', { name: /^Measure it/ })
        .waitFor();
    });
  });
}
