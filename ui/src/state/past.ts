import type { Due } from '../backend/types';

/** Whether the day it falls due has come. A hose of no known age has no such day. */
export function isPast(due: Due, on: string): boolean {
  return due.due !== null && due.due <= on;
}
