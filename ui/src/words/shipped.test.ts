import { FluentResource } from '@fluent/bundle';
import { expect, it } from 'vitest';
import { files, messages } from '../../tools/catalogues.mjs';
import { sayingShort, shipped, shortIds } from '../../tools/shipped.mjs';
import { languages } from './language.svelte';

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
].join('\n');

it('only what is said by its id and by nothing else gets a short one', () => {
  const source = [
    "say('hose-title'); say('hose-of', { count }); say('hose-name');",
    "say('hose-is-new'); sayCode(`hose-is-${state}`);",
    "say('hose-handed-on'); const verb: WordId = 'hose-handed-on'; say(`${verb}`);",
  ].join('\n');
  const short = shortIds([source], [catalogue]);
  expect([...short.keys()]).toEqual(['hose-of', 'hose-title']);

  const said = sayingShort(source, short);
  expect(said).toContain(`say('${short.get('hose-title')}'); say('${short.get('hose-of')}', { count })`);
  expect(said).toContain("say('hose-name')");
  expect(messages(shipped(catalogue, short)).map(({ id }) => id)).toEqual([
    short.get('hose-title'),
    short.get('hose-of'),
    'hose-name',
    'hose-is-new',
    'hose-handed-on',
  ]);
});

it('a short id is no id of a catalogue, and none is given twice', () => {
  const all = files('en').flatMap(({ text }) => messages(text).map(({ id }) => id));
  const short = shortIds([all.map((id) => `say('${id}');`).join('\n')], [all.map((id) => `${id} = x`).join('\n')]);
  expect(short.size).toBe(all.length);
  expect(new Set([...short.values(), ...all]).size).toBe(2 * all.length);
});

it.each(languages)('the %s catalogues say the same as they are shipped', (language) => {
  for (const { file, text } of files(language))
    expect(new FluentResource(shipped(text)).body, file).toEqual(new FluentResource(text).body);
});
