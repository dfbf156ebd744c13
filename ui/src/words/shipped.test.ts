import { FluentResource } from '@fluent/bundle';
import { expect, it } from 'vitest';
import { files, messages } from '../../tools/catalogues.mjs';
import { sayingShort, shipped, shortIds, spoken } from '../../tools/shipped.mjs';
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

it.each(languages)('the %s words are found under the short ids, which are not shipped', (language) => {
  const together = (tag: string) =>
    spoken(tag)
      .map(({ text }) => text)
      .join('\n');
  const english = together('en');
  const short = shortIds(
    [
      messages(english)
        .map(({ id }) => `say('${id}');`)
        .join('\n'),
    ],
    [english],
  );
  expect(short.size).toBeGreaterThan(2000);
  const sent = shipped(together(language), short);
  expect(sent).not.toMatch(/^w\w+=/m);

  const bodies = (text: string) => new Map(new FluentResource(text).body.map(({ id, value }) => [id, value]));
  const found = bodies(named(sent));
  const written = bodies(together(language));
  expect(found.size).toBe(written.size);
  for (const [id, value] of written) expect(found.get(short.get(id) ?? id), id).toEqual(value);
});

it.each(languages)('the %s catalogues say the same as they are shipped', (language) => {
  for (const { file, text } of files(language))
    expect(new FluentResource(shipped(text)).body, file).toEqual(new FluentResource(text).body);
});
