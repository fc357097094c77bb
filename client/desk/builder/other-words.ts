import { useEffect, useState } from 'react';
import { LOCALES } from '../../../shared/documents/values.ts';
import type { Wording } from '../../../shared/wording/wording.ts';
import { useDevice } from '../../parts/device-settings.ts';
import { loadLanguage, wordsIn } from '../../parts/languages.ts';

/** The sentences of the language that this device does not speak; null until they have been fetched. */
export function useOtherWords(): Wording | null {
  const { language, units } = useDevice();
  const other = LOCALES.find((locale) => locale !== language)!;
  const [loaded, setLoaded] = useState<string | null>(null);
  useEffect(() => {
    let current = true;
    void loadLanguage(other).then(
      () => current && setLoaded(other),
      // The server is away: the sentence stands in one language.
      () => undefined,
    );
    return () => {
      current = false;
    };
  }, [other]);
  return loaded === other ? (wordsIn(other, units) as Wording) : null;
}
