import test from 'node:test';
import { sound } from './looks.mjs';
import { browse, open, serve, sizes } from './support.mjs';

test('an empty register shows three ways in, at every size', async (t) => {
  const [browser, { url }] = await Promise.all([browse(t), serve(t, { empty: true })]);
  for (const size of sizes) {
    const page = await open(t, browser, url, size);
    for (const way of [/Scan or type the tag/, /Read the print/, /Measure/]) {
      await page.getByRole('button', { name: way }).waitFor();
    }
    await sound(page, 'first run');
  }
});
