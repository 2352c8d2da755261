import { findLandmark } from '@dryflat/engine/garment';
import { STITCHES, type Stitch } from '@dryflat/engine/textile';
import type { GarmentRecord, PatternMeasurement } from '@dryflat/record';
import {
  Button,
  ChoiceChips,
  CountField,
  Dialog,
  FieldGroup,
  Select,
  SpanChoice,
  TextField,
  toast,
} from '../../kit/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import {
  hangingOn,
  mayGoAround,
  removeRow,
  rowOf,
  setCount,
  setLandmark,
} from './change-pattern.ts';
import { OWN_PLACE, usePlaceOptions } from './place-options.ts';
import { stitchName } from './stitch-names.ts';

/** Everything of a row beside its numbers. */
export const RowSheet = ({ row, onClose }: { row: PatternMeasurement; onClose: () => void }) => {
  const { change, readOnly } = useGarment();
  const { words } = useView();
  const options = usePlaceOptions();
  const known = findLandmark(row.landmark);
  const edit = (recipe: (row: PatternMeasurement, draft: GarmentRecord) => void): void =>
    change((draft) => recipe(rowOf(draft, row.id), draft));
  return (
    <Dialog
      title={row.name || 'A measurement'}
      onClose={onClose}
      foot={
        <>
          {!readOnly && <RemoveRow row={row} onClose={onClose} />}
          <Button look="main" onPress={onClose}>
            Done
          </Button>
        </>
      }
    >
      <TextField
        label="Name, as the pattern has it"
        value={row.name}
        onChange={(name) =>
          edit((each) => {
            each.name = name;
          })
        }
        readOnly={readOnly}
      />
      <Select
        label="Place on the garment"
        value={known ? row.landmark : OWN_PLACE}
        onChange={(landmark) => edit((each) => setLandmark(each, landmark))}
        options={options}
        readOnly={readOnly}
      />
      {!known && (
        <ChoiceChips
          label="Which way does it run?"
          value={row.direction ?? null}
          onChange={(direction) =>
            edit((each) => {
              each.direction = direction;
              if (direction === 'length') delete each.span;
            })
          }
          choices={[
            { value: 'width', label: 'Along a row' },
            { value: 'length', label: 'Up the rows' },
          ]}
          readOnly={readOnly}
        />
      )}
      {mayGoAround(row) && (
        <SpanChoice
          label="How is it measured?"
          value={row.span}
          onChange={(span) =>
            edit((each) => {
              each.span = span;
            })
          }
        />
      )}
      <ChoiceChips
        label="How is it reached?"
        value={row.worked}
        onChange={(worked) =>
          edit((each) => {
            each.worked = worked;
          })
        }
        choices={[
          { value: 'counted', label: 'Counted', note: 'The pattern says how many.' },
          { value: 'to-length', label: 'To length', note: 'Knit until the tape says so.' },
        ]}
        readOnly={readOnly}
      />
      <Select
        label="Knit in"
        value={row.stitch ?? ''}
        onChange={(stitch) =>
          edit((each) => {
            if (stitch === '') delete each.stitch;
            else each.stitch = stitch;
          })
        }
        options={[
          { value: '', label: 'The main stitch' },
          ...STITCHES.map((each: Stitch) => ({ value: each, label: stitchName(each, words) })),
        ]}
        readOnly={readOnly}
      />
      {row.worked === 'counted' && <Counts row={row} />}
    </Dialog>
  );
};

const Counts = ({ row }: { row: PatternMeasurement }) => {
  const { record, change } = useGarment();
  const along = findLandmark(row.landmark)?.direction ?? row.direction;
  const what = along === 'length' ? 'Rows' : 'Stitches';
  const over = row.span === 'flat' ? ' of this one layer' : '';
  return (
    <FieldGroup legend={`${what}${over}, where the pattern prints them`}>
      <div className="pt-counts">
        {record.pattern.sizes.map((size, at) => (
          <CountField
            key={size}
            label={`Size ${size}`}
            path={`pattern/measurements/${row.id}/counts/${size}`}
            value={row.counts?.[at]}
            onCommit={(count) => change((draft) => setCount(rowOf(draft, row.id), at, count))}
          />
        ))}
      </div>
    </FieldGroup>
  );
};

const RemoveRow = ({ row, onClose }: { row: PatternMeasurement; onClose: () => void }) => {
  const { record, change, undo } = useGarment();
  const hanging = hangingOn(record, row.id);
  const remove = (): void => {
    onClose();
    change((draft) => removeRow(draft, row.id));
    const more =
      hanging === 0 ? '' : `, and ${hanging} tape reading${hanging === 1 ? '' : 's'} of it`;
    toast(`${row.name || 'The measurement'} removed${more}.`, undo);
  };
  return (
    <Button look="quiet" icon="bin" onPress={remove}>
      Remove
    </Button>
  );
};
