import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { sayingShort, shipped, shortIds, spoken } from './tools/shipped.mjs';

// The loopback way in, when `hosewright serve` runs beside `npm run dev`.
const serve = process.env['HOSEWRIGHT_SERVE'] ?? 'http://127.0.0.1:4870';

/** Every source that may say a word. */
const sources = () =>
  readdirSync(new URL('src', import.meta.url), { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.(svelte|ts)$/.test(path) && !/\.test\.|^gallery|^words\/ids/.test(path))
    .map((path) => readFileSync(new URL(`src/${path}`, import.meta.url), 'utf8'));

/** Words as they are shipped, a language a module: a build has short ids besides. */
function words(): Plugin {
  let short = new Map<string, string>();
  return {
    name: 'words',
    enforce: 'pre',
    configResolved({ command }) {
      if (command === 'build')
        short = shortIds(
          sources(),
          spoken('en').map(({ text }) => text),
        );
    },
    resolveId: (id) => (id.startsWith('virtual:words/') ? `\0${id}` : null),
    load(id) {
      const language = /^\0virtual:words\/(\w+)$/.exec(id)?.[1];
      if (!language) return null;
      const catalogues = spoken(language);
      for (const { path } of catalogues) this.addWatchFile(path);
      return `export default ${JSON.stringify(shipped(catalogues.map(({ text }) => text).join('\n'), short))}`;
    },
    transform: (code, id) => (/\/ui\/src\/.*\.(svelte|ts)$/.test(id) ? sayingShort(code, short) : null),
  };
}

/** No server draws these screens first, so what takes such drawings over need not be shipped. */
const neverHydrating: Plugin = {
  name: 'never-hydrating',
  apply: 'build',
  transform(code, id) {
    if (!id.endsWith('/svelte/src/internal/client/dom/hydration.js')) return null;
    const [flag, set] = ['export let hydrating = false', 'hydrating = value;'];
    if (!code.includes(flag) || !code.includes(set)) this.error('svelte says otherwise now whether it is hydrating');
    return code.replace(flag, 'export const hydrating = false').replace(set, '');
  },
};

// Only index.html is an entry: the gallery is served by `npm run dev` and never built.
export default defineConfig({
  plugins: [words(), neverHydrating, svelte(), svelteTesting()],
  clearScreen: false,
  build: {
    // The oldest that has what the screens use anyway: container queries, toSorted.
    target: ['es2022', 'safari16'],
    // Nothing is inlined as a data: URL, so the content security policy needs no exception.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: {
    host: '127.0.0.1',
    port: 5173,
    strictPort: true,
    // The words stand beside the Rust crate that shares them.
    fs: { allow: [fileURLToPath(new URL('..', import.meta.url))] },
    // It answers its own page only, so the proxy speaks as that page.
    proxy: { '/api': { target: serve, changeOrigin: true, headers: { origin: serve } } },
  },
  test: {
    environment: 'happy-dom',
    include: ['src/**/*.test.ts'],
    setupFiles: ['src/words/spoken-in-tests.ts'],
    // A machine that does other things is slower than the default allows for.
    testTimeout: 30_000,
  },
});
