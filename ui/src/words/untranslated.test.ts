import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'svelte/compiler';
import { expect, it } from 'vitest';

/** Attributes that a person reads or hears. */
const READ = [
  'aria-label',
  'aria-description',
  'aria-roledescription',
  'aria-valuetext',
  'alt',
  'placeholder',
  'title',
];
/** Codes and units that are the same in every language. */
const CODES = /^([A-Z]|bar|psi)$/;

/** Text written in a template itself: no catalogue has it, so no language says it. */
function written(node: unknown, found: string[] = []): string[] {
  if (Array.isArray(node)) for (const each of node) written(each, found);
  else if (node && typeof node === 'object') {
    const { type, name, data } = node as { type?: string; name?: string; data?: string };
    if (type === 'Attribute' && !READ.includes(name ?? '')) {
      // Its value may be a snippet of markup; plain text in it is no words.
      const value = (node as { value: unknown }).value;
      if (!Array.isArray(value)) written(value, found);
      return found;
    }
    if (type === 'StyleDirective') return found;
    if (type === 'Text' && /\p{L}/u.test(data ?? '')) found.push((data ?? '').trim());
    for (const value of Object.values(node)) written(value, found);
  }
  return found;
}

const screens = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter(
  (path) => path.endsWith('.svelte') && !path.includes('.test.') && !path.startsWith('gallery'),
);

it('looks at every screen', () => {
  expect(screens.length).toBeGreaterThan(50);
});

it.each(screens)('%s has no words of its own beside the catalogues', (path) => {
  const { fragment } = parse(readFileSync(join('src', path), 'utf8'), { modern: true });
  expect(written(fragment).filter((text) => !CODES.test(text))).toEqual([]);
});

it('finds the words that a template has of its own', () => {
  const found = written(
    parse('<p aria-label="Hose" class="note">End <b>{say("x")}</b></p>', { modern: true }).fragment,
  );
  expect(found).toEqual(['Hose', 'End']);
});
