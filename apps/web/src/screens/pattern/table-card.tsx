import type { PatternMeasurement } from '@dryflat/record';
import { useState } from 'react';
import {
  Button,
  Card,
  IconButton,
  SectionFaults,
  Select,
  TextField,
  useLandmarkName,
} from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { addRow, rowOf } from './change-pattern.ts';
import { OWN_PLACE, usePlaceOptions } from './place-options.ts';
import { RowFacts } from './row-facts.tsx';
import { QuestionsAhead, RowQuestion } from './row-question.tsx';
import { RowSheet } from './row-sheet.tsx';
import { type GridRow, SizeGrid } from './size-grid.tsx';
import { SizeChoice } from './sizes-card.tsx';

/** The pattern's finished measurements, every number in place. */
export const TableCard = () => {
  const { record, change } = useGarment();
  const nameOf = useLandmarkName();
  const [open, setOpen] = useState<string | null>(null);
  const { sizes, chosen, measurements } = record.pattern;
  const opened = measurements.find(({ id }) => id === open);
  const gridRow = (row: PatternMeasurement): GridRow => ({
    key: row.id,
    name: row.name || nameOf(row.landmark),
    values: row.values,
    facts: <RowFacts row={row} />,
    tools: (
      <IconButton
        icon="pen"
        label={`More of ${row.name || nameOf(row.landmark)}`}
        onPress={() => setOpen(row.id)}
      />
    ),
    pathAt: (at) => `pattern/measurements/${row.id}/values/${sizes[at]}`,
    below: <RowBelow row={row} />,
    onValue: (at, valueMm) =>
      change((draft) => {
        rowOf(draft, row.id).values[at] = valueMm;
      }),
  });
  return (
    <Card title="Finished sizes">
      <QuestionsAhead />
      <SizeChoice />
      <SizeGrid
        label="Finished sizes, all measurements"
        sizes={sizes}
        chosen={chosen}
        rows={measurements.map(gridRow)}
      />
      <AddRow onAdded={setOpen} />
      {opened && <RowSheet row={opened} onClose={() => setOpen(null)} />}
    </Card>
  );
};

/** Asked or in place there; the others are told beside the row. */
const SHOWN_IN_PLACE = ['question-span', 'landmark-without-direction'];

const RowBelow = ({ row }: { row: PatternMeasurement }) => {
  const at = useGarment().record.pattern.measurements.findIndex(({ id }) => id === row.id);
  return (
    <div className="pt-below">
      <RowQuestion row={row} />
      <SectionFaults prefix={`pattern.measurements[${at}]`} except={SHOWN_IN_PLACE} />
    </div>
  );
};

/** Adds a measurement by hand: a place of this garment, or one's own with its name. */
export const AddRow = ({ onAdded }: { onAdded?: (id: string) => void }) => {
  const { record, change, readOnly } = useGarment();
  const nameOf = useLandmarkName();
  const taken = record.pattern.measurements.map(({ landmark }) => landmark);
  const options = usePlaceOptions(taken);
  const [picked, setPicked] = useState<string | null>(null);
  const [name, setName] = useState('');
  if (readOnly) return null;
  const all = options.flatMap((group) => group.options.map(({ value }) => value));
  const landmark = picked !== null && all.includes(picked) ? picked : (all[0] ?? OWN_PLACE);
  const own = landmark === OWN_PLACE;
  const add = (): void => {
    const id = newId();
    const called = own ? name.trim() || 'Place of your own' : nameOf(landmark);
    change((draft) => addRow(draft, { id, name: called, landmark }));
    setName('');
    if (own) onAdded?.(id);
  };
  return (
    <div className="pt-add">
      <Select
        label="Add a measurement by hand"
        value={landmark}
        onChange={setPicked}
        options={options}
      />
      {own && <TextField label="Its name" value={name} onChange={setName} />}
      <Button icon="add" onPress={add}>
        Add it
      </Button>
    </div>
  );
};
