import { useEffect } from 'react';
import { toast } from '../kit/index.ts';
import { useDeviceNote } from '../store/index.ts';
import { notify } from './notify.ts';
import { dueOf, REMINDERS, readReminders } from './reminders.ts';

/** Looks this often whether something is due, ms. */
const EVERY = 20_000;

/** Tells what is due as long as the app is open, whatever is on the page; once per page. */
export const ReminderKeeper = () => {
  const [note, setNote] = useDeviceNote(REMINDERS);
  useEffect(() => {
    const all = readReminders(note);
    if (all.length === 0) return;
    const look = (): void => {
      const { due, missed, ahead } = dueOf(all, Date.now());
      if (ahead.length === all.length) return;
      // Put away first: another page of the app does not tell it again.
      setNote(JSON.stringify(ahead));
      for (const { title, body, of } of due) {
        void notify(title, body, of);
        toast(title);
      }
      if (missed.length > 0)
        toast(`Due while the app was closed: ${missed.map(({ title }) => title).join('; ')}`);
    };
    look();
    const timer = setInterval(look, EVERY);
    return () => clearInterval(timer);
  }, [note, setNote]);
  return null;
};
