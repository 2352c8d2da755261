import type { Specimen } from '@dryflat/record';
import { useId, useState } from 'react';
import { CountField, formatCount, IconButton, LengthField, useLengths } from '../../kit/index.ts';
import { newId } from '../../store/index.ts';
import { STATE_NAMES } from '../result/state-names.ts';
import type { SpecimenEdits } from './change-specimen.ts';
import {
  type GridReading,
  type GridRow,
  type GridState,
  gridRows,
  halfStitchPercent,
  statesOf,
} from './grid-rows.ts';
import { ReadingNotices } from './reading-notices.tsx';
import { RowSheet } from './row-sheet.tsx';

interface GridProps {
  specimen: Specimen;
  edits: SpecimenEdits;
}

/** Counts and whole extents, before and after the wash side by side. */
export const ReadingGrid = ({ specimen, edits }: GridProps) => {
  const [open, setOpen] = useState<string | null>(null);
  const rows = gridRows(specimen.readings);
  const states = statesOf(specimen);
  const opened = rows.find(({ id }) => id === open);
  if (rows.length === 0) return null;
  return (
    <>
      <ul className="df-grid">
        {rows.map((row) => (
          <li key={row.id}>
            <Row {...{ specimen, edits, row, states }} onOpen={() => setOpen(row.id)} />
          </li>
        ))}
      </ul>
      {opened && <RowSheet {...{ specimen, edits }} row={opened} onClose={() => setOpen(null)} />}
    </>
  );
};

const Row = ({
  specimen,
  edits,
  row,
  states,
  onOpen,
}: GridProps & { row: GridRow; states: readonly GridState[]; onOpen: () => void }) => {
  const title = useRowTitle()(row);
  const heading = useId();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a legend cannot share its line with a button
    <div role="group" className="df-group" aria-labelledby={heading}>
      <div className="df-grid-head">
        <h4 id={heading}>{title}</h4>
        <IconButton icon="pen" label={`Change or remove: ${title}`} onPress={onOpen} />
      </div>
      <div className="df-grid-cells">
        {states.map((state) => (
          <Cell key={state} {...{ specimen, edits, row, state }} />
        ))}
      </div>
      <HalfStitch row={row} />
      <ReadingNotices specimen={specimen} readings={Object.values(row.cells).map(({ id }) => id)} />
    </div>
  );
};

/** `Stitches over 10 cm, at the hem`. */
const useRowTitle = () => {
  const { length } = useLengths();
  return ({ first }: GridRow): string => {
    const place = first.place ? `, ${first.place}` : '';
    const pulled = first.read === 'stretched' ? ', pulled: an upper bound' : '';
    const what = first.direction === 'width' ? 'Stitches' : 'Rows';
    if (first.kind === 'count') return `${what} over ${length(first.overMm)}${place}${pulled}`;
    const across = first.direction === 'width' ? 'Whole width' : 'Whole length';
    const known =
      first.count === undefined ? '' : ` of ${formatCount(first.count)} ${what.toLowerCase()}`;
    return `${across}${known}${place}${pulled}`;
  };
};

const Cell = ({ specimen, edits, row, state }: GridProps & { row: GridRow; state: GridState }) => {
  const reading = row.cells[state];
  const { label: name } = STATE_NAMES[state];
  const label = reading?.pinned ? `${name}, on pins` : name;
  const path = reading
    ? `evidence/${specimen.id}/readings/${reading.id}`
    : `evidence/${specimen.id}/rows/${row.id}/${state}`;
  const commit = (value: number | null): void => {
    if (value === null) emptied(row, state, edits);
    else if (reading)
      edits.editReading(reading.id, (draft) => {
        if (draft.kind === 'count') draft.count = value;
        if (draft.kind === 'extent') draft.mm = value;
      });
    else edits.add({ ...besideFirst(row, state, value), id: newId() });
  };
  if (row.first.kind === 'count')
    return (
      <CountField
        label={label}
        path={`${path}/count`}
        value={reading?.kind === 'count' ? reading.count : null}
        onCommit={commit}
      />
    );
  return (
    <LengthField
      label={label}
      path={`${path}/mm`}
      valueMm={reading?.kind === 'extent' ? reading.mm : null}
      onCommit={commit}
    />
  );
};

/** What a number in another state of the same row is; of pins nobody said anything there. */
const besideFirst = ({ first }: GridRow, state: GridState, value: number): GridReading => {
  const { pinned: _, ...shared } = first;
  return shared.kind === 'count'
    ? { ...shared, state, count: value }
    : { ...shared, state, mm: value };
};

/** An emptied cell goes, but never the last of its row: that would take the row from under the hand. */
const emptied = (row: GridRow, state: GridState, edits: SpecimenEdits): void => {
  const reading = row.cells[state];
  if (reading && Object.keys(row.cells).length > 1) edits.remove([reading.id]);
};

/** What half a stitch more or less would do to this count. */
const HalfStitch = ({ row }: { row: GridRow }) => {
  const { length } = useLengths();
  const { first } = row;
  if (first.kind !== 'count') return null;
  const what = first.direction === 'width' ? 'stitch' : 'row';
  const many = first.direction === 'width' ? 'stitches' : 'rows';
  return (
    <p className="df-soft">
      Half a {what} over {length(first.overMm)} at {formatCount(first.count)} {many} is{' '}
      {halfStitchPercent(first.count).toFixed(1)}&nbsp;%.
    </p>
  );
};
