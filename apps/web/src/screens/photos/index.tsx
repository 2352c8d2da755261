import type { Fault } from '@dryflat/engine/units';
import { type GarmentRecord, type Photo, photoFaults } from '@dryflat/record';
import { useMemo, useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { Button, Card, FaultList } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { printDay } from '../result/today.ts';
import { PhotoSheet } from './photo-sheet.tsx';
import { WHEN_WORDS } from './photo-words.ts';
import './photos.css';
import { type Photos, usePhotos } from './use-photos.ts';

/** What a photo is called by those who do not see it. */
const photoName = ({ caption, when, on }: Photo): string =>
  [caption || 'Photo', WHEN_WORDS[when].toLowerCase(), on && printDay(on)]
    .filter(Boolean)
    .join(', ');

/** What is wrong with a photo, by the name of the photo. */
const faultsIn = (record: GarmentRecord): Fault[] =>
  (record.photos ?? []).flatMap((photo) =>
    photoFaults({ ...record, photos: [photo] }).map((fault) => ({
      ...fault,
      field: photoName(photo),
      given: '',
    })),
  );

/**
 * The photos of a garment in a strip, and the way to add one: `when` is what is noted with a new one.
 * Needs the open garment around it.
 */
export const PhotoSection = ({ when }: { when: Photo['when'] }) => {
  const { record, readOnly } = useGarment();
  const photos = usePhotos(when);
  const [open, setOpen] = useState<string | null>(null);
  const all = record.photos ?? [];
  const wrong = useMemo(() => faultsIn(record), [record]);
  const shown = all.find(({ id }) => id === open);
  return (
    <Card title="Photos">
      {all.length > 0 && (
        <ul className="df-photos">
          {all.map((photo) => (
            <li key={photo.id}>
              <Thumb photo={photo} onPress={() => setOpen(photo.id)} />
            </li>
          ))}
        </ul>
      )}
      <FaultList faults={[...wrong, ...photos.faults]} />
      {!readOnly && <AddPhoto photos={photos} when={when} />}
      <p className="df-soft">
        Made small and kept in this garment’s record; where it was taken and with which camera is
        taken out.
      </p>
      {shown && <PhotoSheet photo={shown} photos={photos} onClose={() => setOpen(null)} />}
    </Card>
  );
};

const AddPhoto = ({ photos, when }: { photos: Photos; when: Photo['when'] }) => (
  <div className="df-row">
    <FileTrigger
      acceptedFileTypes={['image/*']}
      defaultCamera="environment"
      onSelect={(files) => void photos.take(files)}
    >
      <Button isDisabled={photos.busy}>
        Take a photo<span className="df-unseen">, {WHEN_WORDS[when].toLowerCase()}</span>
      </Button>
    </FileTrigger>
    <FileTrigger
      acceptedFileTypes={['image/*']}
      allowsMultiple
      onSelect={(files) => void photos.take(files)}
    >
      <Button isDisabled={photos.busy}>
        Choose a picture<span className="df-unseen">, {WHEN_WORDS[when].toLowerCase()}</span>
      </Button>
    </FileTrigger>
    <span role="status">{photos.busy && 'Making it small…'}</span>
  </div>
);

const Thumb = ({ photo, onPress }: { photo: Photo; onPress: () => void }) => (
  <button type="button" className="df-photo" onClick={onPress}>
    <img
      src={`data:${photo.type};base64,${photo.data}`}
      width={photo.widthPx}
      height={photo.heightPx}
      alt={photoName(photo)}
    />
    <span aria-hidden="true">{photo.caption || WHEN_WORDS[photo.when]}</span>
  </button>
);
