// Photographs of labels, made in the browser: a label lies askew on a grey ground, whole or damaged.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { demo, hosewright } from './support.mjs';

/** A label of the demo's replacement under that code, or a new one; its picture file and its code. */
export function label(folder, code) {
  const question = join(folder, `${code ?? 'new'}.json`);
  const picture = join(folder, `${code ?? 'new'}.png`);
  writeFileSync(question, JSON.stringify({ ...demo('replacement.json'), ...(code && { code }) }));
  const made = JSON.parse(hosewright('tag', 'make', question, '--out', picture, '--json'));
  return { picture, code: made.tag.code };
}

/** The label of a hose on record, under the code it has. */
export function labelAgain(folder, db, code) {
  const picture = join(folder, `${code}.png`);
  hosewright('tag', 'again', code, '--db', db, '--out', picture);
  return { picture, code };
}

/** A photograph of labels, each with its place and width in pixels; `over` is laid over them. */
export async function photograph(browser, out, labels, over = '') {
  const page = await browser.newPage({ viewport: { width: 1280, height: 960 } });
  const shown = labels.map(
    ({ picture, x, y, width }) =>
      `<img src="data:image/png;base64,${readFileSync(picture, 'base64')}" style="left:${x}px;top:${y}px;width:${width}px">`,
  );
  await page.setContent(
    `<style>body{background:#99a}*{margin:0;position:absolute}img{transform:rotate(5deg)}</style>${shown.join('')}${over}`,
  );
  await page.screenshot({ path: out, type: 'jpeg', quality: 80 });
  await page.close();
  return out;
}

/** Grease over the code and one of its eyes. */
export const GREASE =
  '<i style="left:280px;top:250px;width:170px;height:300px;background:#777"></i><i style="left:150px;top:130px;width:140px;height:140px;background:#555"></i>';
