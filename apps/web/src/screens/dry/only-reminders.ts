import { useEffect } from 'react';
import { REMINDERS, readReminders } from '../../reminders/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useDeviceNote } from '../../store/index.ts';

/** Of this garment only the drying that is under way reminds; what is dry, or was removed, is silent. */
export const useOnlyReminders = (garment: string, underWay: string | null): void => {
  const [note, setNote] = useDeviceNote(REMINDERS);
  useEffect(() => {
    const all = readReminders(note);
    const here = garmentHash(garment, 'dry');
    const left = all.filter(({ hash, of }) => hash !== here || of === underWay);
    if (left.length < all.length) setNote(JSON.stringify(left));
  }, [note, setNote, garment, underWay]);
};
