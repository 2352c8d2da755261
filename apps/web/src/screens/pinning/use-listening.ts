import { useEffect, useRef, useState } from 'react';
import { type Spoken, spokenIn, wordsIn } from './heard.ts';

/** The part of speech recognition that is used here; browsers have it under two names or not at all. */
interface Recognition {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  onresult:
    | ((event: {
        readonly resultIndex: number;
        readonly results: ArrayLike<ArrayLike<object>>;
      }) => void)
    | null;
  onerror: ((event: { readonly error: string }) => void) | null;
  onend: (() => void) | null;
  start: () => void;
  abort: () => void;
}

const recognition = (): (new () => Recognition) | null => {
  const all = globalThis as unknown as Record<string, new () => Recognition>;
  return all.SpeechRecognition ?? all.webkitSpeechRecognition ?? null;
};

export const canListen = (): boolean => recognition() !== null;

const SAYS: Readonly<Record<string, string>> = {
  network: 'Listening needs the network in this browser, and there is none now.',
  'not-allowed': 'The browser does not let this page use the microphone.',
  'service-not-allowed': 'The browser does not let this page listen.',
  'audio-capture': 'No microphone was found.',
};
/** Errors that pass by themselves. */
const PASSING = new Set(['no-speech', 'aborted']);
/** A service that ended is asked again after this, ms. Chosen. */
const AGAIN_AFTER = 400;

/** Listens for words while `on`; gives what went wrong, null while it listens. */
export const useListening = (on: boolean, hear: (word: Spoken) => void): string | null => {
  const [wrong, setWrong] = useState<string | null>(null);
  const latest = useRef(hear);
  latest.current = hear;
  useEffect(() => {
    const Recogniser = recognition();
    if (!on || Recogniser === null) return;
    const ear = new Recogniser();
    ear.lang = 'en';
    ear.continuous = true;
    ear.interimResults = false;
    let stopped = false;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const start = (): void => {
      if (stopped) return;
      if (!navigator.onLine) {
        setWrong(SAYS.network!);
        return;
      }
      try {
        ear.start();
        setWrong(null);
      } catch {
        // It was still listening.
      }
    };
    ear.onresult = ({ results, resultIndex }) => {
      // Our own voice is not an answer.
      if (globalThis.speechSynthesis?.speaking) return;
      for (let k = resultIndex; k < results.length; k++) {
        const word = spokenIn(wordsIn(results[k]?.[0] ?? {}));
        if (word) latest.current(word);
      }
    };
    ear.onerror = ({ error }) => {
      if (PASSING.has(error)) return;
      stopped = error !== 'network';
      setWrong(SAYS[error] ?? 'Listening does not work in this browser now.');
    };
    ear.onend = () => {
      timer = setTimeout(start, AGAIN_AFTER);
    };
    start();
    addEventListener('online', start);
    return () => {
      stopped = true;
      clearTimeout(timer);
      removeEventListener('online', start);
      ear.onend = null;
      ear.abort();
      setWrong(null);
    };
  }, [on]);
  return wrong;
};
