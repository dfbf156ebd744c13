import { expect, it } from 'vitest';
import { fake } from '../backend/fake';
import { Settings } from './settings.svelte';

it('names what can not be read until that very setting is set anew', async () => {
  let kept = {};
  const settings: Settings = new Settings(
    fake({
      'settings.read': () => ({ ...settings.now, pressure_unit: 'psi', unreadable: ['caliper_error_mm', 'of-later'] }),
      'settings.write': (input) => (kept = input as object),
    }),
  );
  await settings.load();
  expect([settings.now.pressure_unit, settings.unreadable]).toEqual(['psi', ['caliper_error_mm']]);
  await settings.change({ paper: 'letter' });
  expect([settings.now.paper, settings.unreadable]).toEqual(['letter', ['caliper_error_mm']]);
  expect(kept).not.toHaveProperty('unreadable');
  await settings.change({ caliper_error_mm: 0.05 });
  expect([settings.now.caliper_error_mm, settings.unreadable]).toEqual([0.05, []]);
});
