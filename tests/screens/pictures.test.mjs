// Telling screens look as they did, at four sizes, within a tolerance that letters drawn a little otherwise keep and a real
// change breaks. `KEEP=1` keeps new pictures in the place of those that no longer hold.
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import test from 'node:test';
import { states } from './states.mjs';
import { answered, browse, file, open, resize, serve, sizes } from './support.mjs';
import { go, named, stocked } from './walker.mjs';
import { catalogue } from '../../ui/tools/catalogues.mjs';

const require = createRequire(file('ui/'));
const { PNG } = require('pngjs');
const { default: pixelmatch } = await import(require.resolve('pixelmatch'));

const SHOWN = ['find, threads', 'check, stopped', 'oil, too fast'];
const SIZES = [...sizes, { width: 768, height: 1024 }];
/** Half size: small to keep, and a letter that is drawn a little otherwise is no more than a shade. */
const SCALE = 0.5;
/** How far a pixel may be off, of 1, and how many may be further off, of 1000. */
const OFF = 0.2;
const PER_MILLE = 3;
/** The service reckons by its own day, so no screen of what falls due is among them; the page has one day. */
const TODAY = new Date('2026-11-27T08:00:00');
const kept = file('tests/screens/pictures/');

/** How many pixels of 1000 differ; all where the sizes do. */
function differ(one, other) {
  const [a, b] = [one, other].map((png) => PNG.sync.read(png));
  if (a.width !== b.width || a.height !== b.height) return 1000;
  return (1000 * pixelmatch(a.data, b.data, null, a.width, a.height, { threshold: OFF })) / (a.width * a.height);
}

const picture = (page) => page.screenshot({ animations: 'disabled', caret: 'hide' });

/** The picture once nothing of it changes any more: what was asked last comes last. */
async function standing(page) {
  let shot = await picture(page);
  for (let same = 0; same < 3;) {
    await page.waitForTimeout(150);
    const next = await picture(page);
    same = next.equals(shot) ? same + 1 : 0;
    shot = next;
  }
  return shot;
}

test('telling screens look as they did at four sizes, and a deliberate change is seen', async (t) => {
  const [browser, { url, db }] = await Promise.all([browse(t), serve(t)]);
  const fleet = await stocked(url, db);
  const page = await open(t, browser, url, SIZES[0], { deviceScaleFactor: SCALE, may: ['make', 'oil'] });
  await page.clock.setFixedTime(TODAY);
  const found = [];
  const all = states(fleet);
  for (const name of SHOWN) {
    for (const size of SIZES) {
      await resize(page, size);
      await go(page, url, all[name], named(catalogue('en')));
      await page.evaluate(() => {
        document.activeElement?.blur();
        for (const part of document.querySelectorAll('main, aside')) part.scrollTop = 0;
      });
      await answered(page);
      const shot = await standing(page);
      const path = `${kept}${name.replace(/\W+/g, '-')}-${size.width}x${size.height}.png`;
      if (process.env.KEEP && (!existsSync(path) || differ(readFileSync(path), shot) > PER_MILLE)) {
        mkdirSync(kept, { recursive: true });
        writeFileSync(path, shot);
      }
      found.push([`${name} ${size.width}x${size.height}`, existsSync(path) ? differ(readFileSync(path), shot) : 1000]);
    }
  }
  const worst = found.reduce((most, one) => (one[1] > most[1] ? one : most));
  t.diagnostic(`${found.length} pictures, at most ${worst[1].toFixed(1)} of 1000 pixels off (${worst[0]}); ${PER_MILLE} may be`);

  // What a slip would do, where there are headings, rows and the accent: a word too much, another accent, a key that is gone.
  await resize(page, SIZES[1]);
  await go(page, url, all.place, named(catalogue('en')));
  await answered(page);
  await standing(page);
  const before = await picture(page);
  const slips = {
    'a heading in another size': 'h2 { font-size: 115% !important }',
    'another accent': ':root { --mark: #a01fd6 }',
    'rows closer together': 'main li button { min-height: 40px !important; padding-block: 0 !important }',
  };
  for (const [slip, css] of Object.entries(slips)) {
    const style = await page.addStyleTag({ content: css });
    const off = differ(before, await picture(page));
    await style.evaluate((node) => node.remove());
    t.diagnostic(`${slip}: ${off.toFixed(1)} of 1000`);
    assert.ok(off > PER_MILLE, `${slip} is not seen: ${off.toFixed(1)}`);
  }
  assert.deepEqual(
    found.filter(([, off]) => off > PER_MILLE),
    [],
  );
});
