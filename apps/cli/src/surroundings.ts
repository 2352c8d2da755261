/** Everything outside the program that a command may touch; tests hand in their own. */
export interface Surroundings {
  /** Text of a file, or of standard input for `-`. Rejects with the system's error. */
  readonly read: (path: string) => Promise<string>;
  /** What lies at a path; rejects with the system's error where nothing does. */
  readonly look: (path: string) => Promise<'file' | 'folder'>;
  /** Writes a file whole or not at all; rejects with `EEXIST` where one is there and `replace` is false. */
  readonly write: (path: string, content: string | Uint8Array, replace: boolean) => Promise<void>;
  /** A font file of an installed package, by its path in it. */
  readonly font: (file: string) => Promise<Uint8Array>;
  /** From 0 up to but not including 1. */
  readonly random: () => number;
  /** The day by the clock on the wall, ISO 8601. */
  readonly today: () => string;
  /** Whether standard output shows colours. */
  readonly colours: boolean;
}

/** What a command ends with. Its texts are printed by the caller, and nothing else is. */
export interface Ending {
  /** 0 done, 2 something given cannot be used. Bugs throw, and end with 1. */
  readonly code: 0 | 2;
  readonly out: string;
  readonly err: string;
}

export const done = (out: string, err = ''): Ending => ({ code: 0, out, err });
