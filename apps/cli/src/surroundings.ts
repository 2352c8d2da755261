export type NewFile = readonly [path: string, content: string | Uint8Array];

/** Which of several files could not be written, and which are written nevertheless. */
export interface NotWritten {
  readonly path: string;
  /** The system's, with its code. */
  readonly error: unknown;
  readonly written: readonly string[];
}

/** Everything outside the program that a command may touch; tests hand in their own. */
export interface Surroundings {
  /** Text of a file, or of standard input for `-`. Rejects with the system's error. */
  readonly read: (path: string) => Promise<string>;
  /**
   * Writes files whole, all or none; null once that is done. What stands in the way has the system's code,
   * `EEXIST` where a file is there and `replace` is false, and `ETWICE` where two of them are one.
   */
  readonly write: (files: readonly NewFile[], replace: boolean) => Promise<NotWritten | null>;
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
