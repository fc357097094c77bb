import * as z from 'zod/mini';
import { create } from 'zustand';
import { LOCALES, type Locale, UNITS, type Units } from '../../shared/documents/values.ts';
import { type Glass, PX_PER_MM } from './glass.ts';
import { keepText, keptText } from './kept-text.ts';
import { loadLanguage } from './languages.ts';

/** Percent of the size that the browser gives text by itself. */
export const TEXT_SIZES = [100, 150, 200] as const;
export type TextSize = (typeof TEXT_SIZES)[number];

/** Whether sentences can be heard, where the device has a voice of its own. */
export const VOICES = ['on', 'off'] as const;
export type VoiceSetting = (typeof VOICES)[number];

/** The colours of inks on the screen. */
export const INKS = ['kit', 'other'] as const;
export type InkSetting = (typeof INKS)[number];

/** What this browser is set to, whoever sits in front of it and whichever page it shows. */
export interface DeviceSettings {
  readonly language: Locale;
  readonly units: Units;
  readonly inks: InkSetting;
  readonly text: TextSize;
  readonly voice: VoiceSetting;
  /** null until somebody has held a card against the glass. */
  readonly glass: Glass | null;
}

const KEPT = 'harbour-lines.device';

/** Each setting by itself: one that cannot be read takes none of the others with it. */
const Kept = z.object({
  language: z.catch(z.optional(z.enum(LOCALES)), undefined),
  units: z.catch(z.optional(z.enum(UNITS)), undefined),
  inks: z.catch(z.optional(z.enum(INKS)), undefined),
  text: z.catch(z.optional(z.literal(TEXT_SIZES)), undefined),
  voice: z.catch(z.optional(z.enum(VOICES)), undefined),
  glass: z.catch(
    z.optional(
      z.object({
        pxPerMm: z.number().check(z.gte(PX_PER_MM.least), z.lte(PX_PER_MM.most)),
        ratio: z.number().check(z.positive()),
      }),
    ),
    undefined,
  ),
});

/** The first of the wanted languages (BCP 47 tags) that is spoken here; English where none is. */
export function languageFor(wanted: readonly string[]): Locale {
  const spoken = wanted.map((tag) => LOCALES.find((locale) => locale === tag.split('-')[0]?.toLowerCase()));
  return spoken.find((locale) => locale !== undefined) ?? 'en';
}

/** What was kept over what a new device has. */
export function settingsFrom(kept: string | null, languages: readonly string[]): DeviceSettings {
  const usual: DeviceSettings = {
    language: languageFor(languages),
    units: 'cm',
    inks: 'kit',
    text: 100,
    voice: 'on',
    glass: null,
  };
  try {
    const read = Kept.parse(JSON.parse(kept ?? '{}'));
    return {
      language: read.language ?? usual.language,
      units: read.units ?? usual.units,
      inks: read.inks ?? usual.inks,
      text: read.text ?? usual.text,
      voice: read.voice ?? usual.voice,
      glass: read.glass ?? usual.glass,
    };
  } catch {
    return usual;
  }
}

function readKept(): DeviceSettings {
  const kept = keptText(KEPT);
  return kept === undefined ? settingsFrom(null, []) : settingsFrom(kept, navigator.languages);
}

export const useDevice = create<DeviceSettings>()(readKept);

/** Sets the device; another language once it is there. Resolves to false where it could not be fetched. */
export async function changeDevice(change: Partial<DeviceSettings>): Promise<boolean> {
  if (!(await take(change))) return false;
  keepText(KEPT, JSON.stringify(useDevice.getState()));
  return true;
}

async function take(change: Partial<DeviceSettings>): Promise<boolean> {
  try {
    await loadLanguage(change.language ?? useDevice.getState().language);
  } catch {
    return false;
  }
  useDevice.setState(change);
  return true;
}

/** From this size of text on, CSS pixels, pages set their parts under one another. */
const LARGE_TEXT = 22;

function look({ language, text }: DeviceSettings): void {
  const root = document.documentElement;
  root.lang = language;
  root.dataset.text = String(text);
  // Measured, since the browser may have been set to larger text as well.
  root.dataset.large = String(Number.parseFloat(getComputedStyle(root).fontSize) >= LARGE_TEXT);
}

/**
 * Called once by each page, before it shows anything: it looks as the device is set, also when another
 * tab sets it otherwise.
 */
export async function followDevice(): Promise<void> {
  await loadLanguage(useDevice.getState().language);
  look(useDevice.getState());
  useDevice.subscribe(look);
  window.addEventListener('resize', () => look(useDevice.getState()));
  window.addEventListener('storage', ({ key }) => {
    if (key === KEPT) void take(readKept());
  });
}
