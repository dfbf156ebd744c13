// Oil: from the flow of a check to the speed, the size that would do and the surge, which goes to the check as an estimate.
import assert from 'node:assert/strict';
import test from 'node:test';
import { typeNumber } from './technician.mjs';
import { sound } from './looks.mjs';
import { ask, browse, demo, keepJob, open, phone, serve, sizes } from './support.mjs';

const { spec, service } = demo('replacement.json');
const thumb = (page) => page.getByRole('contentinfo');
/** The job once all that stands on the screen is on the disk. */
async function kept(page, url) {
  await page.getByRole('banner').getByText('Kept', { exact: true }).waitFor();
  return (await ask(url, 'job.list', {})).jobs[0].content;
}
const withFlow = (flow_l_min, over = {}) => ({
  ...service,
  duties: [],
  flow_l_min,
  ...over,
});

test('a flow that is too fast leads to the size that passed the check, with a way back', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  await keepJob(url, { step: 'check', spec, service: withFlow(150, { bend_radius_mm: 320 }) });
  const page = await open(t, browser, url, phone);
  const finding = page.getByRole('main').locator('li.finding').filter({ hasText: 'Flow speed' }).first();
  await finding.getByRole('button', { name: 'See what the oil does' }).click();
  await page.getByRole('img', { name: /^The bore cut open/ }).waitFor();
  const asked = {
    spec,
    service: withFlow(150, { bend_radius_mm: 320 }),
    elbows: [{ angle_deg: 45 }, { angle_deg: 90 }],
  };
  const answer = await ask(url, 'oil', asked);
  const runs = (speed) => page.getByRole('img', { name: `the oil runs at ${speed.toFixed(1)}` }).waitFor();
  await runs(answer.warm.velocity_m_s);
  assert.ok(answer.warm.velocity_m_s > answer.usual.high_m_s, 'the demo bore is too small for it');
  await sound(page, 'oil, too fast');
  const wider = answer.sizes.find(({ verdict }) => verdict !== 'stop');
  await thumb(page)
    .getByRole('button', { name: `Take 2SN DN${wider.dn}` })
    .click();
  await runs(wider.velocity_m_s);
  assert.equal((await kept(page, url)).spec.hose.dn, wider.dn);
  await thumb(page).getByRole('button', { name: 'Take it back' }).click();
  await runs(answer.warm.velocity_m_s);
  assert.equal((await kept(page, url)).spec.hose.dn, 16);
});

test('a surge is estimated from how fast the valve shuts, and goes to the check as an estimate', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  await keepJob(url, {
    step: 'check',
    beside: 'oil',
    spec,
    service: withFlow(60, { surge_pressure_bar: null }),
  });
  const page = await open(t, browser, url, phone);
  const sudden = await ask(url, 'oil', {
    spec,
    service: withFlow(60),
    elbows: [{ angle_deg: 45 }, { angle_deg: 90 }],
  });
  const use = thumb(page).getByRole('button', { name: /^Use this surge/ });
  await use.waitFor();
  assert.match(await use.innerText(), new RegExp(`${Math.ceil(sudden.surge.peak_bar)}\\sbar`));
  // A slow valve makes less of it, and half a number survives the page.
  await page.getByRole('button', { name: /^valve shuts in/ }).click();
  await typeNumber(page, ['2', '0']);
  await page.waitForTimeout(300);
  await page.reload();
  await page.getByRole('heading', { name: 'valve shuts in' }).waitFor();
  await sound(page, 'oil, a number');
  await thumb(page).getByRole('button', { name: /^Keep/ }).click();
  const slow = await ask(url, 'oil', {
    spec,
    service: withFlow(60),
    elbows: [{ angle_deg: 45 }, { angle_deg: 90 }],
    closure_time_s: 0.02,
  });
  const peak = Math.ceil(slow.surge.peak_bar);
  assert.ok(peak < sudden.surge.peak_bar);
  await page.waitForFunction((text) => document.querySelector('footer')?.innerText.includes(text), `${peak}`);
  await use.click();
  await page
    .getByRole('button', { name: /^surge/ })
    .first()
    .waitFor();
  const job = await kept(page, url);
  assert.deepEqual([job.service.surge_pressure_bar, job.service.estimated.surge_pressure_bar, job.beside], [peak, peak, null]);
  assert.match(
    await page
      .getByRole('button', { name: /^surge/ })
      .first()
      .innerText(),
    new RegExp(`${peak}\\sbar est\\.`),
  );
});

