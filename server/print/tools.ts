import type { Units } from '../../shared/documents/values.ts';
import { type Locale, type Wording, wording } from '../../shared/wording/wording.ts';
import { type EmblemPaths, emblemPaths } from './emblems.ts';

/** What every page needs besides its own matter. */
export interface PrintTools {
  readonly locale: Locale;
  readonly words: Wording;
  readonly emblems: EmblemPaths;
}

export const printTools = async (locale: Locale = 'en', units: Units = 'cm'): Promise<PrintTools> => ({
  locale,
  words: wording(locale, units),
  emblems: await emblemPaths(),
});
