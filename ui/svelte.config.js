import { readdirSync } from 'node:fs';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';

// A component's styles are its own by its place among all: a hash of its path would be longer, a thousand times over. No
// class that is written begins as these do: one that was shared, such as `sr`, would come upon a component by chance.
const components = readdirSync(new URL('src', import.meta.url), { recursive: true }).sort();

export default {
  preprocess: vitePreprocess(),
  compilerOptions: {
    runes: true,
    cssHash: ({ hash, css, filename }) => {
      const place = components.findIndex((path) => filename.endsWith(`src/${path}`));
      return place < 0 ? `_${hash(css)}` : `_${place.toString(36)}`;
    },
  },
};
