import { type BodyStart, bodyFromTable } from '@dryflat/engine/garment';
import { useState } from 'react';
import { Button, ChoiceChips, Dialog, Notice, Select, toast, useLengths } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { bodyPlacesFor, findBodyPlace } from './body-places.ts';
import { startFromTable } from './change-wearer.ts';
import { publisherOf, standingOf, tablesFor } from './table-words.ts';

/** Offers published sizes where no tape is at hand. */
export const TableStart = () => {
  const { record, readOnly } = useGarment();
  const [open, setOpen] = useState(false);
  const { first, later } = bodyPlacesFor(record.kind);
  const places = [...first, ...later];
  if (readOnly || tablesFor(record.wearer.group, places).length === 0) return null;
  return (
    <>
      <div className="df-row">
        <Button onPress={() => setOpen(true)}>No tape at hand? Start from a size table</Button>
      </div>
      {open && <TableDialog places={places} onClose={() => setOpen(false)} />}
    </>
  );
};

const TableDialog = ({ places, onClose }: { places: string[]; onClose: () => void }) => {
  const { record, change, undo } = useGarment();
  const tables = tablesFor(record.wearer.group, places);
  const [tableId, setTable] = useState(tables[0]?.id ?? '');
  const table = tables.find(({ id }) => id === tableId) ?? tables[0];
  const [size, setSize] = useState<string | null>(null);
  const chosen = size !== null && table?.sizes.includes(size) ? size : null;
  const read = table && chosen !== null ? bodyFromTable(table.id, chosen) : null;
  const starts = read?.ok ? read.value.filter(({ body }) => places.includes(body)) : [];
  const take = (): void => {
    if (!table || chosen === null) return;
    let taken = 0;
    change((draft) => {
      taken = startFromTable(draft, starts, { table: table.id, size: chosen }, places);
    });
    onClose();
    toast(
      taken === 0
        ? 'Nothing taken over: every place there is measured already.'
        : `${taken} taken over as a start.`,
      taken === 0 ? undefined : undo,
    );
  };
  return (
    <Dialog
      title="Start from a size table"
      onClose={onClose}
      foot={
        <Button look="main" isDisabled={starts.length === 0} onPress={take}>
          Start from these
        </Button>
      }
    >
      <Notice tone="unsure">
        A table is a start, not a body. Replace each number by your own tape when you can; what you
        have measured stays.
      </Notice>
      <Select
        label="Table"
        value={table?.id ?? null}
        onChange={setTable}
        options={tables.map(({ id, name }) => ({ value: id, label: name }))}
      />
      {table && (
        <ChoiceChips
          label="Size"
          value={chosen}
          onChange={setSize}
          choices={table.sizes.map((each) => ({ value: each, label: each }))}
        />
      )}
      {starts.length > 0 && <Starts starts={starts} />}
      {table && <p className="df-soft">{table.note}</p>}
    </Dialog>
  );
};

const Starts = ({ starts }: { starts: readonly BodyStart[] }) => {
  const { range, length } = useLengths();
  return (
    <dl className="we-starts">
      {starts.map((each) => (
        <div key={each.body}>
          <dt>{findBodyPlace(each.body)?.name ?? each.name}</dt>
          <dd>
            <strong>
              {each.low === each.high ? length(each.low) : range(each.low, each.high)}
            </strong>{' '}
            <span className="df-soft">
              {publisherOf(each)}, {standingOf(each)}
            </span>
          </dd>
        </div>
      ))}
    </dl>
  );
};
