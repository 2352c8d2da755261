import { useCallback, useMemo } from 'react';
import { useDeviceNote } from '../../store/index.ts';

/** How steps are heard and gone through on this device. */
export interface Hands {
  /** Steps are read aloud. */
  readonly aloud: boolean;
  /** Address of the chosen voice; empty for the device's own choice. */
  readonly voice: string;
  /** Spoken words go through the steps. */
  readonly listening: boolean;
  /** Keys and clickers go through the steps. */
  readonly keys: boolean;
}

export const USUAL_HANDS: Hands = { aloud: false, voice: '', listening: false, keys: true };

/** What was kept; anything that cannot be read is as usual. */
export const readHands = (text: string | null): Hands => {
  try {
    const kept: Partial<Record<keyof Hands, unknown>> = JSON.parse(text ?? '{}') ?? {};
    const flag = (key: 'aloud' | 'listening' | 'keys'): boolean =>
      typeof kept[key] === 'boolean' ? kept[key] : USUAL_HANDS[key];
    return {
      aloud: flag('aloud'),
      listening: flag('listening'),
      keys: flag('keys'),
      voice: typeof kept.voice === 'string' ? kept.voice : USUAL_HANDS.voice,
    };
  } catch {
    return USUAL_HANDS;
  }
};

export const useHands = (): [Hands, (part: Partial<Hands>) => void] => {
  const [text, note] = useDeviceNote('hands');
  const hands = useMemo(() => readHands(text), [text]);
  const change = useCallback(
    (part: Partial<Hands>) => note(JSON.stringify({ ...hands, ...part })),
    [hands, note],
  );
  return [hands, change];
};
