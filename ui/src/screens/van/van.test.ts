import { fireEvent, render, screen } from '@testing-library/svelte';
import { expect, it, vi } from 'vitest';
import App from '../../App.svelte';
import { fake } from '../../backend/fake';
import { backupName } from './backups';
import { size } from './size';

it('tells backups of different minutes apart', () => {
  expect(backupName('register.hosewright', '2026-11-25T14:16:09.123Z')).toBe('register-2026-11-25-1416.hosewright');
});

it('writes a size as its shelf counts it', () => {
  expect(size(749_568)).toBe('750\u00a0kB');
  expect(size(12_340_000)).toBe('12.3\u00a0MB');
});

it('asks twice before a register is replaced', async () => {
  const restore = vi.fn(() => ({ events: 1, devices: 1, faults: [] }));
  const { container } = render(App, { backend: fake({ 'register.restore': restore }) });
  await fireEvent.click(await screen.findByRole('button', { name: 'Van' }));
  await fireEvent.click((await screen.findAllByRole('button', { name: /^Backup/ }))[0]!);
  const field = container.querySelector('input[type=file]')!;
  await fireEvent.change(field, { target: { files: [new File(['x'], 'old.hosewright')] } });
  expect(screen.getByRole('heading', { name: 'Replace this register?' })).toBeTruthy();
  await fireEvent.click(screen.getByRole('button', { name: 'Go on' }));
  expect(restore).not.toHaveBeenCalled();
  await fireEvent.click(screen.getByRole('button', { name: 'Restore it' }));
  await screen.findByText('RESTORED');
  expect(restore).toHaveBeenCalledOnce();
});

it('says when the last good backup was made and puts it in place after asking twice', async () => {
  const restore = vi.fn((_input: unknown) => ({ events: 1, devices: 1, faults: [] }));
  const name = '20261125T061200Z.hosewright';
  const backups = () => ({ folder: '', backups: [{ name, made: '2026-11-25T06:12:00Z', bytes: 783_000 }], late: true });
  render(App, { backend: fake({ 'register.restore': restore, 'register.backups': backups }) });
  await fireEvent.click(await screen.findByRole('button', { name: 'Van' }));
  await fireEvent.click((await screen.findAllByRole('button', { name: /^Backup/ }))[0]!);
  await screen.findByText(/The last good one: 25 Nov 2026/);
  await screen.findByText(/three days old or older/);
  await fireEvent.click(screen.getByRole('button', { name: /^Restore 25 Nov 2026/ }));
  await fireEvent.click(screen.getByRole('button', { name: 'Go on' }));
  expect(restore).not.toHaveBeenCalled();
  await fireEvent.click(screen.getByRole('button', { name: 'Restore it' }));
  await screen.findByText('RESTORED');
  expect(restore).toHaveBeenCalledWith({ kept: name });
});

it('leaves a report of a fault', async () => {
  render(App, { backend: fake({ diagnose: () => ({ name: 'report.zip', mime: 'application/zip' }) }) });
  await fireEvent.click(await screen.findByRole('button', { name: 'Van' }));
  await fireEvent.click((await screen.findAllByRole('button', { name: /^Storage and versions/ }))[0]!);
  await fireEvent.click(await screen.findByRole('button', { name: 'Save the report' }));
  await screen.findByText(/^report\.zip/);
});
