import { describe, expect, it } from 'vitest';
import { languageFor, settingsFrom } from '../../../../client/parts/device-settings.ts';

describe('languageFor', () => {
  it('takes the first wanted language that is spoken, whatever its region', () => {
    expect(languageFor(['de-CH', 'en-US'])).toBe('en');
    expect(languageFor(['EN-gb'])).toBe('en');
  });
  it('falls back to English', () => {
    expect(languageFor([])).toBe('en');
    expect(languageFor(['de', 'fr-CA'])).toBe('en');
  });
});

describe('settingsFrom', () => {
  it('keeps what was chosen over what the browser wants', () => {
    const glass = { pxPerMm: 5.2, ratio: 2 };
    const kept = { language: 'en', units: 'in', inks: 'other', text: 150, voice: 'off', glass } as const;
    expect(settingsFrom(JSON.stringify(kept), ['fr'])).toEqual(kept);
  });
  it('takes the usual value for each setting that cannot be read', () => {
    const usual = { language: 'en', units: 'cm', inks: 'kit', text: 100, voice: 'on', glass: null };
    expect(settingsFrom('{"language":"xx","units":"in"}', [])).toEqual({ ...usual, units: 'in' });
    expect(settingsFrom('{"units":7}', [])).toEqual(usual);
    expect(settingsFrom('{"inks":"#FFA500"}', [])).toEqual(usual);
    expect(settingsFrom('{"text":1000}', [])).toEqual(usual);
    expect(settingsFrom('{"glass":{"pxPerMm":1.9,"ratio":1}}', [])).toEqual(usual);
    expect(settingsFrom('{"glass":{"pxPerMm":10.1,"ratio":1}}', [])).toEqual(usual);
    expect(settingsFrom('{"glass":{"pxPerMm":5}}', [])).toEqual(usual);
    expect(settingsFrom('not json', [])).toEqual(usual);
    expect(settingsFrom('null', [])).toEqual(usual);
  });
});
