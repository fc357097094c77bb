import { describe, expect, it } from 'vitest';
import { voiceFor } from '../../../../client/parts/voices.ts';

const voice = (lang: string, localService: boolean, isDefault = false) => ({
  lang,
  localService,
  default: isDefault,
});

describe('voiceFor', () => {
  it('takes the default voice of the language, else its first, however the region is written', () => {
    const [us, gb, es] = [voice('en-US', true), voice('en_GB', true, true), voice('es-MX', true)];
    expect(voiceFor([us, gb, es], 'en')).toBe(gb);
    expect(voiceFor([us, es], 'en')).toBe(us);
    expect(voiceFor([us, gb, es], 'es')).toBe(es);
  });
  it('takes none that asks a server, nor one of another language', () => {
    expect(voiceFor([voice('en-US', false, true), voice('fr-FR', true)], 'en')).toBeNull();
    expect(voiceFor([], 'es')).toBeNull();
  });
});
