import type { Locale } from '../../shared/documents/values.ts';

/** Of the voices on a device one that speaks the language; null where there is none. Others ask a server. */
export function voiceFor<V extends Pick<SpeechSynthesisVoice, 'lang' | 'localService' | 'default'>>(
  voices: readonly V[],
  language: Locale,
): V | null {
  const own = voices.filter(
    ({ lang, localService }) => localService && lang.split(/[-_]/)[0]?.toLowerCase() === language,
  );
  return own.find((voice) => voice.default) ?? own[0] ?? null;
}

/** Browsers may have no speech at all. */
const speech = (): SpeechSynthesis | null => ('speechSynthesis' in window ? window.speechSynthesis : null);

export const localVoice = (language: Locale): SpeechSynthesisVoice | null =>
  voiceFor(speech()?.getVoices() ?? [], language);

/** Calls back when the browser has found its voices, which it does after a while. Returns how to stop. */
export function onVoices(found: () => void): () => void {
  const from = speech();
  from?.addEventListener?.('voiceschanged', found);
  return () => from?.removeEventListener?.('voiceschanged', found);
}
