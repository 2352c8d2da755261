import { useState } from 'react';
import { Button, ChoiceChips, Dialog, LengthField, TextField, toast } from '../../kit/index.ts';
import type { SpecimenEdits } from './change-specimen.ts';
import type { GridReading, GridRow } from './grid-rows.ts';
import { ReadChoice } from './read-choice.tsx';

const PINS: Readonly<Record<string, 'flat' | 'pins'>> = { true: 'pins', false: 'flat' };

/** What a whole row shares: its length, its place, how it was read. */
export const RowSheet = ({
  row,
  edits,
  onClose,
}: {
  row: GridRow;
  edits: SpecimenEdits;
  onClose: () => void;
}) => {
  const ids = Object.values(row.cells).map(({ id }) => id);
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
      {row.cells.dried && (
        <ChoiceChips
          label="It dried"
          value={PINS[`${row.cells.dried.pinned}`] ?? null}
          readOnly={edits.readOnly}
          onChange={(how) =>
            editAll((reading) => {
              if (reading.state === 'dried') reading.pinned = how === 'pins';
            })
          }
          choices={[
            { value: 'flat', label: 'Laid flat' },
            { value: 'pins', label: 'On pins' },
          ]}
        />
      )}
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
