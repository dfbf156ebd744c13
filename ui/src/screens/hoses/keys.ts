// What a key does in the table of hoses.

/** What is done: a row is gone to, chosen or opened. */
export type Deed =
  | { do: 'go'; to: number }
  | { do: 'span'; to: number }
  | { do: 'toggle' }
  | { do: 'all' }
  | { do: 'none' }
  | { do: 'open' };

interface Pressed {
  key: string;
  shiftKey: boolean;
  ctrlKey: boolean;
  metaKey: boolean;
}

/** The deed of a key at that row of so many, `page` of them in sight; null where the key is not the table's. */
export function deedOf(
  { key, shiftKey, ctrlKey, metaKey }: Pressed,
  at: number,
  total: number,
  page: number,
): Deed | null {
  if (ctrlKey || metaKey) return key === 'a' ? { do: 'all' } : null;
  if (key === ' ') return { do: 'toggle' };
  if (key === 'Enter') return { do: 'open' };
  if (key === 'Escape') return { do: 'none' };
  const to = { ArrowUp: at - 1, ArrowDown: at + 1, PageUp: at - page, PageDown: at + page, Home: 0, End: total - 1 }[
    key
  ];
  if (to === undefined) return null;
  const row = Math.min(Math.max(to, 0), Math.max(total - 1, 0));
  return shiftKey ? { do: 'span', to: row } : { do: 'go', to: row };
}
