import type { Specimen } from '@dryflat/record';
import { useState } from 'react';
import { Button, Dialog, LengthField, TextField, toast } from '../../kit/index.ts';
import type { SpecimenEdits } from './change-specimen.ts';
import type { GridReading, GridRow } from './grid-rows.ts';
import { PinsChoice } from './pins-choice.tsx';
import { ReadChoice } from './read-choice.tsx';
import { ReadingFaults } from './reading-notices.tsx';

/** What a whole row shares: its length, its place, how it was read. */
export const RowSheet = ({
  specimen,
  row,
  edits,
  onClose,
}: {
  specimen: Specimen;
  row: GridRow;
  edits: SpecimenEdits;
  onClose: () => void;
}) => {
  const cells = Object.values(row.cells);
  const ids = cells.map(({ id }) => id);
  /** What says that it dried on pins without having dried comes first: it has to be taken back. */
  const pins = cells.find((each) => each.state !== 'dried' && each.pinned) ?? row.cells.dried;
  const editAll = (recipe: (reading: GridReading) => void): void =>
    edits.edit((specimen) => {
      for (const reading of specimen.readings)
        if (ids.includes(reading.id)) recipe(reading as GridReading);
    });
  const [place, setPlace] = useState(row.first.place ?? '');
  /** Set on leaving: half a word might be the place of another row, and the two would become one. */
  const close = (): void => {
    if (place.trim() !== (row.first.place ?? ''))
      editAll((reading) => {
        if (place.trim() === '') delete reading.place;
        else reading.place = place.trim();
      });
    onClose();
  };
  const remove = (): void => {
    edits.remove(ids);
    onClose();
    toast(ids.length === 1 ? 'The reading is removed.' : 'The readings are removed.', edits.undo);
  };
  return (
    <Dialog
      title="This reading"
      onClose={close}
      foot={
        <>
          <Button icon="bin" onPress={remove} isDisabled={edits.readOnly}>
            Remove it
          </Button>
          <Button look="main" onPress={close}>
            Done
          </Button>
        </>
      }
    >
      {row.first.kind === 'count' && (
        <LengthField
          label="Counted over"
          path={`evidence/rows/${row.id}/overMm`}
          valueMm={row.first.overMm}
          onCommit={(overMm) => {
            if (overMm !== null)
              editAll((reading) => {
                if (reading.kind === 'count') reading.overMm = overMm;
              });
          }}
        />
      )}
      {pins && (
        <PinsChoice
          pinned={pins.pinned}
          readOnly={edits.readOnly}
          onChange={(pinned) =>
            editAll((reading) => {
              if (reading.state === 'dried') reading.pinned = pinned;
              else delete reading.pinned;
            })
          }
        />
      )}
      <ReadingFaults specimen={specimen} readings={ids} field=".pinned" />
      <TextField label="Where on it" value={place} readOnly={edits.readOnly} onChange={setPlace} />
      <ReadChoice
        value={row.first.read}
        readOnly={edits.readOnly}
        onChange={(read) =>
          editAll((reading) => {
            reading.read = read;
          })
        }
      />
    </Dialog>
  );
};
