// The tables tell a danger in one line: which half starts on which, the figures, and what happens.

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * Takes the line apart: before the first colon which nut starts on which male, after the last semicolon
 * what happens then. Figures between are left to the sheet of the candidate. A line that is written
 * otherwise is told whole.
 */
export function parseDanger(line: string): { starts: string; danger: string } {
  const [starts = '', ...rest] = line.split(': ');
  const end = line.lastIndexOf('; ');
  if (rest.length === 0) return { starts: '', danger: capital(line) };
  const danger = end > starts.length ? line.slice(end + 2) : rest.join(': ');
  return { starts: `${capital(starts)}.`, danger: `${capital(danger)}.` };
}

/** What happens, without the figures before it: for a line that must be short. */
export const happens = (line: string): string => capital(parseDanger(line).danger.split(': ').at(-1) ?? '');
