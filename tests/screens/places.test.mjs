import test from 'node:test';
import { sound } from './looks.mjs';
import { browse, goTo, open, serve, sizes } from './support.mjs';

test('every place of the bar is sound at every size and in every look', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t)]);
  for (const size of sizes) {
    for (const look of ['light', 'dark', 'sun']) {
      await t.test(`${size.width} × ${size.height}, ${look}`, async (t) => {
        const page = await open(t, browser, url, size);
        await page.evaluate((name) => localStorage.setItem('hosewright-theme', name), look);
        await page.reload();
        for (const place of ['Job', 'Machines', 'Van', 'Due']) {
          await goTo(page, place);
          await page.getByRole('heading', { level: 1 }).waitFor();
          await sound(page, place);
        }
      });
    }
  }
});
