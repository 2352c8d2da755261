import {
  announce,
  Button,
  ChoiceChips,
  FaultList,
  Notice,
  TextField,
  toast,
  useUnitWord,
  useWords,
} from '../../kit/index.ts';
import { newId, useDraftText, useGarment } from '../../store/index.ts';
import { mergeGauge, mergeReading, newSizes } from './merge-reading.ts';
import { ReadGauge } from './read-gauge.tsx';
import { LeftOut, ReadTable } from './read-table.tsx';
import { ReadText } from './read-text.tsx';
import { mainGauge } from './reading.ts';
import { type Reading, useReading } from './use-reading.ts';

/** Letters: a book of patterns. Browsers drop what is pasted beyond it. */
const LONGEST = 200_000;

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
      {reading.text.length >= LONGEST && (
        <Notice tone="wrong">
          The box is full: what came after its last line is not in it. Paste the rest when this is
          taken over.
        </Notice>
      )}
      {reading.text.trim() !== '' && <WhatWasRead reading={reading} onTaken={onTaken} />}
    </div>
  );
};

const WhatWasRead = ({ reading, onTaken }: { reading: Reading; onTaken: () => void }) => {
  const { read, table, bareUnit, mends, mend } = reading;
  const centimetres = useUnitWord('centimetres');
  return (
    <div className="pt-read">
      <ReadText text={read} table={table} />
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
      <ReadGauge reading={reading} />
      {table.rows.length > 0 && (
        <>
          <ReadTable reading={reading} />
          <LeftOut reading={reading} />
        </>
      )}
      {(table.rows.length > 0 || mainGauge(table, mends) !== null) && (
        <TakeOver reading={reading} onTaken={onTaken} />
      )}
    </div>
  );
};

const rowsAs = (count: number): string => `${count} measurement${count === 1 ? '' : 's'}`;

const TakeOver = ({ reading, onTaken }: { reading: Reading; onTaken: () => void }) => {
  const { record, change, undo } = useGarment();
  const { text, setText, table, rows, misprints, mends } = reading;
  const centimetres = useUnitWord('centimetres');
  const say = useWords();
  const [, setTypedGauge] = useDraftText('pattern/gauge');
  const count = rows.filter(({ out }) => !out).length;
  const gauge = mainGauge(table, mends);
  const what = [count > 0 ? rowsAs(count) : [], gauge ? `the ${say('gauge')}` : []]
    .flat()
    .join(' and ');
  const added = newSizes(record.pattern, table);
  const take = (): void => {
    change((draft) => {
      if (count > 0) mergeReading(draft, table, rows, newId);
      if (gauge) mergeGauge(draft.pattern, gauge);
    });
    if (gauge) setTypedGauge(null);
    setText(null);
    onTaken();
    announce(`Taken over: ${what}.`);
    toast(`Taken over: ${what}.`, () => {
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
          isDisabled={what === '' || table.faults.length > 0}
          onPress={take}
        >
          Take over {what || rowsAs(0)}
        </Button>
        <Button look="quiet" onPress={() => setText(null)}>
          Clear the box
        </Button>
      </div>
    </>
  );
};