test('a peak that is too high stands at the head, whatever the speed', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  /** What the speed comes to at a working pressure, and what the check says of the parts under the peak. */
  const judged = async (working_pressure_bar) => {
    const line = withFlow(60, { working_pressure_bar, relief_bar: null, surge_pressure_bar: null });
    const elbows = [{ angle_deg: 45 }, { angle_deg: 90 }];
    const { surge, verdict } = await ask(url, 'oil', { spec, service: line, elbows });
    const peak = Math.ceil(surge.peak_bar);
    const { findings } = await ask(url, 'check', { spec, service: { ...line, surge_pressure_bar: peak } });
    return { line, speed: verdict, peak, parts: findings.filter(({ rule }) => rule === 'pressure') };
  };
  const [borne, over] = [await judged(100), await judged(240)];
  assert.deepEqual([borne.speed, over.speed], ['pass', 'pass'], 'the speed alone is as usual');
  assert.ok(borne.parts.every(({ verdict }) => verdict === 'pass'), 'all parts bear the lower peak');
  const stop = over.parts.find(({ verdict }) => verdict === 'stop');
  await keepJob(url, { step: 'check', beside: 'oil', spec, service: borne.line });
  const page = await open(t, browser, url, phone);
  const head = page.getByRole('status').first();
  // Nobody measured that peak: it is no pass.
  await head.getByText('CAUTION', { exact: true }).waitFor();
  assert.match(await head.innerText(), /was worked out/);
  await page.getByRole('button', { name: /^working/ }).click();
  await typeNumber(page, [...'240']);
  await thumb(page).getByRole('button', { name: /^Keep/ }).click();
  await head.getByText('STOP', { exact: true }).waitFor();
  const said = await head.innerText();
  assert.ok(said.includes(stop.why) && said.includes(`${over.peak}`), said);
  await sound(page, 'oil, the peak too high');
});

test('without a flow nothing is made up: it is asked for', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  await keepJob(url, {
    step: 'check',
    beside: 'oil',
    spec,
    service: withFlow(null),
  });
  const page = await open(t, browser, url, phone, { refused: ['oil'] });
  await page.getByText('NOT RECKONED').waitFor();
  assert.equal(await page.getByRole('img', { name: /^The bore cut open/ }).count(), 0);
  await thumb(page).getByRole('button', { name: 'Enter: flow' }).click();
  await typeNumber(page, ['6', '0']);
  await thumb(page).getByRole('button', { name: /^Keep/ }).click();
  await page.getByRole('img', { name: /^The bore cut open/ }).waitFor();
  assert.equal((await kept(page, url)).service.flow_l_min, 60);
});

test('the oil is sound at every size and in every look', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  await keepJob(url, {
    step: 'check',
    beside: 'oil',
    spec,
    service: withFlow(150, { bend_radius_mm: 320 }),
  });
  for (const size of sizes) {
    for (const look of ['light', 'dark', 'sun']) {
      await t.test(`${size.width} × ${size.height}, ${look}`, async (t) => {
        const page = await open(t, browser, url, size);
        await page.evaluate((name) => localStorage.setItem('hosewright-theme', name), look);
        await page.reload();
        await page.getByRole('img', { name: /^The bore cut open/ }).waitFor();
        await sound(page, `oil, ${look}`);
      });
    }
  }
});
