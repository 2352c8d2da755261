import { openDatabase } from './database.ts';
import { distrustFactory } from './factory.ts';

/** An open database, opened again where the browser closed it. */
export interface Connection {
  /** The database if it is open, for what cannot wait. */
  readonly now: () => IDBDatabase | null;
  /** Opens it where it is not open; null where the browser keeps nothing. Rejects, or hangs, as the browser does. */
  readonly open: () => Promise<IDBDatabase | null>;
  /** It was deleted in another tab; it is never opened again, for that would bring it back. */
  readonly isDeleted: () => boolean;
  /** Lets go of one that does not work; the next `open` starts anew. */
  readonly drop: () => void;
  /** Closes it for good. */
  readonly end: () => void;
}

/** `onLost`: the browser closed the database by itself, perhaps with all that was in it. */
export const connectionTo = (name: string, onLost: () => void): Connection => {
  let db: IDBDatabase | null = null;
  let opening: Promise<IDBDatabase | null> | null = null;
  let worked = false;
  let deleted = false;
  let ended = false;

  const letGo = (of: IDBDatabase | null): void => {
    of?.close();
    if (of !== db) return;
    db = null;
    opening = null;
  };
  const opened = (made: IDBDatabase | null): IDBDatabase | null => {
    if (made === null) {
      // A browser that kept something before does not keep nothing now.
      if (worked) throw new Error(`${name} is not opened again`);
      return null;
    }
    worked = true;
    db = made;
    made.onversionchange = ({ newVersion }) => {
      deleted ||= newVersion === null;
      letGo(made);
    };
    made.onclose = () => {
      letGo(made);
      distrustFactory();
      onLost();
    };
    if (ended) letGo(made);
    return made;
  };
  const drop = (): void => letGo(db);
  return {
    now: () => db,
    open: () => {
      opening ??= openDatabase(name).then(opened);
      return opening;
    },
    isDeleted: () => deleted,
    drop,
    end: () => {
      ended = true;
      drop();
    },
  };
};
