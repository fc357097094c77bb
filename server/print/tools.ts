import { type Locale, type Wording, wording } from '../../shared/wording/wording.ts';
import { type EmblemPaths, emblemPaths } from './emblems.ts';

/** What every page needs besides its own matter. */
export interface PrintTools {
  readonly locale: Locale;
  readonly words: Wording;
  readonly emblems: EmblemPaths;
}

export const printTools = async (locale: Locale = 'en'): Promise<PrintTools> => ({
  locale,
  words: wording(locale),
  emblems: await emblemPaths(),
});
