import { useState } from 'react';
import {
  Button,
  ChoiceChips,
  Dialog,
  IconButton,
  ParsedField,
  SectionFaults,
  toast,
  useLengths,
} from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { addSize, freeSize, removeSize, renameSize } from './change-pattern.ts';

/** Which size is being knit. */
export const SizeChoice = () => {
  const { record, change, readOnly } = useGarment();
  const { length } = useLengths();
  const { sizes, chosen, measurements } = record.pattern;
  const [editing, setEditing] = useState(false);
  const first = measurements.find(({ values }) => values.some((value) => value !== null));
  const labelOf = (size: string, at: number): string => {
    const value = first?.values[at];
    return value == null ? size : `${size}: ${length(value)}`;
  };
  return (
    <>
      {sizes.length > 1 && (
        <ChoiceChips
          label="Size you knit"
          hint={first && `Each with its ${(first.name || 'first measurement').toLowerCase()}.`}
          value={chosen ?? null}
          onChange={(size) =>
            change((draft) => {
              draft.pattern.chosen = size;
            })
          }
          choices={sizes.map((size, at) => ({ value: size, label: labelOf(size, at) }))}
          readOnly={readOnly}
        />
      )}
      {!readOnly && (
        <div className="df-row">
          <Button look="quiet" icon="pen" onPress={() => setEditing(true)}>
            Names of sizes, add a size
          </Button>
        </div>
      )}
      <SectionFaults prefix="pattern.sizes" />
      <SectionFaults prefix="pattern.chosen" />
      {editing && <SizesSheet onClose={() => setEditing(false)} />}
    </>
  );
};

const SizesSheet = ({ onClose }: { onClose: () => void }) => {
  const { record, change, undo } = useGarment();
  const { sizes } = record.pattern;
  const remove = (at: number): void => {
    change((draft) => removeSize(draft.pattern, at));
    toast(`Size ${sizes[at]} removed with its numbers.`, undo);
  };
  return (
    <Dialog
      title="Sizes of the pattern"
      onClose={onClose}
      foot={
        <>
          <Button
            icon="add"
            onPress={() => change((draft) => addSize(draft.pattern, freeSize(draft.pattern.sizes)))}
          >
            Add a size
          </Button>
          <Button look="main" onPress={onClose}>
            Done
          </Button>
        </>
      }
    >
      <ul className="pt-sizes">
        {sizes.map((size, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a size is its place; its name is what changes here
          <li key={at}>
            <SizeName at={at} />
            {sizes.length > 1 && (
              <IconButton icon="bin" label={`Remove size ${size}`} onPress={() => remove(at)} />
            )}
          </li>
        ))}
      </ul>
    </Dialog>
  );
};

const SizeName = ({ at }: { at: number }) => {
  const { record, change } = useGarment();
  const { sizes } = record.pattern;
  return (
    <ParsedField<string>
      label={`Size ${at + 1}`}
      path={`pattern/sizes/${at}`}
      keys="text"
      value={sizes[at] ?? null}
      print={(label) => label}
      parse={(text) => {
        const label = text.trim().slice(0, 200);
        const taken = sizes.some((other, i) => i !== at && other === label);
        if (!taken) return { ok: true, value: label };
        return {
          ok: false,
          faults: [
            {
              code: 'duplicate-size',
              field: 'size',
              given: text,
              problem: 'another size has this name',
              mend: 'Give each size a name of its own.',
            },
          ],
        };
      }}
      onCommit={(label) =>
        label !== null && change((draft) => renameSize(draft.pattern, at, label))
      }
    />
  );
};
