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
    expect(settingsFrom('{"language":"en","units":"in"}', ['fr'])).toEqual({ language: 'en', units: 'in' });
  });
  it('takes the usual value for each setting that cannot be read', () => {
    expect(settingsFrom('{"language":"xx","units":"in"}', [])).toEqual({ language: 'en', units: 'in' });
    expect(settingsFrom('{"units":7}', [])).toEqual({ language: 'en', units: 'cm' });
    expect(settingsFrom('not json', [])).toEqual({ language: 'en', units: 'cm' });
    expect(settingsFrom('null', [])).toEqual({ language: 'en', units: 'cm' });
  });
});
