import { useEffect, useState } from 'react';

/** `kept`: the screen stays on. `cannot`: the browser has no way. `refused`: it has, and says no. */
export type Awake = 'kept' | 'cannot' | 'refused';

/** Keeps the screen on while this is shown; asks again whenever the page comes back into sight. */
export const useAwake = (): Awake => {
  const [awake, setAwake] = useState<Awake>(() => ('wakeLock' in navigator ? 'kept' : 'cannot'));
  useEffect(() => {
    if (!('wakeLock' in navigator)) return;
    let lock: WakeLockSentinel | null = null;
    let gone = false;
    const hold = async (): Promise<void> => {
      if (document.visibilityState !== 'visible') return;
      try {
        const got = await navigator.wakeLock.request('screen');
        if (gone) return void got.release();
        lock = got;
        setAwake('kept');
      } catch {
        if (!gone) setAwake('refused');
      }
    };
    const again = (): void => void hold();
    again();
    document.addEventListener('visibilitychange', again);
    return () => {
      gone = true;
      document.removeEventListener('visibilitychange', again);
      void lock?.release();
    };
  }, []);
  return awake;
};

export const AWAKE_WORDS: Readonly<Record<Awake, string>> = {
  kept: 'The screen stays on while you pin.',
  cannot:
    'This browser cannot keep the screen on: set the device itself to wait longer before it goes dark.',
  refused:
    'The device does not let the screen stay on, perhaps to save its battery: set it to wait longer before it goes dark.',
};
