// Route: from a check that knows no bend to a bend of the ports, by thumb; it comes back after a kill, and a cure is tried.
import assert from 'node:assert/strict';
import test from 'node:test';
import { typeNumber } from './technician.mjs';
import { sound } from './looks.mjs';
import { ask, browse, demo, keepJob, open, phone, serve, sizes } from './support.mjs';

const { spec, service } = demo('replacement.json');
const straight = {
  ...spec,
  overall_length_mm: 1900,
  ends: spec.ends.map((end) => ({ ...end, form: 'straight', drop_mm: null })),
};
const unbent = { ...service, duties: [], bend_radius_mm: null };
const thumb = (page) => page.getByRole('contentinfo');
/** The job once all that stands on the screen is on the disk. */
async function kept(page, url) {
  await page.getByRole('banner').getByText('Kept', { exact: true }).waitFor();
  return (await ask(url, 'job.list', {})).jobs[0].content;
}

/** A number for the field that is asked. */
async function enter(page, heading, digits) {
  await page.getByRole('heading', { name: heading }).waitFor();
  await typeNumber(page, digits, 'mm');
  await thumb(page).getByRole('button', { name: /^Keep/ }).click();
}

/** The routing of two ports side by side, of which one moves, as the job keeps it. */
const none = {
  gap_mm: null,
  rise_mm: null,
  offset_mm: null,
  angle_deg: null,
  roll_deg: null,
  a_looks_deg: null,
  b_looks_deg: null,
};
const route = (over) => ({
  facing: 'u',
  closed: { ...none, gap_mm: 560 },
  open: null,
  fixed: true,
  ends: {
    A: { points: 'towards', rigid_mm: 75 },
    B: { points: 'towards', rigid_mm: 75 },
  },
  hose_od_mm: null,
  pose: null,
  ...over,
});

test('a bend that nobody checked is worked out from the ports, by thumb, and goes to the check', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  await keepJob(url, { step: 'check', spec: straight, service: unbent });
  const page = await open(t, browser, url, phone);
  const finding = page.getByRole('main').locator('li.finding').filter({ hasText: 'The bend is not checked' }).first();
  await finding.getByRole('button', { name: 'Work out the bend' }).click();
  await page.getByRole('heading', { name: 'How do the ports face?' }).waitFor();
  await sound(page, 'route, how the ports face');
  await page.getByRole('button', { name: 'Side by side' }).click();
  await page.getByRole('heading', { name: 'B from A: across' }).waitFor();
  await sound(page, 'route, a number');
  await enter(page, 'B from A: across', ['5', '6', '0']);
  await page.getByRole('button', { name: /^A port moves/ }).click();
  await enter(page, 'Open: across', ['6', '0', '0']);
  await page.getByRole('heading', { name: 'Open: height' }).waitFor();
  await page.getByRole('button', { name: 'lower' }).click();
  await enter(page, 'Open: height', ['9', '0']);
  // Every figure of the answer rests on what was said, and the worst of the travel goes to the check.
  const use = thumb(page).getByRole('button', { name: /^Use this bend/ });
  await use.waitFor({ timeout: 60_000 });
  const job = await kept(page, url);
  assert.deepEqual(
    [job.route.facing, job.route.closed.gap_mm, job.route.open.gap_mm, job.route.open.rise_mm],
    ['u', 560, 600, -90],
  );
  const answer = await ask(url, 'route.field', {
    spec: job.spec,
    facing: 'u',
    closed: { gap_mm: 560 },
    open: { gap_mm: 600, rise_mm: -90 },
    a: job.route.ends.A,
    b: job.route.ends.B,
  });
  const worst = Math.floor(answer.routed.min_inside_radius_mm);
  assert.match(await use.innerText(), new RegExp(`${worst}\\smm goes to the check`));
  await sound(page, 'route');
  await use.click();
  await page
    .getByRole('group', { name: /service/i })
    .first()
    .waitFor();
  const after = await kept(page, url);
  assert.deepEqual([after.service.bend_radius_mm, after.beside], [worst, null]);
});

