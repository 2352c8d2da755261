import type { Misprint } from '@dryflat/engine/garment';
import { useState } from 'react';
import {
  Button,
  Dialog,
  FaultList,
  IconButton,
  Notice,
  Select,
  useLandmarkName,
  useLengths,
} from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { MisprintChoice } from './misprint-choice.tsx';
import { OWN_PLACE, usePlaceOptions } from './place-options.ts';
import { cellKey, type ReadRow } from './reading.ts';
import { type GridRow, SizeGrid } from './size-grid.tsx';
import type { Reading } from './use-reading.ts';

const SPANS = { flat: 'laid flat', around: 'all the way around' } as const;

/** What was read, every cell open to correction before it is taken over. */
export const ReadTable = ({ reading }: { reading: Reading }) => {
  const { chosen } = useGarment().record.pattern;
  const { table, rows, mends, mend } = reading;
  const [open, setOpen] = useState<string | null>(null);
  const opened = rows.find(({ key }) => key === open);
  const mendCells = (row: ReadRow, cells: ReadonlyMap<number, number | null>): void => {
    const keyed = [...cells].map(([at, mm]) => [cellKey(row.key, at, row.row.cells[at]), mm]);
    mend({ values: { ...mends.values, ...Object.fromEntries(keyed) } });
  };
  const mendCell = (row: ReadRow, at: number, valueMm: number | null): void =>
    mendCells(row, new Map([[at, valueMm]]));
  const misprintsOf = (index: number): Misprint[] =>
    table.misprints.filter((each) => each.row === index);
  const gridRow = (row: ReadRow, index: number): GridRow => ({
    key: row.key,
    name: row.row.name,
    values: row.values,
    facts: <Facts row={row} />,
    tools: (
      <IconButton icon="pen" label={`More of ${row.row.name}`} onPress={() => setOpen(row.key)} />
    ),
    pathAt: (at) => `pattern/paste/${cellKey(row.key, at, row.row.cells[at])}`,
    onValue: (at, valueMm) => mendCell(row, at, valueMm),
    below: (
      <div className="pt-below">
        {misprintsOf(index).map((misprint) => (
          <MisprintChoice
            key={misprint.size}
            misprint={misprint}
            name={row.row.name}
            size={table.sizes[misprint.size] ?? ''}
            valueMm={
              mends.values[cellKey(row.key, misprint.size, row.row.cells[misprint.size])] ?? null
            }
            onChange={(valueMm) => mendCell(row, misprint.size, valueMm)}
          />
        ))}
        <RowFaults row={row} />
        <Ranges row={row} sizes={table.sizes} onMiddle={(middles) => mendCells(row, middles)} />
        {row.landmark === OWN_PLACE && <PlaceChoice row={row} reading={reading} />}
      </div>
    ),
  });
  const doubtful = new Set(
    reading.misprints.map(({ row, size }) => `${rows[row]?.key ?? ''}/${size}`),
  );
  return (
    <>
      <SizeGrid
        label="What was read"
        sizes={table.sizes}
        chosen={chosen !== undefined && table.sizes.includes(chosen) ? chosen : undefined}
        rows={rows.flatMap((row, at) => (row.out ? [] : [gridRow(row, at)]))}
        doubtful={doubtful}
      />
      {opened && <ReadRowSheet row={opened} reading={reading} onClose={() => setOpen(null)} />}
    </>
  );
};

/** The place that it was taken for, and flat or around where the text says so. */
const Facts = ({ row: { row, landmark } }: { row: ReadRow }) => {
  const place = useLandmarkName()(landmark);
  const facts = [
    landmark === OWN_PLACE || sameWords(place, row.name) ? null : place.toLowerCase(),
    row.span ? SPANS[row.span] : null,
  ];
  return facts.filter((fact) => fact !== null).join(' · ');
};

const sameWords = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** What is wrong with a row as it was read. */
const RowFaults = ({ row: { row } }: { row: ReadRow }) => {
  const { sentence } = useLengths();
  const told = row.faults.map((each) => ({
    ...each,
    field: '',
    problem: sentence(each.problem),
    mend: sentence(each.mend),
  }));
  return <FaultList faults={told} />;
};

/** Ranges such as 34–36 are no single number: their middle is offered. */
const Ranges = ({
  row,
  sizes,
  onMiddle,
}: {
  row: ReadRow;
  sizes: readonly string[];
  onMiddle: (middles: ReadonlyMap<number, number>) => void;
}) => {
  const lengths = useLengths();
  const open = sizes.flatMap((size, at) => {
    const range = row.row.cells[at]?.range ?? null;
    return range === null || row.values[at] !== null ? [] : [{ size, at, range }];
  });
  if (open.length === 0) return null;
  return (
    <Notice tone="unsure">
      <p>
        Printed as a range:{' '}
        {open
          .map(({ size, range }) => `size ${size}, ${lengths.range(range[0], range[1])}`)
          .join('; ')}
        . Type one number for each, or take the middle.
      </p>
      <Button
        onPress={() =>
          onMiddle(new Map(open.map(({ at, range }) => [at, (range[0] + range[1]) / 2])))
        }
      >
        Take the middle of each
      </Button>
    </Notice>
  );
};

/** Which place of the garment the row is; guessed from its name until the knitter says otherwise. */
const PlaceChoice = ({ row, reading: { mends, mend } }: { row: ReadRow; reading: Reading }) => (
  <Select
    label={`Where is ${row.row.name}?`}
    value={row.landmark}
    onChange={(landmark) => mend({ landmarks: { ...mends.landmarks, [row.key]: landmark } })}
    options={usePlaceOptions()}
  />
);

const ReadRowSheet = ({
  row,
  reading,
  onClose,
}: {
  row: ReadRow;
  reading: Reading;
  onClose: () => void;
}) => {
  const { mends, mend } = reading;
  return (
    <Dialog
      title={row.row.name}
      onClose={onClose}
      foot={
        <>
          <Button
            look="quiet"
            onPress={() => {
              mend({ out: { ...mends.out, [row.key]: true } });
              onClose();
            }}
          >
            Leave it out
          </Button>
          <Button look="main" onPress={onClose}>
            Done
          </Button>
        </>
      }
    >
      <PlaceChoice row={row} reading={reading} />
    </Dialog>
  );
};

/** Rows that stay out of the pattern, each with the way back in. */
export const LeftOut = ({ reading: { rows, mends, mend } }: { reading: Reading }) => {
  const out = rows.filter((row) => row.out);
  return (
    out.length > 0 && (
      <ul className="pt-out">
        {out.map((row) => (
          <li key={row.key}>
            <span>
              <b>{row.row.name}</b>{' '}
              {row.row.measures === 'body'
                ? 'is about the body, not the garment, and stays out.'
                : 'stays out.'}
            </span>
            <Button look="quiet" onPress={() => mend({ out: { ...mends.out, [row.key]: false } })}>
              Put in<span className="df-unseen"> {row.row.name}</span>
            </Button>
          </li>
        ))}
      </ul>
    )
  );
};
