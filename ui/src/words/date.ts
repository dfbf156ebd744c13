// Days and times as people read them, in the language now spoken.
import { spoken } from './language.svelte';

const DAY: Intl.DateTimeFormatOptions = { day: 'numeric', month: 'short', year: 'numeric' };
const CLOCK: Intl.DateTimeFormatOptions = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' };

/** A day written `2026-11-25` in the register: `25 Nov 2026`. It has no clock, so no time zone moves it. */
export function day(text: string): string {
  return new Intl.DateTimeFormat(locale(), { ...DAY, timeZone: 'UTC' }).format(new Date(`${text}T00:00:00Z`));
}

/** A month of a year: `December 2024`. */
export function month(year: number, of: number): string {
  const named: Intl.DateTimeFormatOptions = { month: 'long', year: 'numeric', timeZone: 'UTC' };
  return new Intl.DateTimeFormat(locale(), named).format(new Date(Date.UTC(year, of - 1)));
}

/** A moment of the log on this phone's clock: `25 Nov 2026, 11:05`. */
export function moment(text: string): string {
  return new Intl.DateTimeFormat(locale(), { ...DAY, ...CLOCK }).format(new Date(text));
}

/** A moment as it is said on its own day: `11:05`; on another, with the day. */
export function clock(text: string, now = new Date()): string {
  if (today(new Date(text)) !== today(now)) return moment(text);
  return new Intl.DateTimeFormat(locale(), CLOCK).format(new Date(text));
}

/** Today on this phone's calendar, as the register writes days. */
export function today(now = new Date()): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** English as it is spelled here: the day before the month. */
function locale(): string {
  return spoken.tag === 'en' ? 'en-GB' : spoken.tag;
}
