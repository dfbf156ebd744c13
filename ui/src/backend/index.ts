import type { Backend } from './backend';
import { loopback } from './loopback';
import { tauri } from './tauri';

export type { Answer, Backend, CallError, CommandName, Given, Question, Reply } from './backend';

// The production build knows the shell only: the mode is a constant there, so loopback falls away.
export const backend: Backend =
  import.meta.env.MODE === 'production' || '__TAURI_INTERNALS__' in window ? tauri : loopback;
