import { createContext, useContext } from 'react';
import { type Locale, type Wording, wording } from '../../shared/wording/wording.ts';

/** The language of the page; a page sets it once, near its root. */
export const LocaleOfPage = createContext<Locale>('en');

export const useLocale = (): Locale => useContext(LocaleOfPage);
/** All sentences in the language of the page. */
export const useWords = (): Wording => wording(useContext(LocaleOfPage));
