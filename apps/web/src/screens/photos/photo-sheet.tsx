import type { Photo } from '@dryflat/record';
import { Button, ChoiceChips, Dialog, TextField } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { printDay } from '../result/today.ts';
import { WHEN_CHOICES } from './photo-words.ts';
import type { Photos } from './use-photos.ts';

/** One photo, as large as there is room, with what is said of it. */
export const PhotoSheet = ({
  photo,
  photos,
  onClose,
}: {
  photo: Photo;
  photos: Photos;
  onClose: () => void;
}) => {
  const { readOnly } = useGarment();
  const { id } = photo;
  return (
    <Dialog
      title={photo.on === undefined ? 'Photo' : `Photo of ${printDay(photo.on)}`}
      onClose={onClose}
      foot={
        <Button
          icon="bin"
          isDisabled={readOnly}
          onPress={() => {
            onClose();
            photos.remove(id);
          }}
        >
          Remove this photo
        </Button>
      }
    >
      <img
        className="df-photo-large"
        src={`data:${photo.type};base64,${photo.data}`}
        width={photo.widthPx}
        height={photo.heightPx}
        alt={photo.caption || 'The photo itself'}
      />
      <TextField
        label="Caption"
        value={photo.caption}
        readOnly={readOnly}
        onChange={(caption) =>
          photos.edit(id, (draft) => {
            draft.caption = caption;
          })
        }
      />
      <ChoiceChips
        label="Taken"
        value={photo.when}
        choices={WHEN_CHOICES}
        readOnly={readOnly}
        onChange={(when) =>
          photos.edit(id, (draft) => {
            draft.when = when;
          })
        }
      />
    </Dialog>
  );
};
