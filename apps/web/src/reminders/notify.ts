/** Whether this browser shows notes of a page, and has been told that it may. */
export type Leave = 'granted' | 'denied' | 'default' | 'cannot';

export const leaveNow = (): Leave =>
  typeof Notification === 'undefined' ? 'cannot' : Notification.permission;

/** Asks for leave; only ever on a press. */
export const askLeave = async (): Promise<Leave> =>
  leaveNow() === 'cannot' ? 'cannot' : Notification.requestPermission();

/** Shows a note. Phones allow it only through the app's worker, desks also from the page. */
export const notify = async (title: string, body: string, tag: string): Promise<boolean> => {
  if (leaveNow() !== 'granted') return false;
  try {
    const registered = await navigator.serviceWorker?.getRegistration();
    // It may still be installing: only an active one shows notes.
    if (registered) {
      const worker = await navigator.serviceWorker.ready;
      await worker.showNotification(title, { body, tag, icon: '/icon-192.png' });
    } else new Notification(title, { body, tag });
    return true;
  } catch {
    return false;
  }
};
