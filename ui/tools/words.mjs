// Writes src/words/ids.ts: the ids of the catalogues the ui speaks from, so that a wrong id does not
// compile. A test holds the file to the catalogues.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';

const english = new URL('../../src-tauri/crates/words/locales/en/', import.meta.url);
const ids = readdirSync(english)
  .filter((file) => file === 'common.ftl' || (file.startsWith('ui-') && file.endsWith('.ftl')))
  .flatMap((file) => [...readFileSync(new URL(file, english), 'utf8').matchAll(/^([a-z][a-z0-9-]*) =/gm)])
  .map((match) => match[1])
  .sort();
writeFileSync(
  new URL('../src/words/ids.ts', import.meta.url),
  `// Written by \`npm run words\` from the English catalogues.\nexport const wordIds = [\n${ids.map((id) => `  '${id}',\n`).join('')}] as const;\nexport type WordId = (typeof wordIds)[number];\n`,
);
