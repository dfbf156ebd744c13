// What a screen must hold whoever looks at it: nothing for axe, targets for a glove, nothing cut or wider than the screen,
// words that stand out in the sun. Everything is asked of the page as it is drawn.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const require = createRequire(fileURLToPath(new URL('../../ui/', import.meta.url)));
const axeCore = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');

/** WCAG 2.2 up to AA, and what axe's makers found to be good practice. */
export const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds on the page: a line for each rule; `rules` alone where they are named. */
export async function violations(page, rules = null) {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeCore);
  return page.evaluate(
    async ([tags, rules]) => {
      const runOnly = rules ? { type: 'rule', values: rules } : { type: 'tag', values: tags };
      const { violations } = await window.axe.run(document, { runOnly, resultTypes: ['violations'] });
      return violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes.map((node) => node.target.join(' '))}`);
    },
    [RULES, rules],
  );
}

/** What is shown now is sound: nothing for axe, nothing wider than the screen. */
export async function sound(page, where) {
  const { width } = page.viewportSize();
  assert.deepEqual(await violations(page), [], `axe at ${where}, ${width} px wide`);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  assert.ok(over <= 0, `${where} is ${over} px wider than its ${width} px`);
}

/** The smallest target in px: that of a gloved thumb. */
const TARGET = 48;

/** What the hand and the eye would stumble over, a line for each. */
export const stumbles = (page, { targets = true } = {}) => page.evaluate(look, { target: targets ? TARGET : 0 });

/** Runs in the page. */
function look({ target }) {
  const found = new Set();
  const named = (node) => {
    const said = (node.getAttribute('aria-label') ?? node.textContent ?? '').replace(/\s+/g, ' ').trim().slice(0, 40);
    return `${node.tagName.toLowerCase()}${node.className?.baseVal ?? node.className ? `.${String(node.className?.baseVal ?? node.className).split(' ')[0]}` : ''} “${said}”`;
  };
  const shown = (node) => node.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && !node.closest('.sr');
  const hidden = (overflow) => overflow === 'hidden' || overflow === 'clip';

  const over = document.documentElement.scrollWidth - document.documentElement.clientWidth;
  if (over > 0) found.add(`the page is ${over} px wider than the screen`);

  for (const node of document.querySelectorAll('button, a[href], input, select, textarea, [role=button], [tabindex="0"]')) {
    if (!shown(node) || node.matches('input[type=file], [role=grid]')) continue;
    const box = (node.closest('label') ?? node).getBoundingClientRect();
    if (box.width === 0) continue;
    // Half a pixel is how layout rounds.
    if (Math.min(box.width, box.height) < target - 0.5)
      found.add(`${named(node)} is ${box.width.toFixed(0)} x ${box.height.toFixed(0)} px, a thumb needs ${target}`);
    const hint = node.getAttribute('placeholder');
    if (hint && !node.value) {
      const style = getComputedStyle(node);
      const pen = document.createElement('canvas').getContext('2d');
      pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      pen.fontStretch = 'condensed';
      const room = node.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
      if (pen.measureText(hint).width > room + 1) found.add(`the hint “${hint}” is cut`);
    }
  }

  for (const node of document.querySelectorAll('body *')) {
    const style = getComputedStyle(node);
    if (node.closest('svg') || !shown(node)) continue;
    if (hidden(style.overflowX) && node.scrollWidth > node.clientWidth + 1 && node.textContent.trim())
      found.add(`${named(node)} is cut by ${node.scrollWidth - node.clientWidth} px at its side`);
    if (hidden(style.overflowY) && node.scrollHeight > node.clientHeight + 1 && node.textContent.trim())
      found.add(`${named(node)} is cut by ${node.scrollHeight - node.clientHeight} px below`);
  }

  // Words that leave the key or the screen they stand on.
  const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let text = words.nextNode(); text; text = words.nextNode()) {
    const node = text.parentElement;
    if (!text.data.trim() || !node || node.closest('svg, script, style, .sr') || !shown(node)) continue;
    const range = document.createRange();
    range.selectNodeContents(text);
    const box = range.getBoundingClientRect();
    if (box.width === 0) continue;
    const scrolled = (() => {
      for (let up = node; up; up = up.parentElement) if (/auto|scroll/.test(getComputedStyle(up).overflowX) && up.scrollWidth > up.clientWidth) return true;
      return false;
    })();
    if (!scrolled && (box.left < -1 || box.right > innerWidth + 1)) found.add(`“${text.data.trim()}” leaves the screen`);
    const key = node.closest('button, a, [role=gridcell], [role=columnheader]')?.getBoundingClientRect();
    // A line is higher than its letters are.
    const lead = 1 + 0.2 * parseFloat(getComputedStyle(node).fontSize);
    const out = key && Math.max(key.left - box.left - 1, box.right - key.right - 1, key.top - box.top - lead, box.bottom - key.bottom - lead);
    if (out > 0)
      found.add(`“${text.data.trim()}” leaves its key`);
  }
  return [...found];
}

/** Words that stand out less than so many times from what is behind them, a line for each. */
export const faint = (page, least) => page.evaluate(contrast, least);

/** Runs in the page. */
function contrast(least) {
  const found = new Set();
  const parsed = (css) => (css.match(/[\d.]+/g) ?? []).map(Number);
  const light = ([r, g, b]) => {
    const [x, y, z] = [r, g, b].map((c) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4));
    return 0.2126 * x + 0.7152 * y + 0.0722 * z;
  };
  const behind = (node) => {
    for (let up = node; up; up = up.parentElement) {
      const [r, g, b, a = 1] = parsed(getComputedStyle(up).backgroundColor);
      if (a === 1) return [r, g, b];
    }
    return [255, 255, 255];
  };
  const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let text = words.nextNode(); text; text = words.nextNode()) {
    const node = text.parentElement;
    if (!text.data.trim() || !node || node.closest('svg, script, style, .sr, [disabled], [aria-disabled=true]')) continue;
    if (!node.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
    const [one, other] = [light(parsed(getComputedStyle(node).color)), light(behind(node))];
    const times = (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    if (times < least) found.add(`“${text.data.trim().slice(0, 40)}” stands out ${times.toFixed(1)} times, not ${least}`);
  }
  return [...found];
}
