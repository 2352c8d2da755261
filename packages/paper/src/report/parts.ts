import type { Telling, Units } from '../input/telling.ts';
import { columnText, gaugeWord, landmarkName, rangeText, unitName } from '../input/telling.ts';
import { factsOf } from './facts.ts';
import { countOf } from './gauge-text.ts';
import type { GotState } from './got.ts';
import type { Report, ReportPhoto, ReportRow, Told } from './report.ts';

/** A report as what stands in it, whatever it is written in. */
export type Part =
  | { readonly kind: 'heading'; readonly text: string; readonly level: 1 | 2 }
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'facts'; readonly rows: readonly (readonly [what: string, is: string])[] }
  | {
      readonly kind: 'table';
      readonly columns: readonly string[];
      /** The first cell names its row, the others are numbers. */
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: 'list'; readonly texts: readonly string[] }
  | { readonly kind: 'photo'; readonly photo: Report['photos'][number] };

export const STATE_WORDS: Readonly<Record<GotState, string>> = {
  asKnit: 'as knit',
  wet: 'wet',
  pinned: 'pinned',
  dried: 'dried',
  worn: 'worn',
  rewashed: 'rewashed',
};

const NONE = '–';

const section = (text: string, parts: readonly Part[]): Part[] =>
  parts.length === 0 ? [] : [{ kind: 'heading', level: 2, text }, ...parts];

const forecastCell = (told: Told | null, units: Units): string =>
  told === null ? NONE : `${columnText(told.mm, units)} (${rangeText(told, units)})`;

const measurementRow = (
  { name, around, wantedMm, forecast, got }: ReportRow,
  states: readonly GotState[],
  units: Units,
): string[] => [
  around ? `${name}, around` : name,
  wantedMm === null ? NONE : columnText(wantedMm, units),
  forecastCell(forecast, units),
  ...states.map((state) => {
    const value = got[state];
    return value === undefined ? NONE : columnText(value, units);
  }),
];

const FORECAST_FROM: Readonly<Record<Report['forecastFrom'], string>> = {
  kept: 'The forecast is the last that was kept before it was measured.',
  now: 'The forecast stands as of now.',
  'no-size': 'Which size is knit has not been said: what was wanted and foretold hangs on it.',
  hindsight: 'No forecast was kept beforehand: this one knows what came of it already.',
};

const measurements = (report: Report, telling: Telling): Part[] => [
  {
    kind: 'paragraph',
    text: `Lengths in ${unitName(telling)}. Forecast: likeliest, dried, and the range that should hold nine times in ten. ${FORECAST_FROM[report.forecastFrom]}`,
  },
  {
    kind: 'table',
    columns: [
      'measurement',
      'wanted',
      'forecast, dried',
      ...report.states.map((state) => `got, ${STATE_WORDS[state]}`),
    ],
    rows: report.rows.map((row) => measurementRow(row, report.states, telling.units)),
  },
];

const gauge = ({ gauge: rows, patternGauge }: Report, { units }: Telling): Part[] => {
  const over = units === 'in' ? '4 in' : '10 cm';
  const asked = patternGauge ?? null;
  return [
    {
      kind: 'table',
      columns: ['state', `stitches over ${over}`, `rows over ${over}`, 'stands on'],
      rows: [
        ...(asked === null
          ? []
          : [
              [
                `pattern, ${STATE_WORDS[asked.state]}`,
                countOf(asked.overMm / asked.stitches, units),
                asked.rows === undefined ? '–' : countOf(asked.overMm / asked.rows, units),
                'the pattern',
              ],
            ]),
        ...rows.map(({ state, stitch, row, measured }) => [
          STATE_WORDS[state],
          countOf(stitch.mm, units),
          countOf(row.mm, units),
          measured ? 'measured' : 'forecast',
        ]),
      ],
    },
  ];
};

const written = (text: string): Part[] =>
  text
    .split(/\n+/)
    .filter((each) => each.trim() !== '')
    .map((each) => ({ kind: 'paragraph', text: each.trim() }));

const remarks = ({ remarks: list }: Report): Part[] =>
  list.length === 0
    ? []
    : [
        {
          kind: 'list',
          texts: list.map(({ on, text }) => (on === null ? text : `${on}: ${text}`)),
        },
      ];

const body = (report: Report, { units, words }: Telling): Part[] =>
  report.body === null
    ? []
    : [
        ...(report.body.name === '' ? [] : written(report.body.name)),
        {
          kind: 'table',
          columns: ['body', units],
          rows: report.body.rows.map(({ landmark, mm }) => [
            landmarkName(landmark, words),
            columnText(mm, units),
          ]),
        },
      ];

/** A photo in words; one that cannot be read is not in the report, and that is said in its place. */
export const photoWords = ({ caption, picture }: ReportPhoto): string => {
  const called = caption === '' ? 'A photo' : caption;
  return picture === null ? `${called} (left out: this picture cannot be read)` : called;
};

/** Everything of a report in reading order; what nobody wrote or measured has no heading. */
export const partsOf = (report: Report, telling: Telling): Part[] => [
  { kind: 'heading', level: 1, text: report.title },
  { kind: 'facts', rows: factsOf(report, telling) },
  ...section('Measurements', measurements(report, telling)),
  ...section(gaugeWord(telling.words), gauge(report, telling)),
  ...section('Changes made', written(report.changes)),
  ...section('Fit', written(report.fitNotes)),
  ...section('Afterwards', remarks(report)),
  ...section('Body', body(report, telling)),
  ...section(
    'Photos',
    report.photos.map((photo) => ({ kind: 'photo', photo })),
  ),
];
