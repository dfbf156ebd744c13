/** `auto` follows the phone (light or dark); the others stand until changed. */
export type ThemeName = 'auto' | 'light' | 'dark' | 'sun';

const KEY = 'hosewright-theme';
const names: readonly string[] = ['auto', 'light', 'dark', 'sun'];

/** How the paper looks on this phone, kept from run to run. Not a record: it stays out of the register. */
export class Theme {
  name = $state<ThemeName>('auto');
  #before: ThemeName = 'auto';

  constructor() {
    const kept = localStorage.getItem(KEY);
    if (kept !== null && names.includes(kept)) this.set(kept as ThemeName);
  }

  set(name: ThemeName): void {
    this.name = name;
    if (name !== 'sun') this.#before = name;
    localStorage.setItem(KEY, name);
    if (name === 'auto') delete document.documentElement.dataset['theme'];
    else document.documentElement.dataset['theme'] = name;
  }

  /** One tap: into the sun, and back to what it was. */
  toggleSun(): void {
    this.set(this.name === 'sun' ? this.#before : 'sun');
  }
}
