import { useCallback, useEffect, useState } from 'react';

const speech = (): SpeechSynthesis | null => globalThis.speechSynthesis ?? null;

/** English voices of this device that need no network. */
export const useVoices = (): readonly SpeechSynthesisVoice[] => {
  const [voices, setVoices] = useState<readonly SpeechSynthesisVoice[]>([]);
  useEffect(() => {
    const synth = speech();
    if (synth === null) return;
    const read = (): void =>
      setVoices(
        synth.getVoices().filter(({ lang, localService }) => /^en\b/i.test(lang) && localService),
      );
    read();
    synth.addEventListener?.('voiceschanged', read);
    return () => synth.removeEventListener?.('voiceschanged', read);
  }, []);
  return voices;
};

export const canSpeak = (): boolean => speech() !== null;

/** Reads `text` aloud whenever it changes while `on`; gives the way to say it again. */
export const useAloud = (
  text: string,
  { on, voice }: { readonly on: boolean; readonly voice: string },
  voices: readonly SpeechSynthesisVoice[],
): (() => void) => {
  const say = useCallback((): void => {
    const synth = speech();
    if (synth === null) return;
    synth.cancel();
    const words = new SpeechSynthesisUtterance(text);
    const chosen = voices.find(({ voiceURI }) => voiceURI === voice) ?? voices[0];
    if (chosen) words.voice = chosen;
    words.lang = chosen?.lang ?? 'en';
    synth.speak(words);
  }, [text, voice, voices]);
  useEffect(() => {
    if (!on) return;
    say();
    return () => speech()?.cancel();
  }, [on, say]);
  return say;
};
