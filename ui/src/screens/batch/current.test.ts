import { expect, it } from 'vitest';
import { fake } from '../../backend/fake';
import type { Draft } from '../../backend/types';
import { App } from '../../state/app.svelte';
import { emptyJob } from '../../state/job-doc';
import { Current } from './current.svelte';
import { ofJob, ofPlace } from './picking';

const spec = { hose: { standard: 'EN 853', type: '2SN', dn: 16 }, ends: [] };
const at = { place: 'p1', number: 4, place_name: 'Boom', machine_name: 'Loader 2' };
const place = (again: object) => ({
  at,
  again: { replaces: null, spec, service: { relief_bar: 230 }, settings: [], why_not: null, ...again },
});

function app(again: object, drafts: Draft[] = []): App {
  const app = new App(fake({ 'register.place': () => place(again) } as never));
  app.drafts = drafts;
  return app;
}
const wanted = (id: string) => [{ id, name: 'As it was called', count: 2 }];

it('asks a place anew whenever it is looked at: a relief raised since then counts', async () => {
  const current = new Current(app({}));
  await current.ask(wanted(ofPlace('p1' as never)));
  expect(current.asked).toMatchObject([
    { name: 'Loader 2 · 4 · Boom', count: 2, make: { question: { service: { relief_bar: 230 } } } },
  ]);
});

it('leaves out what is not made without a look at the place, and says why', async () => {
  const current = new Current(app({ why_not: '2 hoses failed here.' }));
  await current.ask(wanted(ofPlace('p1' as never)));
  expect(current.asked).toEqual([]);
  expect(current.hoses).toMatchObject([{ not: '2 hoses failed here.' }]);
});

it('knows a hose that is made by its code, and a job that is gone by its name', async () => {
  const content = { ...emptyJob(), spec, code: '7KQ4M-2XR9D-D', written: { made: 'd/1', taken: true, fitted: null } };
  const current = new Current(app({}, [{ job: 'j1', kept: '', content } as unknown as Draft]));
  await current.ask([...wanted(ofJob('j1')), ...wanted(ofJob('j2'))]);
  expect(current.made).toEqual(['7KQ4M-2XR9D-D']);
  expect(current.hoses?.[1]).toMatchObject({
    name: 'As it was called',
    not: expect.stringMatching(/done or was given up/),
  });
  expect(current.asked).toEqual([]);
});
