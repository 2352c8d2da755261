import { FORECAST_STATES } from '@dryflat/engine/fabric';
import type { Forecast, MeasurementForecast, Range } from '@dryflat/engine/garment';
import { formatLength, formatRange, mm } from '@dryflat/engine/units';
import type { Units } from '../faults.ts';
import type { Style } from './style.ts';
import { COLUMNS, padEnd, padStart, widthOf, wrap } from './text.ts';
import { STATE_WORDS } from './words.ts';

/** Numbers of the list of bases, by id, so that a measurement can point at what it stands on. */
export type Numbering = ReadonlyMap<string, number>;

const SHOWN_BASES = 4;
/** Where names would get fewer columns than this, the numbers stand closer. */
const NAME_EASY = 14;
const NAME_LEAST = 12;

/** In a column every centimetre shows its tenth, so that the points stand under each other. */
const withTenths = (text: string, unit: Units) =>
  unit === 'cm' ? text.replace(/\d+(\.\d)?/g, (each, tenth) => (tenth ? each : `${each}.0`)) : text;
const bare = (length: number, unit: Units) =>
  withTenths(formatLength(mm(length), { unit, bare: true }), unit);
const range = ({ p05Mm, p95Mm }: Range, unit: Units) =>
  withTenths(formatRange(p05Mm, p95Mm, unit, { bare: true }), unit);

/** `around [1 7 3 …]`: the span, and as many of the bases, strongest first, as the column holds. */
const standing = (row: MeasurementForecast, numbers: Numbering, width: number): string => {
  const span = row.direction === 'width' ? `${row.span} ` : '';
  const known = row.standsOn.flatMap((id) => numbers.get(id) ?? []);
  if (known.length === 0) return span.trim();
  const list = (shown: number) =>
    `${span}[${known.slice(0, shown).join(' ')}${shown < known.length ? ' …' : ''}]`;
  let shown = Math.min(known.length, SHOWN_BASES);
  while (shown > 1 && widthOf(list(shown)) > width) shown -= 1;
  return list(shown);
};

/** Cells of the two lines of a measurement, after its name. */
const cells = (row: MeasurementForecast, unit: Units): [string[], string[]] => [
  [
    row.targetMm === null ? '–' : bare(row.targetMm, unit),
    ...FORECAST_STATES.map((state) => bare(row.states[state].p50Mm, unit)),
  ],
  [
    row.pinnedMm === null ? '' : `→${bare(row.pinnedMm, unit)}`,
    ...FORECAST_STATES.map((state) => range(row.states[state], unit)),
  ],
];

interface Layout {
  readonly nameWidth: number;
  readonly widths: readonly number[];
  readonly gap: number;
}

const layoutOf = (rows: readonly string[][]): Layout => {
  const widths = columnWidths(rows);
  const left = (gap: number) => COLUMNS - widths.reduce((sum, width) => sum + width + gap, 0);
  const gap = left(2) >= NAME_EASY ? 2 : 1;
  return { nameWidth: Math.max(NAME_LEAST, left(gap)), widths, gap };
};

const HEADINGS = ['pattern', ...FORECAST_STATES.map((state) => STATE_WORDS[state])];

const columnWidths = (rows: readonly string[][]): number[] =>
  HEADINGS.map((heading, at) =>
    Math.max(widthOf(heading), ...rows.map((row) => widthOf(row[at] ?? ''))),
  );

const rightAligned = (row: readonly string[], { widths, gap }: Layout): string =>
  row.map((cell, at) => padStart(cell, (widths[at] ?? 0) + gap)).join('');

/** A name, broken where it has to be, then its standing; the numbers stand beside the first lines. */
const rowLines = (
  row: MeasurementForecast,
  [medians, ranges]: [string[], string[]],
  layout: Layout,
  numbers: Numbering,
  style: Style,
): string[] => {
  const { nameWidth } = layout;
  const name = wrap(row.name, nameWidth).map((line) => [line, style.strong] as const);
  const below = [standing(row, numbers, nameWidth), style.quiet] as const;
  const beside = [rightAligned(medians, layout), style.quiet(rightAligned(ranges, layout))];
  return [...name, below].map(([text, emphasis], at) => {
    const numbersHere = beside[at];
    return numbersHere === undefined
      ? emphasis(text)
      : emphasis(padEnd(text, nameWidth)) + numbersHere;
  });
};

/**
 * Two lines for each measurement, the states side by side: the likeliest number, and below it the
 * range that should hold nine times in ten, rounded outwards. An arrow leads to what the plan pins a
 * measurement to. Names are broken to fit 80 columns.
 */
export const measurementLines = (
  forecast: Forecast,
  numbers: Numbering,
  unit: Units,
  style: Style,
): string[] => {
  const rows = forecast.measurements.map((row) => [row, cells(row, unit)] as const);
  const layout = layoutOf(rows.flatMap(([, lines]) => lines));
  return [
    style.quiet(padEnd('', layout.nameWidth) + rightAligned(HEADINGS, layout)),
    ...rows.flatMap(([row, lines]) => rowLines(row, lines, layout, numbers, style)),
  ];
};
