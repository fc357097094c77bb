import type { Texts } from '../documents/values.ts';
import { en } from './en/index.ts';

/** The languages that pages, print and commands can speak. Each is a folder beside this file. */
export const LOCALES = ['en'] as const;
export type Locale = (typeof LOCALES)[number];

/** English gives the shape: another language is complete when it type-checks as this. */
export type Wording = typeof en;

const LANGUAGES: Readonly<Record<Locale, Wording>> = { en };

/** All sentences of one language. */
export const wording = (locale: Locale): Wording => LANGUAGES[locale];

/** A text of a document in this language, or in English where it has none. */
export const textIn = (texts: Texts, locale: Locale): string => texts[locale] ?? texts.en;
