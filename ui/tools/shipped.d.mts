import type { File } from './catalogues.mjs';

export function spoken(language: string): File[];
export function shortIds(sources: string[], catalogues: string[]): Map<string, string>;
export function sayingShort(source: string, short: Map<string, string>): string;
export function shipped(catalogue: string, short?: Map<string, string>): string;
