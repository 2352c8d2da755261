import { DRIFT_SD, GROWTH_SD } from '../../fabric/index.ts';
import type { Luck } from '../knit/luck.ts';
import type { Bench } from '../open/draft.ts';
import { mmToken, spoken } from '../open/draft.ts';
import { LONG_RUN_SD, SITTING_SD } from '../pace/assumptions.ts';
import type { Supply } from '../price/cost.ts';

/** A cheap measurement: what it is, and what it would read in each draw with its own error. */
export interface Candidate {
  readonly id: string;
  readonly name: string;
  readonly readings: () => readonly Float64Array[];
}

/** A reading of a column with an error of this SD, drawn by its own name. */
const read = (luck: Luck, name: string, column: Float64Array, sd: number): Float64Array => {
  const z = luck.normals.normal(`measuring:${name}`);
  return column.map((value, i) => value + sd * z[i]!);
};

const plus = (...columns: readonly Float64Array[]): Float64Array =>
  columns[0]!.map((_, i) => columns.reduce((sum, column) => sum + column[i]!, 0));

const DIRECTIONS = ['width', 'length'] as const;

/** Counting 100 mm in three places: rounding to a half, the rule, and places. Common practice, no source. */
const COUNT_SD = 0.012;
/** A tape across a piece, as a share. Common practice, no source. */
const TAPE_SD = 0.01;
/** A strip pinned out: the two readings of the stretch, and strip against garment. Assumption. */
const STRIP_SD = 0.1;
/** By a tape, where a table was used before: repeats to 9 mm (ISO 20685 limit, from memory). */
const BODY = { table: 20, tape: 9 } as const;

const pitches = ({ draws }: Luck) => ({ width: draws.further[0]!, length: draws.further[1]! });

const isWashed = ({ forecast }: Bench): boolean =>
  forecast.specimens.some((s) => s.readings.some((r) => 'state' in r && r.state !== 'asKnit'));

const swatch = (bench: Bench): Candidate => {
  const { luck, forecast } = bench;
  const had = forecast.specimens.length > 0;
  if (had && !isWashed(bench))
    return {
      id: 'wash-swatch',
      name: 'Wash what you have counted as the garment will be, let it dry, and count it again',
      readings: () =>
        DIRECTIONS.map((d) =>
          read(
            luck,
            `wash-swatch ${d}`,
            luck.draws.driedOverAsKnit[d],
            Math.hypot(GROWTH_SD['as-garment'], COUNT_SD),
          ),
        ),
    };
  const sd = Math.hypot(DRIFT_SD.swatch, GROWTH_SD['as-garment'], COUNT_SD);
  return {
    id: 'swatch',
    name: `Knit ${had ? 'another' : 'a'} swatch, wash it as the garment will be, and count it dry`,
    readings: () =>
      DIRECTIONS.map((d) =>
        read(luck, `swatch ${d}`, plus(pitches(luck)[d], luck.draws.driedOverAsKnit[d]), sd),
      ),
  };
};

/** What can be told of a piece that is there. */
const piece = ({ luck, begun, question }: Bench): Candidate[] =>
  begun === 0 || question.dried
    ? []
    : [
        {
          id: 'count-piece',
          name: 'Count stitches and rows of what is knit, in three places',
          readings: () =>
            DIRECTIONS.map((d) =>
              read(luck, `count-piece ${d}`, pitches(luck)[d], Math.hypot(DRIFT_SD.part, COUNT_SD)),
            ),
        },
        {
          id: 'piece-wet',
          name: 'Soak a finished piece and measure it wet',
          readings: () =>
            DIRECTIONS.map((d) =>
              read(
                luck,
                `piece-wet ${d}`,
                plus(luck.draws.driedOverAsKnit[d], luck.draws.wetOverDried[d]),
                Math.hypot(TAPE_SD, TAPE_SD),
              ),
            ),
        },
      ];

const strip = ({ luck }: Bench): Candidate => ({
  id: 'strip',
  name: `Pin a wet strip ${mmToken(100)} long out to ${mmToken(110)}, let it dry, and measure what stays`,
  readings: () => [read(luck, 'strip', luck.draws.kept, STRIP_SD)],
});

/** So many stitches that ends do not count. */
const MANY = 1e6;

const perStitch = ({ forecast }: Bench, { draw }: Supply): Float64Array => {
  const drawn = draw({
    parts: [{ name: 'swatch', stitch: forecast.stitch, stitches: MANY }],
    ripped: [],
    castOn: 0,
    bindOff: 0,
    seamsMm: 0,
    joins: 0,
  });
  if (!drawn.ok) throw new RangeError('yarn of a swatch that cannot be');
  return drawn.value.neededG.map(Math.log);
};

/** Scale and counts of a swatch, and swatch against garment. Assumption. */
const WEIGHED_SD = 0.03;

const yarn = (bench: Bench, supply: Supply): Candidate[] => [
  {
    id: 'weigh-swatch',
    name: 'Weigh the swatch, or a piece, and count its stitches and rows',
    readings: () => [read(bench.luck, 'weigh-swatch', perStitch(bench, supply), WEIGHED_SD)],
  },
  ...(supply.leftG === null || bench.question.stock?.leftG !== null
    ? []
    : [
        {
          id: 'weigh-left',
          name: 'Weigh the yarn that is left',
          readings: () => [read(bench.luck, 'weigh-left', supply.leftG!, 1)],
        },
      ]),
];

const pace = ({ luck }: Bench, { paces }: Supply): Candidate => ({
  id: 'time-rows',
  name: 'Time twenty rows',
  readings: () => [read(luck, 'time-rows', paces.plain, Math.hypot(SITTING_SD, LONG_RUN_SD))],
});

const bodies = ({ luck, own }: Bench): Candidate[] =>
  own.targets
    .filter(({ wanted }) => wanted.kind === 'ease' && wanted.bodyFrom === 'table')
    .map(({ wanted: { landmark } }) => ({
      id: `body:${landmark}`,
      name: `Take the body’s measurement at the ${spoken(landmark)} with a tape`,
      readings: () => {
        const doubt = own.body(`body ${landmark}`);
        return [
          read(
            luck,
            `body ${landmark}`,
            doubt.map((z) => BODY.table * z),
            BODY.tape,
          ),
        ];
      },
    }));

/** Measurements that cost an evening at most and are not taken yet. */
export const candidatesOf = (bench: Bench, supply: Supply): Candidate[] => [
  swatch(bench),
  ...piece(bench),
  ...(bench.luck.pinned.some(({ pinnedTo }) => pinnedTo !== null) ? [strip(bench)] : []),
  ...yarn(bench, supply),
  pace(bench, supply),
  ...bodies(bench),
];
