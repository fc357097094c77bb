import type { Locale } from '../../shared/documents/values.ts';
import { useLocale } from './use-words.ts';

/**
 * The tag by which dates are written: that of the page's language with the region that the browser asks
 * for (en-GB and en-US write dates in another order), or the language alone.
 */
export const dateTag = (locale: Locale, languages: readonly string[]): string =>
  languages.find((tag) => tag.split('-')[0]?.toLowerCase() === locale) ?? locale;

const formats = new Map<string, Dates>();

/** Dates and times in the device's own time zone. */
export interface Dates {
  readonly day: (at: number) => string;
  readonly moment: (at: number) => string;
  readonly time: (at: number) => string;
  /** An ISO date as it is read aloud. It names a day, not a moment, so no time zone may move it. */
  readonly dayOf: (date: string) => string;
}

/** `timeZone`: of the IANA database; the device's own where it is left out. */
export function datesIn(tag: string, timeZone?: string): Dates {
  const day = new Intl.DateTimeFormat(tag, { dateStyle: 'medium', timeZone });
  const moment = new Intl.DateTimeFormat(tag, { dateStyle: 'medium', timeStyle: 'short', timeZone });
  const time = new Intl.DateTimeFormat(tag, { timeStyle: 'short', timeZone });
  const named = new Intl.DateTimeFormat(tag, {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    timeZone: 'UTC',
  });
  return {
    day: (at) => day.format(at),
    moment: (at) => moment.format(at),
    time: (at) => time.format(at),
    dayOf: (date) => {
      const at = Date.parse(`${date}T00:00:00Z`);
      return Number.isNaN(at) ? date : named.format(at);
    },
  };
}

/** The day of a moment in ISO 8601, as date inputs have it; in the device's own time zone where none is named. */
export function localDate(at: number, timeZone?: string): string {
  const format = new Intl.DateTimeFormat('en', {
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    calendar: 'gregory',
    numberingSystem: 'latn',
    timeZone,
  });
  const parts = new Map(format.formatToParts(at).map(({ type, value }) => [type, value]));
  return `${parts.get('year')}-${parts.get('month')}-${parts.get('day')}`;
}

const MINUTE_MS = 60_000;

/** How many minutes the clock of a time zone is ahead of UTC at a moment; of the device's own where none is named. */
export function offsetAt(at: number, timeZone?: string): number {
  const format = new Intl.DateTimeFormat('en', {
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    hourCycle: 'h23',
    calendar: 'gregory',
    numberingSystem: 'latn',
    timeZone,
  });
  const parts = new Map(format.formatToParts(at).map(({ type, value }) => [type, Number(value)]));
  const of = (part: Intl.DateTimeFormatPartTypes): number => parts.get(part) ?? 0;
  const wall = Date.UTC(of('year'), of('month') - 1, of('day'), of('hour'), of('minute'));
  return (wall - Math.floor(at / MINUTE_MS) * MINUTE_MS) / MINUTE_MS;
}

const DAY_MS = 86_400_000;

/** The date so many days after `date`. Dates are counted, not hours: a day of 23 or 25 hours is a day. */
export const daysAfter = (date: string, days: number): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);

/** How many days `to` lies after `from`. */
export const daysBetween = (from: string, to: string): number =>
  (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS;

/** Dates as the reader of this page expects them. */
export function useDates(): Dates {
  const tag = dateTag(useLocale(), navigator.languages);
  const known = formats.get(tag) ?? datesIn(tag);
  formats.set(tag, known);
  return known;
}
