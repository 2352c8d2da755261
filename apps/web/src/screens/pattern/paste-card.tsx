import {
  announce,
  Button,
  ChoiceChips,
  Disclosure,
  FaultList,
  Notice,
  TextField,
  toast,
  useUnitWord,
} from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { mergeReading, newSizes } from './merge-reading.ts';
import { LeftOut, ReadTable } from './read-table.tsx';
import { ReadText } from './read-text.tsx';
import { type Reading, useReading } from './use-reading.ts';

/** Finds room for a book's page of lines. */
const LONGEST = 20_000;

/** A box for the pattern's lines or a table, read while it is typed; nothing is kept until it is taken over. */
export const PasteBox = ({ onTaken }: { onTaken: () => void }) => {
  const { readOnly } = useGarment();
  const reading = useReading();
  if (readOnly) return null;
  return (
    <div className="pt-paste">
      <TextField
        label="Size lines, or a table from a spreadsheet"
        hint={'Copy them as they are, such as: Finished chest: 34 (38, 42)" / 86 (96, 106) cm'}
        value={reading.text}
        onChange={reading.setText}
        maxLength={LONGEST}
        long
      />
      {reading.text.trim() !== '' && <WhatWasRead reading={reading} onTaken={onTaken} />}
    </div>
  );
};

const WhatWasRead = ({ reading, onTaken }: { reading: Reading; onTaken: () => void }) => {
  const { text, table, bareUnit, mend } = reading;
  const centimetres = useUnitWord('centimetres');
  return (
    <div className="pt-read">
      {table.unread.length > 0 ? (
        <ReadText text={text} table={table} />
      ) : (
        <Disclosure title="All of it was read. See how">
          <ReadText text={text} table={table} />
        </Disclosure>
      )}
      {bareUnit && (
        <ChoiceChips
          label="Numbers without a unit are"
          value={bareUnit}
          onChange={(unit) => mend({ unit })}
          choices={[
            { value: 'in', label: 'inches' },
            { value: 'cm', label: centimetres },
          ]}
        />
      )}
      {table.rows.length > 0 && (
        <>
          <ReadTable reading={reading} />
          <LeftOut reading={reading} />
          <TakeOver reading={reading} onTaken={onTaken} />
        </>
      )}
    </div>
  );
};

const rowsAs = (count: number): string => `${count} measurement${count === 1 ? '' : 's'}`;

const TakeOver = ({ reading, onTaken }: { reading: Reading; onTaken: () => void }) => {
  const { record, change, undo } = useGarment();
  const { text, setText, table, rows, misprints } = reading;
  const centimetres = useUnitWord('centimetres');
  const count = rows.filter(({ out }) => !out).length;
  const added = newSizes(record.pattern, table);
  const take = (): void => {
    change((draft) => {
      mergeReading(draft, table, rows, newId);
    });
    setText(null);
    onTaken();
    announce(`${rowsAs(count)} taken over.`);
    toast(`${rowsAs(count)} taken over.`, () => {
      undo();
      setText(text);
    });
  };
  return (
    <>
      <FaultList faults={table.faults} />
      {added.length > 0 && (
        <Notice tone="unsure">
          The pattern has {record.pattern.sizes.length} sizes already. New beside them:{' '}
          {added.join(', ')}.
        </Notice>
      )}
      {misprints.length > 0 && (
        <Notice tone="unsure">
          {misprints.length === 1 ? 'One number disagrees' : `${misprints.length} numbers disagree`}{' '}
          with itself in inches and {centimetres}. Say above which is meant, or take it over as it
          stands and mend it later.
        </Notice>
      )}
      <div className="df-row">
        <Button
          look="main"
          icon="done"
          isDisabled={count === 0 || table.faults.length > 0}
          onPress={take}
        >
          Take over {rowsAs(count)}
        </Button>
        <Button look="quiet" onPress={() => setText(null)}>
          Clear the box
        </Button>
      </div>
    </>
  );
};
