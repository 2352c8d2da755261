/** Where a database is opened, and what is to be told of it. */
export interface Source {
  readonly factory: IDBFactory;
  readonly opened: () => void;
  readonly refused: () => void;
}

/** The frame that databases come from, once the page itself gets none any more. */
let frame: HTMLIFrameElement | null = null;
let isTrusted = true;

/** Throws where the browser has none. */
export const databaseFactory = (): IDBFactory => frame?.contentWindow?.indexedDB ?? indexedDB;

/** The browser closed a database by itself. */
export const distrustFactory = (): void => {
  isTrusted = false;
};

/**
 * Where the next database comes from. When a disk runs full, Chromium may throw out what a page keeps and then
 * open nothing for that page any more, space or not, until it is loaded anew, which would lose what was typed.
 * A frame that is made since is served. Each try has one of its own, for removing it ends every request of it.
 */
export const databaseSource = (): Source => {
  if (isTrusted) return { factory: databaseFactory(), opened: () => {}, refused: () => {} };
  const made = document.createElement('iframe');
  made.hidden = true;
  document.body.append(made);
  return {
    factory: made.contentWindow?.indexedDB ?? indexedDB,
    opened: () => {
      frame = made;
      isTrusted = true;
    },
    refused: () => made.remove(),
  };
};
