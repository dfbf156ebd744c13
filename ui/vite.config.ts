import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import { defineConfig } from 'vitest/config';

// The loopback way in, when `hosewright serve` runs beside `npm run dev`.
const serve = process.env['HOSEWRIGHT_SERVE'] ?? 'http://127.0.0.1:4870';

// Only index.html is an entry: the gallery is served by `npm run dev` and never built.
export default defineConfig({
  plugins: [svelte(), svelteTesting()],
  clearScreen: false,
  build: {
    target: ['es2022', 'safari15'],
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
  },
});
