import { afterEach, beforeEach, expect, it } from 'vitest';
import { followLinks } from './link';
import { Nav } from './nav.svelte';

let nav: Nav;
let stop: () => void = () => {};

beforeEach(() => {
  history.replaceState(null, '', '#');
  nav = new Nav();
});
afterEach(() => stop());

it('opens the code that the program was opened with, and leaves nothing in the address', () => {
  history.replaceState(history.state, '', '#tag=FTYKH-7MAXC-5');
  stop = followLinks(nav);
  expect(nav.screen).toEqual({ at: 'scan', typed: 'FTYKH-7MAXC-5' });
  expect(location.hash).toBe('');
});

it('opens one that comes later, and the way back leads to where the person was', () => {
  stop = followLinks(nav);
  nav.go({ at: 'due' });
  history.replaceState(history.state, '', '#tag=ftykh7maxc5');
  dispatchEvent(new Event('hashchange'));
  expect(nav.screen).toEqual({ at: 'scan', typed: 'ftykh7maxc5' });
  expect(history.state).toEqual(nav.screen);
});

it('lets every other address be', () => {
  stop = followLinks(nav);
  for (const hash of ['#token=secret', '#tag=', '#tag=a%20b', '#x']) {
    history.replaceState(history.state, '', hash);
    dispatchEvent(new Event('hashchange'));
    expect(nav.screen, hash).toEqual({ at: 'job' });
  }
});
