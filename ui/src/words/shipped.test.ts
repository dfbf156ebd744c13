import { FluentResource } from '@fluent/bundle';
import { expect, it } from 'vitest';
import { files, messages } from '../../tools/catalogues.mjs';
import { sayingShort, shipped, shortIds } from '../../tools/shipped.mjs';
import { languages } from './language.svelte';
import { named } from './words';

const catalogue = [
  '# A note.',
  'hose-title = A hose',
  'hose-of = { $count ->',
  '    [one] { hose-name } here',
  '   *[other] { $count } hoses',
  '}',
  'hose-name = hose',
  'hose-is-new = new',
  'hose-handed-on = yes',
  'hose-code = Code',
].join('\n');

it('only what is named whole and by nothing else gets a short id', () => {
  const source = [
    "say('hose-title'); say(many ? 'hose-of' : 'hose-handed-on', { count }); say('hose-name');",
    "say('hose-is-new'); sayCode(`hose-is-${state}`);",
    'type Code = "hose-code"; say(\'hose-code\');',
  ].join('\n');
  const short = shortIds([source], [catalogue]);
  expect([...short]).toEqual([
    ['hose-title', 'w0'],
    ['hose-of', 'w1'],
    ['hose-handed-on', 'w2'],
  ]);

  const said = sayingShort(source, short);
  expect(said).toContain("say.w0; say(many ? 'w1' : 'w2', { count }); say('hose-name');");
  expect(said).toContain("say('hose-is-new')");
  expect(said).toContain("say('hose-code')");
});

const english = files('en').filter(({ file }) => file.startsWith('ui-'));
const every = english.flatMap(({ text }) => messages(text).map(({ id }) => id));

it.each(languages)('the %s words are found under the short ids, which are not shipped', (language) => {
  const short = shortIds(
    [every.map((id) => `say('${id}');`).join('\n')],
    english.map(({ text }) => text),
  );
  expect(short.size).toBeGreaterThan(2000);
  const source = files(language).filter(({ file }) => file.startsWith('ui-'));
  const texts = source.map(({ text }) => shipped(text, short));
  expect(texts.join('')).not.toMatch(/^w\w+=/m);

  const bodies = (text: string) => new Map(new FluentResource(text).body.map(({ id, value }) => [id, value]));
  const found = bodies(named(texts));
  const written = bodies(source.map(({ text }) => text).join('\n'));
  expect(found.size).toBe(written.size);
  for (const [id, value] of written) expect(found.get(short.get(id) ?? id), id).toEqual(value);
});

it.each(languages)('the %s catalogues are read in the order in which their words were counted', async (language) => {
  const { default: texts } = (await import(`./catalogues/${language}.ts`)) as { default: Record<string, string> };
  const read = Object.keys(texts).map((path) => path.split('/').at(-1));
  expect(read.filter((file) => file?.startsWith('ui-'))).toEqual(english.map(({ file }) => file));
});

it.each(languages)('the %s catalogues say the same as they are shipped', (language) => {
  for (const { file, text } of files(language))
    expect(new FluentResource(shipped(text)).body, file).toEqual(new FluentResource(text).body);
});
