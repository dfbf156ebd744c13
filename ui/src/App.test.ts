import { fireEvent, render, screen, within } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import App from './App.svelte';

it('starts with the hose in broken lines, five steps and three ways in', async () => {
  render(App);
  expect(screen.getByRole('img', { name: /A hose not yet drawn/ })).toBeTruthy();
  const steps = within(screen.getByRole('navigation', { name: 'Steps of the job' })).getAllByRole('button');
  expect(steps.map((step) => step.textContent?.trim())).toEqual(['Find', 'Check', 'Make', 'Tag', 'Fit']);
  for (const name of [/Scan the old tag/, /Read the print/, /Measure/])
    expect(screen.getByRole('button', { name })).toBeTruthy();
  await fireEvent.click(screen.getByRole('button', { name: /Sun view/ }));
  expect(document.documentElement.dataset['theme']).toBe('sun');
});
