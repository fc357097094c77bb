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

export function datesIn(tag: string): Dates {
  const day = new Intl.DateTimeFormat(tag, { dateStyle: 'medium' });
  const moment = new Intl.DateTimeFormat(tag, { dateStyle: 'medium', timeStyle: 'short' });
  const time = new Intl.DateTimeFormat(tag, { timeStyle: 'short' });
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

/** Dates as the reader of this page expects them. */
export function useDates(): Dates {
  const tag = dateTag(useLocale(), navigator.languages);
  const known = formats.get(tag) ?? datesIn(tag);
  formats.set(tag, known);
  return known;
}
