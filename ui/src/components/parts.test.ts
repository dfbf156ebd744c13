import { fireEvent, render, screen, within } from '@testing-library/svelte';
import { describe, expect, it, vi } from 'vitest';
import Chain from './Chain.svelte';
import Finding from './Finding.svelte';
import KeypadKeys from './Keypad.svelte';
import LetterKeypad from './LetterKeypad.svelte';
import LookalikeStrip from './LookalikeStrip.svelte';
import Steps from './Steps.svelte';
import VerdictStrip from './VerdictStrip.svelte';
import { Keypad } from './keypad.svelte';

describe('the keypad', () => {
  it('types 13/16 in by its keys', async () => {
    const keypad = new Keypad('length');
    render(KeypadKeys, { keypad });
    for (const name of ['1', '3', '/ 16'])
      await fireEvent.click(screen.getByRole('button', { name: new RegExp(`^${name.replace(' ', '\\s*')}$`) }));
    expect(keypad.written).toBe('13/16 in');
  });

  it('shows at rest what does nothing now', async () => {
    render(KeypadKeys, { keypad: new Keypad('length') });
    const sixteenths = screen.getByRole('button', { name: /^\/\s*16$/ });
    expect(sixteenths.getAttribute('aria-disabled')).toBe('true');
    await fireEvent.click(screen.getByRole('button', { name: '5' }));
    expect(sixteenths.getAttribute('aria-disabled')).toBe('false');
  });

  it('takes can’t tell as an answer only where the question may stay open', async () => {
    const oncant = vi.fn();
    const { unmount } = render(KeypadKeys, { keypad: new Keypad('length'), oncant });
    await fireEvent.click(screen.getByRole('button', { name: 'can’t tell' }));
    expect(oncant).toHaveBeenCalledOnce();
    unmount();
    render(KeypadKeys, { keypad: new Keypad('length') });
    expect(screen.queryByRole('button', { name: 'can’t tell' })).toBeNull();
  });

  it('takes a keyboard’s comma and point alike', async () => {
    const keypad = new Keypad('length');
    keypad.use('mm');
    render(KeypadKeys, { keypad });
    for (const key of ['2', '0', ',', '6']) await fireEvent.keyDown(window, { key });
    expect(keypad.written).toBe('20.6 mm');
  });
});

describe('the letters', () => {
  it('offer no I, L, O or U for a code, and all of them for a print', () => {
    const nothing = () => {};
    const { unmount } = render(LetterKeypad, { layout: 'code', onletter: nothing, onrubout: nothing });
    for (const letter of ['I', 'L', 'O', 'U'])
      expect(screen.queryByRole('button', { name: letter }), letter).toBeNull();
    unmount();
    render(LetterKeypad, { layout: 'print', onletter: nothing, onrubout: nothing });
    for (const letter of ['I', 'L', 'O', 'U', '/', '-'])
      expect(screen.getByRole('button', { name: letter })).toBeTruthy();
  });

  it('give ? for a worn letter and * for a gap', async () => {
    const onletter = vi.fn();
    render(LetterKeypad, { layout: 'print', onletter, onrubout: () => {} });
    await fireEvent.click(screen.getByRole('button', { name: /worn away/ }));
    await fireEvent.click(screen.getByRole('button', { name: /any number/i }));
    expect(onletter.mock.calls.flat()).toEqual(['?', '*']);
  });
});

describe('the chain', () => {
  it('marks the current step and says which are done', () => {
    render(Chain, {
      steps: [
        { id: 'find', label: 'Find', state: 'done' },
        { id: 'check', label: 'Check', state: 'now' },
        { id: 'fit', label: 'Fit', state: 'todo' },
      ],
      onpick: () => {},
    });
    expect(screen.getByRole('button', { name: /Find\s*done/ }).getAttribute('aria-current')).toBeNull();
    expect(screen.getByRole('button', { name: 'Check' }).getAttribute('aria-current')).toBe('step');
  });
});

describe('a finding', () => {
  const finding = {
    verdict: 'caution',
    title: 'Flow speed',
    value: '9.2',
    limit: '7.6 m/s',
    scale: { value: 9.2, limit: 7.6, least: false },
    source: 'a sizing tip',
    basis: 'memory',
    why: 'Fast oil heats.',
    cure: 'Take the next size.',
  } as const;

  it('keeps why and basis one tap away and says unverified at once', async () => {
    render(Finding, finding);
    const row = screen.getByRole('button', { expanded: false });
    expect(row.textContent).toContain('unverified');
    expect(screen.getByText('Fast oil heats.').closest('[hidden]')).not.toBeNull();
    await fireEvent.click(row);
    expect(screen.getByRole('button', { expanded: true })).toBe(row);
    expect(screen.getByText('Fast oil heats.').closest('[hidden]')).toBeNull();
    expect(screen.getByText(/recalled and not yet checked/)).toBeTruthy();
  });

  it('shows the remedy without a tap', () => {
    render(Finding, finding);
    expect(screen.getByText('Take the next size.').closest('[hidden]')).toBeNull();
  });
});

describe('the steps', () => {
  it('put a caution in its own step, under it', async () => {
    const ontick = vi.fn();
    render(Steps, {
      steps: [
        { id: 'cut', text: 'Cut 1155', state: 'done' },
        { id: 'prove', text: 'Prove at 412 bar', state: 'now', cautions: ['Guard shut.'] },
      ],
      ontick,
    });
    const step = screen.getByRole('checkbox', { name: 'Prove at 412 bar' });
    const item = step.closest('li');
    expect(item && within(item).getByText('Guard shut.').compareDocumentPosition(step)).toBe(
      Node.DOCUMENT_POSITION_PRECEDING,
    );
    await fireEvent.click(step);
    expect(ontick).toHaveBeenCalledWith('prove');
  });
});

describe('verdicts and look-alikes', () => {
  it('say the word, not only the colour', () => {
    render(VerdictStrip, { sign: 'unsettled', sentence: 'End A is not settled.' });
    expect(screen.getByRole('status').textContent).toContain('NOT SETTLED');
  });

  it('say which nut starts on which male', () => {
    render(LookalikeStrip, {
      name: 'BSPP 5/8',
      starts: 'Female BSPP 5/8 nut starts on male JIC -10.',
      danger: 'Blows off.',
    });
    expect(screen.getByRole('heading', { name: 'Look-alike: BSPP 5/8' })).toBeTruthy();
    expect(screen.getByText(/nut starts on male/)).toBeTruthy();
  });
});
