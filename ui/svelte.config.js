import { readdirSync } from 'node:fs';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';

// A component's styles are its own by its place among all: a hash of its path would be longer, a thousand times over.
// The underscore stands in no class that a person names: `s` and a number once was `sr`, which hides what it stands on.
const components = readdirSync(new URL('src', import.meta.url), { recursive: true }).sort();

export default {
  preprocess: vitePreprocess(),
  compilerOptions: {
    runes: true,
    cssHash: ({ hash, css, filename }) => {
      const place = components.findIndex((path) => filename.endsWith(`src/${path}`));
      return place < 0 ? `s-${hash(css)}` : `_${place.toString(36)}`;
    },
  },
};
