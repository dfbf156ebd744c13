// Every screen and main state, in three languages and three looks, and at every size: axe finds nothing, nothing is cut,
// every target takes a glove, and in the sun all words stand out seven times.
import assert from 'node:assert/strict';
import test from 'node:test';
import { faint, stumbles, violations } from './looks.mjs';
import { states } from './states.mjs';
import { ask, browse, drawn, open, phone, resize, serve, sizes } from './support.mjs';
import { go, named, stocked } from './walker.mjs';
import { catalogue } from '../../ui/tools/catalogues.mjs';

const THEMES = ['light', 'dark', 'sun'];
/** What another look may change: the rest of axe's rules read the page, not its colours. */
const COLOURS = ['color-contrast', 'link-in-text-block'];
/** States show what they say where something is refused: no flow, a code on no record, a hose that stops. */
const REFUSED = ['make', 'oil', 'register.show'];
const only = process.env.ONLY ? new RegExp(process.env.ONLY) : null;

const inTheme = (page, theme) => page.evaluate((name) => (document.documentElement.dataset.theme = name), theme);
async function inType(page, percent) {
  await page.evaluate((size) => (document.documentElement.style.fontSize = size), percent === 100 ? '' : `${percent}%`);
  await drawn(page);
}

test('what these tests look for is found where it is', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  const page = await open(t, browser, url, phone);
  assert.deepEqual([await violations(page), await stumbles(page), await faint(page, 7)], [[], [], []]);
  await page.evaluate(() => {
    const sheet = document.querySelector('main');
    sheet.insertAdjacentHTML(
      'beforeend',
      `<button class="slip" aria-label="Small"></button><p class="slip pale">Pale</p><p class="slip long">Too long to be read</p>
       <button class="slip tight">Longer than its key</button><input class="slip" aria-label="Hint" placeholder="A hint that has no room at all">`,
    );
    const styles = { pale: 'color: rgb(160, 160, 160)', long: 'width: 3em; overflow: hidden; white-space: nowrap', tight: 'width: 48px; height: 48px; white-space: nowrap' };
    for (const [name, style] of Object.entries(styles)) sheet.querySelector(`.${name}`).style.cssText = style;
    sheet.querySelector('.slip').style.cssText = 'width: 20px; height: 20px';
    sheet.querySelector('input.slip').style.cssText = 'width: 60px; height: 48px';
  });
  assert.match((await violations(page)).join(), /color-contrast/);
  assert.match((await faint(page, 7)).join(), /“Pale” stands out 2\.\d times/);
  const said = (await stumbles(page)).join('\n');
  for (const slip of [/“Small” is 20 x 20 px/, /“Too long to be read” is cut/, /“Longer than its key” leaves its key/, /the hint .* is cut/]) {
    assert.match(said, slip);
  }
});

for (const language of ['en', 'de', 'es']) {
  test(`every screen is sound in ${language}: three looks, three sizes, type of 200 %`, async (t) => {
    const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
    const { wanted, ...fleet } = await stocked(url, db);
    const page = await open(t, browser, url, phone, { may: REFUSED });
    const { catalogue: _, program: __, unreadable: ___, ...now } = await ask(url, 'settings.read', {});
    await ask(url, 'settings.write', { ...now, language });
    page.setDefaultTimeout(6000);
    await page.evaluate((wanted) => localStorage.setItem('hosewright-batch', JSON.stringify(wanted)), wanted);
    await page.reload();
    await page.getByRole('navigation').first().waitFor();
    const name = named(catalogue(language));
    const found = [];
    let looked = 0;
    const spent = {};
    const timed = async (what, run) => {
      const from = performance.now();
      const result = await run();
      spent[what] = (spent[what] ?? 0) + performance.now() - from;
      return result;
    };
    for (const [state, way] of Object.entries(states(fleet))) {
      if (only && !only.test(state)) continue;
      const say = (where, lines) => found.push(...lines.map((line) => `${state}, ${where}: ${line}`));
      try {
        await timed('go', () => go(page, url, way, name));
      } catch (error) {
        found.push(`${state}: ${error.message.split('\n').slice(0, 3).join(' ')}`);
        continue;
      }
      for (const theme of THEMES) {
        await timed('theme', () => inTheme(page, theme));
        say(theme, await timed('axe', () => violations(page, theme === 'light' ? null : COLOURS)));
        if (theme === 'sun') say('sun', await timed('faint', () => faint(page, 7)));
        looked += 1;
      }
      for (const size of sizes) {
        await timed('size', () => resize(page, size));
        say(`${size.width}`, await timed('stumbles', () => stumbles(page)));
        looked += 1;
      }
      await timed('phone', () => resize(page, phone));
      await timed('type', () => inType(page, 200));
      say('200 %', await timed('stumbles', () => stumbles(page, { targets: false })));
      await timed('type back', () => inType(page, 100));
      looked += 1;
    }
    t.diagnostic(`${looked} looks at ${Object.keys(states(fleet)).length} states in ${language}: ${found.length} faults; ${JSON.stringify(spent)}`);
    assert.deepEqual(found, []);
  });
}
