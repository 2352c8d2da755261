import type { Entry } from './updates.ts';
import type { Standing } from './writer.ts';

/** How safely this device keeps what was typed: `kept` only while all of it is acknowledged. */
export type Keeping =
  | 'kept'
  | 'kept-until-space-runs-short'
  | 'writing'
  | 'gone'
  | 'failing'
  | 'full'
  | 'not-kept';

/** `late`: its database has not answered yet. `refused`: it does not open; both are tried further. */
export type Opening = 'open' | 'late' | 'refused';

export interface Health {
  readonly standing: Standing;
  readonly opening: Opening;
  /** Entries of its database that cannot be read. They stay where they are. */
  readonly aside: readonly Entry[];
}

const SOUND: Health = { standing: 'written', opening: 'open', aside: [] };

/**
 * Milliseconds for which everything has to be kept before that is said again: longer than from one key to the
 * next, so that the line stands still while somebody types.
 */
const CALM = 500;

const docs = new Map<string, Health>();
const listeners = new Set<() => void>();
let keepsNothing = false;
let persists = true;
let said: Keeping = 'kept';
let calming: ReturnType<typeof setTimeout> | undefined;

export const onHealth = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** How it stands with a document of this device. */
export const healthOf = (name: string): Health => docs.get(name) ?? SOUND;

export const noteHealth = (name: string, news: Partial<Health>): void => {
  docs.set(name, { ...healthOf(name), ...news });
  tell();
};

/** A document that is no longer on this device. */
export const forgetHealth = (name: string): void => {
  docs.delete(name);
  tell();
};

/** The browser offers no storage: everything is gone when the tab closes. */
export const noteKeepsNothing = (): void => {
  keepsNothing = true;
  tell();
};

/** How safely everything that is open is kept: as its worst document is. */
export const keepingNow = (): Keeping => said;

/** What she types may be lost when the page is closed. */
export const isAtRisk = (keeping: Keeping): boolean =>
  ['gone', 'failing', 'full', 'not-kept'].includes(keeping);

const WORST_FIRST = ['full', 'failing', 'gone', 'waiting'] as const;

const worst = (): Keeping => {
  if (keepsNothing) return 'not-kept';
  const standings = new Set([...docs.values()].map(({ standing }) => standing));
  const bad = WORST_FIRST.find((each) => standings.has(each));
  if (bad !== undefined) return bad === 'waiting' ? 'writing' : bad;
  return persists ? 'kept' : 'kept-until-space-runs-short';
};

const tell = (): void => {
  clearTimeout(calming);
  const now = worst();
  const isCalm = now === 'kept' || now === 'kept-until-space-runs-short';
  if (isCalm && said === 'writing') calming = setTimeout(say, CALM, now);
  else said = now;
  for (const listener of listeners) listener();
};

const say = (keeping: Keeping): void => {
  said = keeping;
  for (const listener of listeners) listener();
};

/** Asks the browser not to throw the garments away when space runs short. */
export const askToPersist = (): Promise<void> => notePersists(() => navigator.storage?.persist?.());

/** Whether it was asked so on an earlier visit, and agreed. */
export const askWhetherPersists = (): Promise<void> =>
  notePersists(() => navigator.storage?.persisted?.());

const notePersists = async (asked: () => Promise<boolean> | undefined): Promise<void> => {
  try {
    persists = (await asked()) ?? false;
  } catch {
    persists = false;
  }
  tell();
};
