// House rules of the drawings and parts, held by a test: tokens only, contrast, no inline styles.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(svelte|css)$/.test(path) && !/^gallery|tokens\.css/.test(path))
  .map((path) => ({ path, text: readFileSync(join('src', path), 'utf8') }));

/** What a file styles: its style block, or all of a stylesheet, without comments and breakpoints. */
function styles(path: string, text: string): string {
  const block = path.endsWith('.css') ? text : (/<style>([\s\S]*)<\/style>/.exec(text)?.[1] ?? '');
  // A breakpoint can not be a custom property.
  return block.replace(/\/\*[\s\S]*?\*\//g, '').replace(/@(media|container)[^{]*/g, '');
}

describe('every part', () => {
  it('gives each picture both its sizes, which not every browser infers from its box', () => {
    const pictures = files.flatMap(({ path, text }) =>
      [...text.matchAll(/<svg\b[^>]*>/g)].map(([tag]) => ({ path, tag, css: styles(path, text) })),
    );
    expect(pictures.length).toBeGreaterThan(15);
    const sizeless = pictures.filter(({ tag, css }) => {
      if (/\bwidth=/.test(tag) && /\bheight=/.test(tag)) return false;
      const own = /class="(\w+)"/.exec(tag)?.[1] ?? /class=\{\['(\w+)'/.exec(tag)?.[1];
      const rules = [...css.matchAll(/([^{}]+)\{([^{}]*)\}/g)]
        .filter(([, selector = '']) => /(^|[\s>])svg\b/.test(selector) || (own && selector.includes(`.${own}`)))
        .map(([, , rule = '']) => rule)
        .join();
      return !(/\bwidth:/.test(rules) && /\b(height|aspect-ratio):/.test(rules));
    });
    expect(sizeless.map(({ path, tag }) => `${path}: ${tag}`)).toEqual([]);
  });
  it('names tokens, never a literal colour or pixel', () => {
    expect(files.length).toBeGreaterThan(30);
    const literals = files.flatMap(({ path, text }) =>
      [
        ...styles(path, text).matchAll(
          /#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|oklch)a?\(|\b\d*\.?\d+px\b|:\s*(?:black|white|red|blue|green)\b/gi,
        ),
      ]
        .filter(
          ([literal]) => !(path === 'base.css' && literal === '1px') && !(path === 'parts.css' && literal === '6px'),
        )
        .map(([literal]) => `${path}: ${literal}`),
    );
    expect(literals).toEqual([]);
  });

  it('has no style attribute in its markup, so the content security policy needs no exception', () => {
    expect(files.filter(({ text }) => /\sstyle="/.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it('has no event handler or script in its markup', () => {
    expect(
      files
        .filter(({ text }) => /\son\w+="/.test(text) || /<script(?![^>]*lang="ts")/.test(text))
        .map(({ path }) => path),
    ).toEqual([]);
  });
});

describe('contrast', () => {
  const css = readFileSync('src/tokens.css', 'utf8');
  const theme = (name: string): Record<string, string> => {
    const block = new RegExp(`\\[data-theme='${name}'\\]\\s*\\{([^}]*)\\}`).exec(css)?.[1] ?? '';
    return Object.fromEntries(
      [...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map((match) => [match[1], match[2]]),
    );
  };
  /** Relative luminance and contrast by WCAG 2.2. */
  const luminance = (hex: string): number => {
    const [r, g, b] = [1, 3, 5].map((at) => {
      const part = parseInt(hex.slice(at, at + 2), 16) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
  };
  const contrast = (a: string, b: string): number => {
    const [x, y] = [luminance(a), luminance(b)].sort((one, other) => other - one);
    return ((x ?? 0) + 0.05) / ((y ?? 0) + 0.05);
  };
  const pairs = [
    ['ink', 'paper'],
    ['ink-2', 'paper'],
    ['ink-2', 'well'],
    ['ink', 'well'],
    ['mark', 'paper'],
    ['on-mark', 'mark'],
    ['mark', 'mark-wash'],
    ['ink', 'mark-wash'],
    ['pass', 'paper'],
    ['pass', 'pass-wash'],
    ['caution', 'paper'],
    ['caution', 'caution-wash'],
    ['stop', 'paper'],
    ['stop', 'stop-wash'],
    ['ink', 'stop-wash'],
    ['ink-2', 'caution-wash'],
    ['ink-2', 'pass-wash'],
    ['ink-2', 'stop-wash'],
  ] as const;

  it.each(['light', 'dark', 'sun'])('of every pair of inks is 7:1 or more: %s', (name) => {
    const tokens = theme(name);
    for (const [ink, ground] of pairs) {
      const [a, b] = [tokens[ink], tokens[ground]];
      if (!a || !b) throw new Error(`${name} has no ${ink} or ${ground}`);
      expect(contrast(a, b), `${ink} on ${ground}`).toBeGreaterThanOrEqual(7);
    }
  });

  it('is the same when the phone’s own dark setting chooses', () => {
    const auto = /:root:not\(\[data-theme\]\)\s*\{([^}]*)\}/.exec(css)?.[1] ?? '';
    const set = /\[data-theme='dark'\]\s*\{([^}]*)\}/.exec(css)?.[1] ?? '';
    const lines = (text: string) =>
      text
        .split('\n')
        .map((line) => line.trim())
        .filter(Boolean);
    expect(lines(auto)).toEqual(lines(set));
  });
});
