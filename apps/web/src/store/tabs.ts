import * as Y from 'yjs';

/**
 * Two tabs on one document see each other's edits at once. Each tab also writes to storage, where
 * updates merge, so a browser without this channel loses nothing: it is only late.
 */
export const shareBetweenTabs = (name: string, doc: Y.Doc): (() => void) => {
  if (typeof BroadcastChannel === 'undefined') return () => {};
  const channel = new BroadcastChannel(name);
  const send = (update: Uint8Array, origin: unknown): void => {
    if (origin !== channel) channel.postMessage(update);
  };
  channel.onmessage = (event: MessageEvent<Uint8Array>) => Y.applyUpdate(doc, event.data, channel);
  doc.on('update', send);
  return () => {
    doc.off('update', send);
    channel.close();
  };
};
