import { beforeEach, describe, expect, it } from 'vitest';
import { Theme } from './theme.svelte';

describe('the theme', () => {
  beforeEach(() => {
    localStorage.clear();
    delete document.documentElement.dataset['theme'];
  });

  it('goes into the sun with one tap and back to what it was', () => {
    const theme = new Theme();
    theme.set('dark');
    theme.toggleSun();
    expect(document.documentElement.dataset['theme']).toBe('sun');
    theme.toggleSun();
    expect(document.documentElement.dataset['theme']).toBe('dark');
  });

  it('stands after a restart, and follows the phone until it is set', () => {
    expect(new Theme().name).toBe('auto');
    new Theme().set('sun');
    expect(new Theme().name).toBe('sun');
  });

  it('does not trust what it finds kept', () => {
    localStorage.setItem('hosewright-theme', 'plaid');
    expect(new Theme().name).toBe('auto');
  });
});
