import { afterEach, expect, it, vi } from 'vitest';
import { fake } from '../backend/fake';
import type { LanguageTag } from '../backend/types';
import { spoken } from '../words/language.svelte';
import { say, speak } from '../words/words';
import { App } from './app.svelte';

afterEach(async () => {
  vi.unstubAllGlobals();
  await speak('en');
});

/** The program over a device of that language, where that one was kept before; what is kept of it. */
function device(wanted: string, before: LanguageTag | null): { app: App; kept: () => LanguageTag | null } {
  vi.stubGlobal('navigator', { languages: [wanted] });
  let kept = before;
  const app: App = new App(
    fake({
      'settings.read': () => ({ ...app.settings.now, language: kept, unreadable: [] }),
      'settings.write': (input) => {
        kept = (input as { language: LanguageTag | null }).language;
        return input as object;
      },
    }),
  );
  return { app, kept: () => kept };
}

it('is the one of the device at the first start, and the core is told', async () => {
  const { app, kept } = device('de-CH', null);
  await app.start();
  expect([spoken.tag, kept(), say('verdict-caution')]).toEqual(['de', 'de', 'VORSICHT']);
});

it('is the one that was chosen, whatever the device speaks', async () => {
  const { app, kept } = device('de-CH', 'es');
  await app.start();
  expect([spoken.tag, kept()]).toEqual(['es', 'es']);
  await app.say('en');
  expect([spoken.tag, kept(), say('verdict-caution')]).toEqual(['en', 'en', 'CAUTION']);
});

it('is English where there are no words in that of the device, and nothing is kept of it', async () => {
  const { app, kept } = device('fr', null);
  await app.start();
  expect([spoken.tag, kept()]).toEqual(['en', null]);
});
