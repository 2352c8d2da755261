import { type KeyboardEvent, type ReactNode, useEffect, useState } from 'react';
import { LengthField, Select, useLengths } from '../../kit/index.ts';
import { useWide } from './use-wide.ts';

/** One measurement over all sizes. */
export interface GridRow {
  readonly key: string;
  readonly name: string;
  readonly values: readonly (number | null)[];
  /** What is known of it, in a few words under the name. */
  readonly facts: ReactNode;
  /** Buttons of the row. */
  readonly tools?: ReactNode;
  /** Shown under the row: faults, choices. */
  readonly below?: ReactNode;
  readonly pathAt: (size: number) => string;
  readonly onValue: (size: number, valueMm: number | null) => void;
}

export interface SizeGridProps {
  /** Names the table for those who do not see it. */
  label: string;
  sizes: readonly string[];
  rows: readonly GridRow[];
  /** The size that matters most: in sight first on a phone, marked at a desk. */
  chosen?: string | undefined;
  /** Cells that are in doubt, as `key/size`. */
  doubtful?: ReadonlySet<string>;
}

/** Every number in place: all sizes side by side at a desk, one size large on a phone. */
export const SizeGrid = (props: SizeGridProps) =>
  useWide() ? <DeskGrid {...props} /> : <PhoneGrid {...props} />;

const Cell = ({ row, at, size }: { row: GridRow; at: number; size: string }) => (
  <LengthField
    label={`${row.name}, size ${size}`}
    labelUnseen
    path={row.pathAt(at)}
    valueMm={row.values[at]}
    onCommit={(valueMm) => row.onValue(at, valueMm)}
  />
);

const DeskGrid = ({ label, sizes, rows, chosen, doubtful }: SizeGridProps) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls has to be reached by keyboard
  <section className="pt-scroll" tabIndex={0} aria-label={label}>
    <table className="pt-table" onKeyDown={moveBetweenRows}>
      <thead>
        <tr>
          <th scope="col">Measurement</th>
          {sizes.map((size) => (
            <th key={size} scope="col" data-chosen={size === chosen || undefined}>
              {size}
            </th>
          ))}
          <td />
        </tr>
      </thead>
      {rows.map((row) => (
        <tbody key={row.key}>
          <tr data-row>
            <th scope="row">
              {row.name}
              <div className="pt-facts">{row.facts}</div>
            </th>
            {sizes.map((size, at) => (
              <td
                key={size}
                data-chosen={size === chosen || undefined}
                data-doubt={doubtful?.has(`${row.key}/${at}`) || undefined}
              >
                <Cell row={row} at={at} size={size} />
              </td>
            ))}
            <td>{row.tools}</td>
          </tr>
          {row.below && (
            <tr>
              <td colSpan={sizes.length + 2}>{row.below}</td>
            </tr>
          )}
        </tbody>
      ))}
    </table>
  </section>
);

/** Up, down and Enter go to the same size of the row above or below, as in any table. */
const moveBetweenRows = (event: KeyboardEvent<HTMLTableElement>): void => {
  const step = { ArrowUp: -1, ArrowDown: 1, Enter: 1 }[event.key];
  const field = event.target;
  if (step === undefined || !(field instanceof HTMLInputElement) || field.type !== 'text') return;
  const column = field.closest('td')?.cellIndex ?? 0;
  const rows = [...event.currentTarget.querySelectorAll<HTMLTableRowElement>('tr[data-row]')];
  const row = rows[rows.findIndex((each) => each.contains(field)) + step];
  const next = row?.cells[column]?.querySelector('input');
  if (!next) return;
  event.preventDefault();
  next.focus();
};

const PhoneGrid = ({ label, sizes, rows, chosen, doubtful }: SizeGridProps) => {
  const [seen, setSeen] = useState(chosen ?? sizes[0] ?? '');
  useEffect(() => {
    if (chosen !== undefined) setSeen(chosen);
  }, [chosen]);
  const at = Math.max(sizes.indexOf(seen), 0);
  const size = sizes[at] ?? '';
  return (
    <section className="pt-phone" aria-label={label}>
      {sizes.length > 1 && (
        <Select
          label="Size in sight"
          value={size}
          onChange={setSeen}
          options={sizes.map((each) => ({ value: each, label: each }))}
        />
      )}
      <ul>
        {rows.map((row) => (
          <li key={row.key} className="pt-row">
            <div className="pt-row-head">
              <div>
                <h3>{row.name}</h3>
                <div className="pt-facts">{row.facts}</div>
              </div>
              {row.tools}
            </div>
            <div
              className="pt-big"
              data-doubt={doubtful?.has(`${row.key}/${at}`) || undefined}
              key={size}
            >
              <Cell row={row} at={at} size={size} />
            </div>
            {sizes.length > 1 && <Others row={row} at={at} />}
            {row.below}
          </li>
        ))}
      </ul>
    </section>
  );
};

/** The whole line of sizes in small, with the one above it marked. */
const Others = ({ row, at }: { row: GridRow; at: number }) => {
  const { bare } = useLengths();
  return (
    <p className="pt-line" aria-hidden="true">
      {row.values.map((value, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: values have no name but their size's place
        <span key={i} data-here={i === at || undefined}>
          {value === null ? '–' : bare(value)}
        </span>
      ))}
    </p>
  );
};
