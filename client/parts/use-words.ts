import type { Locale } from '../../shared/documents/values.ts';
import type { PageWording } from '../../shared/wording/wording.ts';
import { useDevice } from './device-settings.ts';
import { wordsIn } from './languages.ts';

/** The language that this device is set to. */
export const useLocale = (): Locale => useDevice((device) => device.language);
/** All sentences in the language of this device, lengths in its units. */
export const useWords = (): PageWording => {
  const { language, units } = useDevice();
  return wordsIn(language, units);
};
