import {
  type Direction,
  DRIFT_CORRELATION,
  DRIFT_SD,
  edgeSd,
  type ForecastState,
  fabricGive,
  GROWTH_SD,
  garmentTapeSd,
  growthPrior,
  HAND_CORRELATION,
  hangingTube,
  keptShare,
  PLACE_SD,
  type Reading,
  type RestState,
  RULE_SD,
  type Specimen,
  UNSWATCHED_SD,
} from '../../fabric/index.ts';
import { type RandomSource, unitSampler } from '../../stats/index.ts';
import { mm } from '../../units/index.ts';
import type { ForecastQuestion, MeasuredOnGarment, MeasurementWanted } from '../forecast-types.ts';
import { hangShares } from '../hang-shares.ts';
import { wetStretch } from '../passages.ts';
import { PIECE_SD, TO_LENGTH_SD } from '../size-model.ts';

/** What the simulated world takes away from or adds to the stated model. 1 is the model itself. */
export interface World {
  readonly drift: number;
  readonly growth: number;
}

/** An imagined knitter: what she wrote down, and what her garment will truly measure. */
export interface Knitter {
  readonly question: ForecastQuestion;
  readonly truth: ReadonlyMap<string, Readonly<Record<ForecastState, number>>>;
}

/** What she does before the forecast. */
export type Habit = 'nothing' | 'unwashed-swatch' | 'washed-swatch-pinned' | 'half-made';
export const HABITS: readonly Habit[] = [
  'nothing',
  'unwashed-swatch',
  'washed-swatch-pinned',
  'half-made',
];

type Both = Readonly<Record<Direction, number>>;

/**
 * Draw one knitter from the stated model, step by step as it happens: her hand, her yarn's growth,
 * her swatch, her eye on the rule (which rounds to whole stitches), her garment. Nothing of the
 * inference is used.
 */
export const drawKnitter = (
  base: ForecastQuestion,
  habit: Habit,
  random: RandomSource,
  world: World,
): Knitter => {
  const gauge = base.patternGauge;
  const row = gauge?.row ?? null;
  if (gauge === null || row === null) throw new Error('the simulation wants a printed gauge');
  const drying = habit === 'washed-swatch-pinned' ? 'pin' : 'lay';
  const hand = pair(random, UNSWATCHED_SD, HAND_CORRELATION);
  const prior = growthPrior(base);
  const grown = (table: typeof prior.dried, times = 1): Both => ({
    width: table.width.mean + times * table.width.sd * random.normal(),
    length: table.length.mean + times * table.length.sd * random.normal(),
  });
  const growth = grown(prior.dried, world.growth);
  const wet = grown(prior.wet);
  const rewashed = grown(prior.rewashed);
  const pitch = (d: Direction): number =>
    Math.log(d === 'width' ? gauge.stitch : row) + hand[d] - growth[d];
  const logRest = (d: Direction, state: RestState): number =>
    (state === 'asKnit' ? 0 : growth[d]) +
    (state === 'wet' ? wet[d] : state === 'rewashed' ? rewashed[d] : 0);
  const knit = new Map(base.measurements.map((m) => [m.id, asKnit(base, m, pitch, random)]));
  const kept = unitSampler(keptShare(base, []).density)(random.uniform());
  const give = fabricGive(base, 'length');
  const softness = Math.exp(give.logSd * random.normal());
  const truth = new Map(
    base.measurements.map((m) => {
      const log = knit.get(m.id)!;
      const at = (state: RestState): number => Math.exp(log + logRest(m.direction, state));
      const pulled =
        drying === 'pin' ? Math.max(0, (m.values[base.chosen] ?? 0) / at('wet') - 1) : 0;
      const limit = wetStretch(base)(m.direction, 0.1);
      const dried = at('dried') * (1 + kept * Math.min(pulled, limit));
      const girth = Math.exp(knit.get('chest')! + logRest('width', 'dried'));
      const worn = dried * (1 + softness * hangOf(base, m, give, girth));
      return [
        m.id,
        { asKnit: at('asKnit'), wet: at('wet'), dried, worn, rewashed: at('rewashed') },
      ];
    }),
  );
  const swatch = (states: readonly RestState[]): Specimen =>
    drawSwatch(random, states, pitch, logRest, world);
  const specimens =
    habit === 'nothing'
      ? []
      : habit === 'half-made'
        ? []
        : [swatch(habit === 'unwashed-swatch' ? ['asKnit'] : ['asKnit', 'dried'])];
  const measured = habit === 'half-made' ? measureBack(random, truth) : [];
  return { question: { ...base, drying, specimens, measured }, truth };
};