test('the slider moves the hose from pose to pose, and what was said comes back after the program was killed', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  const moving = route({
    open: { ...none, gap_mm: 600, rise_mm: 80 },
    fixed: false,
  });
  await keepJob(url, {
    step: 'check',
    beside: 'route',
    spec: straight,
    service: unbent,
    route: moving,
  });
  const first = await open(t, browser, url, phone);
  const slider = first.getByRole('slider', {
    name: 'Travel from closed to open',
  });
  await slider.waitFor({ timeout: 60_000 });
  const side = first.getByRole('img', { name: /^Side view/ });
  await slider.focus();
  await first.keyboard.press('Home');
  const closed = await side.locator('path.centre').getAttribute('d');
  await first.keyboard.press('ArrowRight');
  await first
    .getByText(/^1[23] % open/)
    .first()
    .waitFor();
  assert.notEqual(await side.locator('path.centre').getAttribute('d'), closed, 'the hose follows');
  assert.equal((await kept(first, url)).route.pose, 1);
  // No page of the first run is left: the job alone brings it back.
  await first.context().close();
  const again = await open(t, browser, url, phone);
  await again
    .getByText(/^1[23] % open/)
    .first()
    .waitFor({ timeout: 60_000 });
  assert.equal(await again.getByRole('slider').inputValue(), '1');
});

test('an end is moved on the drawing by finger and by key, and the job knows where it stands', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  await keepJob(url, {
    step: 'check',
    beside: 'route',
    spec: straight,
    service: unbent,
    route: route(),
  });
  const page = await open(t, browser, url, phone);
  const handle = page.getByRole('button', { name: /^Drag end B; arrow keys/ });
  await handle.waitFor({ timeout: 60_000 });
  await handle.focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowUp');
  await page.waitForFunction(() => /565\smm/.test(document.body.innerText));
  const box = await handle.boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 20, y, { steps: 4 });
  await page.mouse.up();
  await thumb(page)
    .getByRole('button', { name: /^Use this bend/ })
    .waitFor({ timeout: 60_000 });
  const { closed } = (await kept(page, url)).route;
  assert.ok(closed.gap_mm > 570 && closed.gap_mm % 5 === 0, `B was dragged to ${closed.gap_mm}`);
  assert.equal(closed.rise_mm, 5);
});

test('too short a hose is said so; the length that was routed is one tap, and taken back with one', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  const short = { ...straight, overall_length_mm: 600 };
  await keepJob(url, {
    step: 'check',
    beside: 'route',
    spec: short,
    service: unbent,
    route: route(),
  });
  const page = await open(t, browser, url, phone);
  const use = thumb(page).getByRole('button', { name: /^Use this length/ });
  await use.waitFor({ timeout: 60_000 });
  assert.equal(await page.getByRole('status').getByText('STOP').count(), 1);
  await sound(page, 'route, too short');
  await use.click();
  await thumb(page)
    .getByRole('button', { name: /^Use this bend/ })
    .waitFor({ timeout: 60_000 });
  const longer = (await kept(page, url)).spec.overall_length_mm;
  assert.ok(longer > 900, `routed ${longer}`);
  await thumb(page).getByRole('button', { name: 'Take it back' }).click();
  await page.waitForFunction(() => document.body.innerText.includes('STOP'));
  assert.equal((await kept(page, url)).spec.overall_length_mm, 600);
});

test('the routing is sound at every size and in every look', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  await keepJob(url, {
    step: 'check',
    beside: 'route',
    spec: straight,
    service: unbent,
    route: route(),
  });
  for (const size of sizes) {
    for (const look of ['light', 'dark', 'sun']) {
      await t.test(`${size.width} × ${size.height}, ${look}`, async (t) => {
        const page = await open(t, browser, url, size);
        await page.evaluate((name) => localStorage.setItem('hosewright-theme', name), look);
        await page.reload();
        await page.getByRole('img', { name: /^Side view/ }).waitFor({ timeout: 60_000 });
        await sound(page, `route, ${look}`);
      });
    }
  }
});
