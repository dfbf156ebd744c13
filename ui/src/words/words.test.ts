import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { FluentResource } from '@fluent/bundle';
import { afterEach, describe, expect, it } from 'vitest';
import { files, messages as read } from '../../tools/catalogues.mjs';
import { wordIds } from './ids';
import { languages, spoken } from './language.svelte';
import { say, sayCode, speak } from './words';
import { angle, decimalSign, fixed, inches, length, number, percent, pressure, psi, quantity, signed } from './number';

const ours = (file: string) => file === 'common.ftl' || file.startsWith('ui-');
const messages = (text: string) => read(text).map((message) => message.id);
const catalogueFiles = languages.flatMap((language) => files(language).map((file) => ({ language, ...file })));

function sources(folder: string): [path: string, text: string][] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.(svelte|ts)$/.test(path) && !path.includes('.test.') && !path.startsWith('gallery'))
    .map((path) => [path, readFileSync(join(folder, path), 'utf8')]);
}

describe('the catalogues', () => {
  it('are read whole: no message is dropped in silence', () => {
    expect(catalogueFiles.map((it) => it.file)).toContain('ui-parts.ftl');
    for (const { language, file, text } of catalogueFiles) {
      const read = new FluentResource(text).body.map((message) => message.id);
      expect(read, `${language}/${file}`).toEqual(messages(text));
    }
  });

  it('say each thing once: two files of a language share no id', () => {
    for (const language of languages) {
      const ids = catalogueFiles.filter((it) => it.language === language).flatMap((it) => messages(it.text));
      expect(
        ids.filter((id, index) => ids.indexOf(id) !== index),
        language,
      ).toEqual([]);
    }
  });

  it('have every id that the ui names', () => {
    const known = new Set(catalogueFiles.filter((it) => it.language === 'en').flatMap((it) => messages(it.text)));
    const missing = sources('src').flatMap(([path, text]) =>
      [...text.matchAll(/\bsay(?:Code)?\(\s*'([^']+)'/g)]
        .map((match) => match[1] ?? '')
        .filter((id) => !known.has(id))
        .map((id) => `${path}: ${id}`),
    );
    expect(missing).toEqual([]);
  });

  it('have no id of the ui that nothing says', () => {
    const said = new Set(
      sources('src')
        .filter(([path]) => path !== 'words/ids.ts')
        .flatMap(([, text]) => text.match(/'[\w-]+'/g) ?? []),
    );
    // Ids whose last part is a code are said by their stem.
    const stems =
      /^(basis|unit|step|place|make-tick|make-by-sheet|find-key|find-do|find-how|find-tool|find-is|find-sign|find-leaves|find-apart|due-view|due-ages|due-drawing|due-within|due-policy|due-life-by|due-life-load|list-asks|list-column|list-days|list-filter|list-is|due-by|due-stake|due-hours|due-export|hoses-state|hoses-is|hoses-due-of|policies-what|policies-scope|policies-limit|policies-effect|demand|signs-group|survey-found|affected-table|machines-hours|machines-reason|machines-start|members-as|members-standing|hose-grade|flowing-regime|van-column|visits-within)-/;
    const idle = catalogueFiles
      .filter((it) => it.language === 'en' && it.file.startsWith('ui-'))
      .flatMap((it) => messages(it.text))
      .filter((id) => !stems.test(id) && !said.has(`'${id}'`));
    expect(idle).toEqual([]);
  });

  it('are listed in ids.ts: run `npm run words` after a change', () => {
    const english = catalogueFiles.filter((it) => it.language === 'en' && ours(it.file));
    expect(wordIds).toEqual(english.flatMap((it) => messages(it.text)).sort());
  });
});

describe('words', () => {
  it('take their values', () => {
    expect(say('lookalike-title', { name: 'BSPP 5/8' })).toBe('Look-alike: BSPP 5/8');
    expect(say('verdict-stop')).toBe('STOP');
  });

  it('are said in the language that is spoken', async () => {
    await speak('de');
    expect([say('verdict-stop'), document.documentElement.lang]).toEqual(['STOPP', 'de']);
    expect(say('due-in-days', { days: 1, shown: '1' })).toBe('in 1 Tag');
    expect(say('due-in-days', { days: 2, shown: '2' })).toBe('in 2 Tagen');
    await speak('en');
    expect(say('verdict-stop')).toBe('STOP');
  });

  it('are null for a code that has none', () => {
    expect(sayCode('no-such-words')).toBeNull();
  });
});

describe('numbers', () => {
  afterEach(() => {
    spoken.tag = 'en';
  });

  it('are written short and true, as the Rust side writes them', () => {
    expect(number(20.6, 2)).toBe('20.6');
    expect(number(-3, 1)).toBe('\u22123');
    expect(number(-0.01, 1)).toBe('0');
    expect(number(12345.6, 1), 'no grouping: 1 240 reads as two numbers').toBe('12345.6');
    expect(fixed(30.5, 2)).toBe('30.50');
    expect(signed(12, 0)).toBe('+12');
    expect(signed(-4, 0)).toBe('\u22124');
    expect(signed(0.04, 1)).toBe('0');
    expect(length(1240, 0)).toBe('1240\u00a0mm');
    expect(angle(74)).toBe('74°');
  });

  it('put psi beside bar as the trade prints it', () => {
    expect(pressure(206.8)).toBe('207\u00a0bar (3000\u00a0psi)');
    expect(pressure(413.7, 'psi')).toBe('6000\u00a0psi (414\u00a0bar)');
    expect(pressure(5)).toBe('5\u00a0bar (73\u00a0psi)');
    // The same cases stand in the Rust words: both sides write the same.
    for (const [bar, step] of [
      [35, 500],
      [137, 2000],
      [206, 3000],
      [207, 3000],
      [344, 5000],
      [413, 6000],
      [208, 3020],
      [210, 3050],
    ])
      expect(psi(bar ?? 0), `${bar} bar`).toBe(String(step));
  });

  it('take as many decimals as their unit is read to', () => {
    expect([quantity(206.8, 'bar'), quantity(20.64, 'mm'), quantity(88.4, 'C'), quantity(7.62, 'm/s')]).toEqual([
      '207\u00a0bar (3000\u00a0psi)',
      '20.6\u00a0mm',
      '88\u00a0°C',
      '7.6\u00a0m/s',
    ]);
    expect(quantity(22.5, 'deg')).toBe('22.5°');
    expect(quantity(1.234, '')).toBe('1.23');
  });

  it('write inches as the nearest fraction in lowest terms', () => {
    expect(inches(20.6375)).toBe('13/16');
    expect(inches(26.9875)).toBe('1 1/16');
    expect(inches(25.4)).toBe('1');
    expect(inches(25.39)).toBe('1');
    expect(inches(-12.7)).toBe('\u22121/2');
    expect(inches(0)).toBe('0');
  });

  it('never round a doubt away', () => {
    expect([0.9996, 0.004, 0.6, 1, 0].map(percent)).toEqual([
      '>99\u00a0%',
      '<1\u00a0%',
      '60\u00a0%',
      '100\u00a0%',
      '0\u00a0%',
    ]);
  });

  it('take the decimal sign of the language', () => {
    expect(decimalSign()).toBe('.');
    spoken.tag = 'de';
    expect(decimalSign()).toBe(',');
    expect(number(20.64, 2)).toBe('20,64');
  });
});
