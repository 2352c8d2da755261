import { type GarmentRecord, type Measured, questionsOf } from '@dryflat/record';
import { useId, useMemo, useState } from 'react';
import {
  Icon,
  IconButton,
  LengthField,
  Select,
  SpanChoice,
  toast,
  useLengths,
} from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { newId, useDrafts, useGarment } from '../../store/index.ts';
import { goesAround, targetText } from './pattern-says.ts';
import './result.css';
import { STATE_NAMES, type TapeState } from './state-names.ts';
import { draftedRows, type TapeRow, tapeRows, withPending } from './tape-rows.ts';

export interface TapeListProps {
  /** Names the list by ids, for what is typed: `pieces/p1`. */
  path: string;
  /** The list's place in the record, as faults and questions name it: `pieces[0].measured`. */
  field: string;
  tapes: readonly Measured[];
  /** States that are offered; others are shown where they were measured. */
  states: readonly TapeState[];
  /** Every place of the pattern stands open for this state, and for no other. */
  ready?: TapeState | null;
  edit: (recipe: (tapes: Measured[]) => void) => void;
}

/** Tape measurements by place and state; flat or around is asked wherever both are possible. */
export const TapeList = (props: TapeListProps) => {
  const { record, readOnly } = useGarment();
  const [asked, setAsked] = useState<readonly string[]>([]);
  const drafted = draftedRows(Object.keys(useDrafts()), props.path);
  const [dropped, setDropped] = useState<readonly string[]>([]);
  const places = record.pattern.measurements;
  const open = props.ready ? places.map(({ id }) => id).filter((id) => !dropped.includes(id)) : [];
  const rows = withPending(tapeRows(props.tapes), [...drafted, ...open, ...asked]);
  if (places.length === 0) return <NoPlaces id={record.id} />;
  return (
    <>
      <ul className="df-grid">
        {rows.map((row) => (
          <li key={`${row.measurement} ${row.nth}`}>
            <Row
              {...props}
              row={row}
              onDrop={() => {
                setAsked(asked.filter((each) => each !== row.measurement));
                setDropped([...dropped, row.measurement]);
              }}
            />
          </li>
        ))}
      </ul>
      <Select
        label="Measure another place"
        value={null}
        readOnly={readOnly}
        placeholder="Choose the place…"
        onChange={(measurement) => setAsked([...asked, measurement])}
        options={places
          .filter(({ id }) => !rows.some((row) => row.measurement === id))
          .map(({ id, name }) => ({ value: id, label: name }))}
      />
    </>
  );
};

const NoPlaces = ({ id }: { id: string }) => (
  <div className="df-mend">
    <p>The pattern gives no measurements yet, so there is nothing to hold a tape against.</p>
    <a className="df-button" href={garmentHash(id, 'pattern')}>
      <Icon name="pattern" />
      Enter them under Pattern
    </a>
  </div>
);

const Row = (props: TapeListProps & { row: TapeRow; onDrop: () => void }) => {
  const { record, readOnly, undo } = useGarment();
  const { length } = useLengths();
  const heading = useId();
  const { row, edit, onDrop, states } = props;
  const place = record.pattern.measurements.find(({ id }) => id === row.measurement);
  const name = place?.name ?? row.measurement;
  const taken = Object.values(row.cells);
  const remove = (): void => {
    const ids = taken.map(({ id }) => id);
    edit((tapes) => {
      tapes.splice(0, tapes.length, ...tapes.filter(({ id }) => !ids.includes(id)));
    });
    onDrop();
    if (ids.length > 0) toast(`${name} is removed.`, undo);
  };
  const offered = props.ready ? [props.ready] : states;
  const shown = new Set<TapeState>([...offered, ...taken.map(({ state }) => state)]);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a legend cannot share its line with a button
    <div role="group" className="df-group" aria-labelledby={heading}>
      <div className="df-grid-head">
        <h4 id={heading}>{name}</h4>
        <IconButton icon="bin" label={`Remove ${name}`} onPress={remove} isDisabled={readOnly} />
      </div>
      {place && <p className="df-soft">{targetText(record, place, length)}</p>}
      <div className="df-grid-cells">
        {[...shown].map((state) => (
          <Cell key={state} {...props} state={state} />
        ))}
      </div>
      {place && goesAround(place) && taken.length > 0 && <Span {...props} name={name} />}
    </div>
  );
};

const Cell = ({ path, row, state, edit }: TapeListProps & { row: TapeRow; state: TapeState }) => {
  const tape = row.cells[state];
  const taken = Object.values(row.cells);
  const span = taken[0]?.span;
  const commit = (mm: number | null): void =>
    edit((tapes) => {
      const at = tapes.findIndex(({ id }) => id === tape?.id);
      const there = tapes[at];
      if (mm === null && there) tapes.splice(at, 1);
      else if (mm !== null && there) there.mm = mm;
      else if (mm !== null)
        tapes.push({ id: newId(), measurement: row.measurement, state, mm, ...(span && { span }) });
    });
  return (
    <LengthField
      label={STATE_NAMES[state].label}
      path={tape ? `${path}/${tape.id}/mm` : `${path}/rows/${row.measurement}/${state}`}
      valueMm={tape?.mm}
      // The last one of a row is taken away by its bin, not from under the hand that types.
      onCommit={(mm) => {
        if (mm !== null || taken.length > 1) commit(mm);
      }}
    />
  );
};

const Span = ({
  row,
  field,
  tapes,
  edit,
  name,
}: TapeListProps & { row: TapeRow; name: string }) => {
  const { record } = useGarment();
  const { sentence } = useLengths();
  const taken = Object.values(row.cells);
  const question = useQuestion(record, field, tapes, taken);
  return (
    <SpanChoice
      label={`${name}: how was it measured?`}
      value={taken.every(({ span }) => span === taken[0]?.span) ? taken[0]?.span : null}
      hint={question && sentence(question.why)}
      flatMeans={question && sentence(question.flat.sentence)}
      aroundMeans={question && sentence(question.around.sentence)}
      onChange={(span) =>
        edit((draft) => {
          for (const tape of draft) if (taken.some(({ id }) => id === tape.id)) tape.span = span;
        })
      }
    />
  );
};

/** What each answer would mean, while it is not given. */
const useQuestion = (
  record: GarmentRecord,
  field: string,
  tapes: readonly Measured[],
  taken: readonly Measured[],
) =>
  useMemo(() => {
    const open = taken.find(({ span }) => span === undefined);
    const at = tapes.findIndex(({ id }) => id === open?.id);
    return at < 0
      ? undefined
      : questionsOf(record).find((each) => each.field === `${field}[${at}].span`);
  }, [record, field, tapes, taken]);
