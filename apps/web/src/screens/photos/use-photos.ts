import type { Fault } from '@dryflat/engine/units';
import type { GarmentRecord, Photo } from '@dryflat/record';
import { useState } from 'react';
import { toast } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { today } from '../result/today.ts';
import { MOST_PHOTOS } from './photo-words.ts';
import { takePhoto } from './shrink.ts';

const tooMany: Fault = {
  code: 'too-many-photos',
  field: 'Photo',
  given: `${MOST_PHOTOS} photos`,
  problem: `a garment holds ${MOST_PHOTOS} photos`,
  mend: 'Remove one first.',
};

export interface Photos {
  readonly faults: readonly Fault[];
  readonly busy: boolean;
  readonly take: (files: FileList | null) => Promise<void>;
  readonly edit: (id: string, recipe: (photo: Photo) => void) => void;
  readonly remove: (id: string) => void;
}

const photosOf = (draft: GarmentRecord): Photo[] => {
  draft.photos ??= [];
  return draft.photos;
};

/** Takes pictures into the record of the open garment, changes what is said of them, removes them. */
export const usePhotos = (when: Photo['when']): Photos => {
  const { record, change, undo } = useGarment();
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const [busy, setBusy] = useState(false);
  const count = record.photos?.length ?? 0;
  const take = async (files: FileList | null): Promise<void> => {
    const chosen = [...(files ?? [])];
    const room = MOST_PHOTOS - count;
    const wrong: Fault[] = chosen.length > room ? [tooMany] : [];
    setBusy(true);
    for (const file of chosen.slice(0, room)) {
      const picture = await takePhoto(file);
      if (!picture.ok) wrong.push(...picture.faults);
      else
        change((draft) => {
          photosOf(draft).push({ id: newId(), when, on: today(), caption: '', ...picture.value });
        });
    }
    setBusy(false);
    setFaults(wrong);
  };
  return {
    faults,
    busy,
    take,
    edit: (id, recipe) =>
      change((draft) => {
        const found = photosOf(draft).find((photo) => photo.id === id);
        if (found) recipe(found);
      }),
    remove: (id) => {
      change((draft) => {
        draft.photos = photosOf(draft).filter((photo) => photo.id !== id);
        if (draft.photos.length === 0) delete draft.photos;
        if (draft.report) draft.report.photos = draft.report.photos.filter((each) => each !== id);
      });
      toast('The photo is removed.', undo);
    },
  };
};
