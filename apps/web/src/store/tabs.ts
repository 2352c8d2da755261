import * as Y from 'yjs';
import { isUpdate } from './updates.ts';

/**
 * Two tabs on one document see each other's edits at once. Each tab also writes to storage, where
 * updates merge, so a browser without this channel loses nothing: it is only late.
 */
export const shareBetweenTabs = (name: string, doc: Y.Doc): (() => void) => {
  const channel = channelOf(name);
  if (channel === null) return () => {};
  const send = (update: Uint8Array, origin: unknown): void => {
    if (origin !== channel) channel.postMessage(update);
  };
  // A tab with another version of the app may say anything.
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (isUpdate(data)) Y.applyUpdate(doc, data, channel);
  };
  doc.on('update', send);
  return () => {
    doc.off('update', send);
    channel.close();
  };
};

/** Null where the browser has none, or has none for this page. */
const channelOf = (name: string): BroadcastChannel | null => {
  try {
    return new BroadcastChannel(name);
  } catch {
    return null;
  }
};
