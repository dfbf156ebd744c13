// Writes src/words/ids.ts: the ids of the catalogues the ui speaks from, so that a wrong id does not
// compile. A test holds the file to the catalogues. Then lists what the other languages still lack.
import { writeFileSync } from 'node:fs';
import { differences, files, messages } from './catalogues.mjs';

const ids = files('en')
  .filter(({ file }) => file === 'common.ftl' || file.startsWith('ui-'))
  .flatMap(({ text }) => messages(text).map((message) => message.id))
  .sort();
writeFileSync(
  new URL('../src/words/ids.ts', import.meta.url),
  `// Written by \`npm run words\` from the English catalogues.\nexport const wordIds = [\n${ids.map((id) => `  '${id}',\n`).join('')}] as const;\nexport type WordId = (typeof wordIds)[number];\n`,
);
for (const language of ['de', 'es']) for (const line of differences(language)) console.log(line);
