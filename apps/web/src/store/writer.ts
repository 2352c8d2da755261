import { mergeUpdates } from 'yjs';

/** What became of a write. `full`: there was no space. `gone`: the document was deleted elsewhere. */
export type Outcome = 'written' | 'full' | 'failed' | 'gone';

/** How it stands with everything typed so far; `waiting` is for the moment that a write takes. */
export type Standing = 'written' | 'waiting' | 'full' | 'failing' | 'gone';

export interface Writer {
  /** Takes an edit and writes it as soon as no other write is under way. */
  readonly add: (update: Uint8Array) => void;
  /** Writes at once what is not acknowledged, whatever is under way: the page may be about to end. */
  readonly flush: () => void;
  /** Tries again now rather than after the pause. */
  readonly retry: () => void;
  /** What was acknowledged may be gone: nothing counts as kept until the whole document is written again. */
  readonly distrust: () => void;
  /** Ends it; what is under way is not heard of any more. */
  readonly stop: () => void;
}

export interface WriterParts {
  /** Settles once the device has acknowledged or refused it; never rejects. */
  readonly write: (update: Uint8Array) => Promise<Outcome>;
  /** The whole document as one update. */
  readonly whole: () => Uint8Array;
  /** Told each time that it changes. */
  readonly tell: (standing: Standing) => void;
}

/** Milliseconds between tries, doubled with each: one that failed by chance is over before it is told. */
const FIRST_PAUSE = 100;
/** No longer than she would wait for an answer. */
const LONGEST_PAUSE = 4_000;
/** Milliseconds after which a write without an answer counts as failing. */
const SLOW = 4_000;

/**
 * Writes a document's edits. Each write carries all that is not acknowledged, so that none stands on
 * another that was lost; after one that failed, and until one is acknowledged, it is the whole document.
 */
export const writer = ({ write, whole, tell }: WriterParts): Writer => {
  /** Edits so far, and how many of them are acknowledged. */
  let typed = 0;
  let safe = 0;
  /** The edits between, oldest first; not kept where the whole is written anyway. */
  let unsafe: Uint8Array[] = [];
  let wantsWhole = false;
  let underWay = 0;
  let refused = 0;
  let rest = FIRST_PAUSE;
  let last: Outcome = 'written';
  let slow = false;
  let told: Standing = 'written';
  let stopped = false;
  let pause: ReturnType<typeof setTimeout> | undefined;
  let patience: ReturnType<typeof setTimeout> | undefined;

  const standing = (): Standing => {
    if (safe === typed) return 'written';
    if (last === 'full' || last === 'gone') return last;
    return slow || refused > 1 ? 'failing' : 'waiting';
  };
  const say = (): void => {
    if (safe === typed) {
      clearTimeout(patience);
      patience = undefined;
      slow = false;
    } else
      patience ??= setTimeout(() => {
        slow = true;
        say();
      }, SLOW);
    const now = standing();
    if (now !== told) tell(now);
    told = now;
  };
  const send = (): void => {
    clearTimeout(pause);
    const [upTo, isWhole] = [typed, wantsWhole];
    underWay += 1;
    void write(isWhole ? whole() : mergeUpdates(unsafe)).then((outcome) => {
      if (stopped) return;
      underWay -= 1;
      // Once there is no space, a device may say only that it failed.
      if (outcome !== 'failed' || last !== 'full') last = outcome;
      if (outcome !== 'written') refuse();
      else if (isWhole || !wantsWhole) acknowledge(upTo, isWhole);
      next();
      say();
    });
  };
  const acknowledge = (upTo: number, isWhole: boolean): void => {
    refused = 0;
    rest = FIRST_PAUSE;
    if (isWhole) wantsWhole = typed > upTo;
    else unsafe = unsafe.slice(Math.max(0, upTo - safe));
    safe = Math.max(safe, upTo);
  };
  const refuse = (): void => {
    refused += 1;
    wantsWhole = true;
    unsafe = [];
    safe = 0;
  };
  const next = (): void => {
    if (safe === typed || underWay > 0 || last === 'gone') return;
    if (last === 'written') send();
    else
      pause = setTimeout(() => {
        rest = Math.min(LONGEST_PAUSE, 2 * rest);
        send();
      }, rest);
  };
  const sendIf = (may: boolean): void => {
    if (may && safe < typed && last !== 'gone' && !stopped) send();
  };

  return {
    add: (update) => {
      typed += 1;
      if (!wantsWhole) unsafe.push(update);
      sendIf(underWay === 0);
      say();
    },
    flush: () => sendIf(true),
    retry: () => sendIf(underWay === 0),
    distrust: () => {
      typed += 1;
      safe = 0;
      wantsWhole = true;
      unsafe = [];
      sendIf(underWay === 0);
      say();
    },
    stop: () => {
      clearTimeout(pause);
      clearTimeout(patience);
      stopped = true;
    },
  };
};
