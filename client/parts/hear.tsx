import { Square, Volume2 } from 'lucide-react';
import { useEffect, useState } from 'react';
import { Button } from './button.tsx';
import { useDevice } from './device-settings.ts';
import { Icon } from './icon.tsx';
import { useWords } from './use-words.ts';
import { localVoice, onVoices } from './voices.ts';

/** Reads a text aloud with a voice that is on this device; nothing where there is none. */
export function Hear({ text }: { readonly text: string }) {
  const { reading } = useWords();
  const { language, voice } = useDevice();
  const [own, setOwn] = useState(() => localVoice(language));
  const [speaks, setSpeaks] = useState(false);
  useEffect(() => {
    const look = () => setOwn(localVoice(language));
    look();
    return onVoices(look);
  }, [language]);
  useEffect(() => () => window.speechSynthesis?.cancel(), []);
  if (!own || voice === 'off') return null;
  const start = () => {
    const said = new SpeechSynthesisUtterance(text);
    said.voice = own;
    said.lang = own.lang;
    said.onend = () => setSpeaks(false);
    said.onerror = () => setSpeaks(false);
    window.speechSynthesis.cancel();
    window.speechSynthesis.speak(said);
    setSpeaks(true);
  };
  const stop = () => {
    window.speechSynthesis.cancel();
    setSpeaks(false);
  };
  return (
    <Button
      look="quiet"
      className="hear"
      icon={<Icon of={speaks ? Square : Volume2} size={24} />}
      onClick={speaks ? stop : start}
    >
      {speaks ? reading.stop : reading.hear}
    </Button>
  );
}
