import { render, screen, waitFor } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import App from './App.svelte';
import { fake } from './backend/fake';

it('starts with three ways in while no job is open', async () => {
  render(App, { backend: fake() });
  await waitFor(() => expect(screen.getByRole('navigation', { name: 'Places' })).toBeTruthy());
});
