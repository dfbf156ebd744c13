import { afterEach, describe, expect, it } from 'vitest';
import { MM_PER_INCH } from '../words/number';
import { spoken } from '../words/language.svelte';
import { Keypad, type Draft, type Key } from './keypad.svelte';

function typed(keys: Key[], keypad = new Keypad('length')): Keypad {
  for (const key of keys) keypad.press(key);
  return keypad;
}

describe('a length in the trade’s writing', () => {
  it.each<{ keys: Key[]; written: string; mm: number; error: number | null }>([
    // 1 in = 25.4 mm by definition; a fraction is known to half its step.
    { keys: ['1', '3', '/16'], written: '13/16 in', mm: 20.6375, error: 0.79375 },
    { keys: ['1', 'plus', '1', '/16'], written: '1 1/16 in', mm: 26.9875, error: 0.79375 },
    { keys: ['5', '/8'], written: '5/8 in', mm: 15.875, error: 1.5875 },
    { keys: ['5', '3', '/64'], written: '53/64 in', mm: 21.034375, error: 0.1984375 },
    { keys: ['2'], written: '2 in', mm: 50.8, error: null },
    { keys: ['point', '8', '7', '5'], written: '0.875 in', mm: 22.225, error: null },
  ])('$written', ({ keys, written, mm, error }) => {
    const keypad = typed(keys);
    expect(keypad.written).toBe(written);
    expect(keypad.value).toBeCloseTo(mm, 9);
    if (error === null) expect(keypad.error, 'no fraction, so the instrument’s error stands').toBeNull();
    else expect(keypad.error).toBeCloseTo(error, 9);
  });

  it('takes millimetres with the caliper’s error', () => {
    const keypad = new Keypad('length');
    keypad.use('mm');
    typed(['2', '0', 'point', '6'], keypad);
    expect(keypad.written).toBe('20.6 mm');
    expect(keypad.value).toBeCloseTo(20.6, 9);
    expect(keypad.error).toBeNull();
  });

  it('starts anew over what was kept with the first digit, and changes it with any other key', () => {
    const kept = (keys: Key[]) =>
      typed(keys, new Keypad('length', { unit: 'mm', typed: { mm: '2.06' } }, true)).written;
    expect(kept(['2', '0', 'point', '6'])).toBe('20.6 mm');
    expect(kept(['point', '5'])).toBe('0.5 mm');
    expect(kept(['rubout', '8'])).toBe('2.08 mm');
    expect(kept([])).toBe('2.06 mm');
    const half = new Keypad('length', { unit: 'mm', typed: { mm: '2.06' } });
    expect(typed(['6'], half).written, 'half a number goes on').toBe('2.066 mm');
  });

  it('lets another denominator replace the first', () => {
    expect(typed(['1', '3', '/16', '/32']).written).toBe('13/32 in');
  });

  it('ignores keys that would make it no number', () => {
    expect(typed(['/16']).typed, 'a denominator needs a numerator').toBe('');
    expect(typed(['0', '/16']).typed, 'none of nothing').toBe('0');
    expect(typed(['1', '3', '/16', '4']).typed, 'digits behind a fraction').toBe('13/16');
    expect(typed(['1', 'point', '5', 'point', '2']).typed, 'a second decimal sign').toBe('1.52');
    expect(typed(['1', 'point', '5', '/8']).typed, 'a fraction of a decimal').toBe('1.5');
    expect(typed(['plus']).typed, 'inches and none before them').toBe('');
    expect(typed(['0', '0', '7']).typed, 'leading noughts').toBe('7');
    expect(typed(['1', '2', '3', '4', '5', '6', '7']).typed, 'longer than any hose').toBe('123456');
  });

  it('rubs out a denominator as the one key it was', () => {
    const keypad = typed(['1', 'plus', '1', '/16']);
    const seen = [];
    while (!keypad.empty) {
      keypad.press('rubout');
      seen.push(keypad.typed);
    }
    expect(seen).toEqual(['1+1', '1+', '1', '']);
  });
});

describe('half a number', () => {
  it('has no value yet and is kept as it stands', () => {
    const keypad = typed(['1', 'plus']);
    expect(keypad.value).toBeNull();
    expect(keypad.written).toBeNull();
    const draft = JSON.parse(JSON.stringify(keypad.draft)) as Draft;
    const back = new Keypad('length', draft);
    expect(back.typed).toBe('1+');
    expect(typed(['1', '/16'], back).value).toBeCloseTo(1.0625 * MM_PER_INCH, 9);
  });

  it('counts while its decimal sign waits for digits', () => {
    expect(typed(['2', 'point']).value).toBeCloseTo(50.8, 9);
    expect(typed(['2', 'point']).written).toBe('2 in');
    expect(typed(['2', 'point']).said()).toBe('2\u00a0in');
    expect(typed(['1', 'plus', '1', '/16']).said()).toBe('1 1/16\u00a0in');
  });
});

describe('the unit switch', () => {
  it('takes plain digits along: they were right and the unit was not', () => {
    const keypad = typed(['2', '0', 'point', '6']);
    keypad.use('mm');
    expect(keypad.value).toBeCloseTo(20.6, 9);
  });

  it('keeps a fraction under its own unit', () => {
    const keypad = typed(['1', '3', '/16']);
    keypad.use('mm');
    expect(keypad.typed).toBe('');
    expect(keypad.can('/16')).toBe(false);
    keypad.use('in');
    expect(keypad.written).toBe('13/16 in');
  });
});

describe('other quantities', () => {
  it('reads pressure in psi as bar', () => {
    const keypad = new Keypad('pressure');
    keypad.use('psi');
    expect(typed(['3', '0', '0', '0'], keypad).value).toBeCloseTo(206.8427, 4);
  });

  it('reads Fahrenheit as Celsius and takes a minus for cold', () => {
    const keypad = new Keypad('temperature');
    expect(typed(['4', '0', 'minus'], keypad).value).toBe(-40);
    keypad.use('F');
    expect(keypad.value).toBeCloseTo(-40, 9);
    expect(keypad.written).toBe('-40 F');
    expect(keypad.said()).toBe('\u221240\u00a0°F');
    expect(keypad.shown.whole).toBe('\u221240');
  });

  it('has no minus where nothing is below nought', () => {
    expect(typed(['5', 'minus']).typed).toBe('5');
  });
});

describe('the decimal sign', () => {
  afterEach(() => {
    spoken.tag = 'en';
  });

  it('is drawn by the language and written with a point', () => {
    const keypad = new Keypad('length');
    keypad.use('mm');
    typed(['2', '0', 'point', '6'], keypad);
    // German is not in the list of languages yet; its sign is what counts here.
    spoken.tag = 'de';
    expect(keypad.shown.whole).toBe('20,6');
    expect(keypad.written).toBe('20.6 mm');
  });
});
