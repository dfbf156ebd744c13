import type { DueLine } from '../backend/types';

/** Whether the day it falls due has come. A hose of no known age has no such day. */
export function isPast(due: DueLine, on: string): boolean {
  return due.due !== null && due.due <= on;
}