const pair = (random: RandomSource, sd: number, correlation: number): Both => {
  const shared = random.normal();
  const one = (): number =>
    sd * (Math.sqrt(correlation) * shared + Math.sqrt(1 - correlation) * random.normal());
  return { width: one(), length: one() };
};

const asKnit = (
  base: ForecastQuestion,
  m: MeasurementWanted,
  pitch: (d: Direction) => number,
  random: RandomSource,
): number => {
  const target = Math.log(m.values[base.chosen]!);
  if (m.worked === 'to-length') return target + TO_LENGTH_SD * random.normal();
  const printed = Math.log(
    m.direction === 'width' ? base.patternGauge!.stitch : base.patternGauge!.row!,
  );
  return target - printed + pitch(m.direction) + PIECE_SD * random.normal();
};

const hangOf = (
  base: ForecastQuestion,
  m: MeasurementWanted,
  give: ReturnType<typeof fabricGive>,
  girthMm: number,
): number => {
  const share = hangShares(base.kind, m.landmark);
  if (share === null || base.mass === null) return 0;
  const tube = hangingTube(give, {
    hung: base.mass * share.own,
    below: base.mass * share.below,
    girthMm: girthMm * share.girth,
  });
  return m.direction === 'length' ? tube.longer : tube.narrower;
};

const OVER = 100;

const drawSwatch = (
  random: RandomSource,
  states: readonly RestState[],
  pitch: (d: Direction) => number,
  logRest: (d: Direction, state: RestState) => number,
  world: World,
): Specimen => {
  const drift = pair(random, DRIFT_SD.swatch * world.drift, DRIFT_CORRELATION);
  const specimen: Specimen = {
    id: 'swatch',
    name: 'Swatch',
    kind: 'swatch',
    stitch: 'stockinette',
    workedAsGarment: true,
    washed: 'as-garment',
    width: mm(150),
    height: mm(150),
    readings: [],
  };
  const readings = (['width', 'length'] as const).flatMap((direction) => {
    const own = GROWTH_SD['as-garment'] * random.normal();
    return ['left', 'right'].flatMap((place) => {
      const spot = PLACE_SD * random.normal();
      return states.map((state): Reading => {
        const reading: Reading = {
          kind: 'count',
          id: `${direction}-${place}-${state}`,
          direction,
          count: 1,
          over: mm(OVER),
          state,
          read: 'flat',
          place,
        };
        const slip = Math.hypot(RULE_SD, edgeSd(reading, specimen)) * random.normal();
        const log = pitch(direction) + logRest(direction, state) + drift[direction] + spot + slip;
        const grown = state === 'asKnit' ? 0 : own;
        return { ...reading, count: Math.round(OVER / Math.exp(log + grown)) };
      });
    });
  });
  return { ...specimen, readings };
};

/** A finished back: its width flat and its armhole, by tape, as knit. */
const measureBack = (
  random: RandomSource,
  truth: ReadonlyMap<string, Readonly<Record<ForecastState, number>>>,
): MeasuredOnGarment[] =>
  [
    { id: 'chest', flat: 0.5 },
    { id: 'armhole-depth', flat: 1 },
  ].map(({ id, flat }) => {
    const across = truth.get(id)!.asKnit * flat;
    const read = across * Math.exp(garmentTapeSd(across) * random.normal());
    return { id: `${id}-tape`, measurement: id, state: 'asKnit', value: mm(read), span: 'flat' };
  });
