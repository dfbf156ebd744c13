// Goes to any screen and state of a register that is stocked, in any language.
import assert from 'node:assert/strict';
import { ask, demo, hosewright, still } from './support.mjs';

/** What the name of a button begins with: its words in these catalogues up to what is put into them. */
export function named(words) {
  return (id) => {
    const said = words.get(id)?.text.split(/[{\n]/)[0];
    assert.ok(said, `words for ${id}`);
    return new RegExp(`^${said.trimEnd().replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`);
  };
}

/** The demo's fleet and van, a machine, a place with its hose, and several hoses that are wanted at once. */
export async function stocked(url, db) {
  const { catalogue: _, program: __, unreadable: ___, ...now } = await ask(url, 'settings.read', {});
  await ask(url, 'settings.write', { ...now, ...demo('van.json') });
  await ask(url, 'stock.change', { changes: demo('stock.json') });
  const { machine } = JSON.parse(hosewright('register', '--db', db, 'show', 'Excavator 3', '--json'));
  const { places } = await ask(url, 'register.machine', { machine: machine.machine });
  const full = places.filter(({ hoses }) => hoses.length > 0);
  const { hits } = await ask(url, 'register.search', { words: 'stick rod' });
  const codes = full.map(({ hoses }) => hoses[0].code ?? hoses[0]);
  return {
    machine: machine.machine,
    place: hits[0].at.place,
    hose: codes[0],
    hoses: codes.slice(0, 3),
    wanted: full.slice(0, 4).map(({ place }) => ({ id: `place ${place.place}`, name: place.name, count: 1 })),
  };
}

/** Brings the page to a state. */
export async function go(page, url, { job, at, taps = [], file }, name) {
  if (job !== undefined) {
    const { jobs } = await ask(url, 'job.list', {});
    for (const { job } of jobs) await ask(url, 'job.close', { job });
    if (job) await ask(url, 'job.keep', { job: null, content: job });
    await page.evaluate(() => history.replaceState({ at: 'job' }, ''));
    await page.reload();
    await page.getByRole('navigation').first().waitFor();
  }
  // By way of another screen: what the last state opened is closed.
  for (const screen of at ? [{ at: 'scan', part: 'log' }, at] : []) {
    await page.evaluate((state) => {
      history.pushState(state, '');
      dispatchEvent(new PopStateEvent('popstate', { state }));
      return new Promise((drawn) => requestAnimationFrame(drawn));
    }, screen);
  }
  await still(page);
  for (const tap of taps) {
    const what =
      typeof tap === 'string'
        ? page.getByRole('button', { name: name(tap) })
        : tap.footer
          ? page.getByRole('contentinfo').getByRole('button')
          : page.getByRole('main').getByRole('list').getByRole('button');
    await what.first().click();
    await still(page);
  }
  if (file) {
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: name(file[0]) }).click(),
    ]);
    await chooser.setFiles(file[1]);
    await still(page);
  }
}
