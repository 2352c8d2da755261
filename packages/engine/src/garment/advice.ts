import { percentText, wholePercent } from '../stats/index.ts';
import type { Millimetres } from '../units/index.ts';
import type { Draws } from './draws.ts';
import { type FitResult, type FitTarget, fitTargets } from './fit.ts';
import type {
  Advice,
  BestOnNeedle,
  ForecastQuestion,
  Miss,
  NeedleAdvice,
} from './forecast-types.ts';
import type { Known } from './known.ts';
import { nextNeedle, onNeedle } from './other-needle.ts';
import { bestSize, type SizeScore, sizeScorer } from './size-choice.ts';
import { sizeWords } from './size-words.ts';

/** A change of needle is only worth swatching when it adds this much chance. Assumption. */
const WORTH = 0.05;
/** Where no size has a chance on either, one needle is better than another when it misses by this share less. */
const NEARER = 0.8;

export interface SizeAdvice {
  readonly scores: readonly SizeScore[];
  readonly advice: Advice;
}

/** What advice is given on: the garment as it is, its draws, and how it fits. */
export interface Advised {
  readonly question: ForecastQuestion;
  readonly known: Known;
  readonly draws: Draws;
  readonly targets: readonly FitTarget[];
  readonly fit: FitResult;
  readonly seed: number;
}

/** The best size on a needle. */
interface Tried extends BestOnNeedle {
  readonly score: SizeScore;
}

const scoresOf = (
  question: ForecastQuestion,
  known: Known,
  draws: Draws,
  targets: readonly FitTarget[],
): SizeScore[] => {
  const scoreAt = sizeScorer(question, known, draws, targets);
  return question.sizes.flatMap((_, at) => scoreAt(at) ?? []);
};

/** Which size fits best at this gauge, and on one needle size up and down, with the reason. */
export const adviseSize = (advised: Advised): SizeAdvice => {
  const { question, known, draws, targets } = advised;
  const scores = scoresOf(question, known, draws, targets);
  const best = bestSize(scores, question.chosen);
  if (best === null) return { scores, advice: nothingToJudge(question, targets) };
  const measured = known.evidence.some(({ basis }) => basis.kind === 'measured');
  const own: Tried = {
    way: 'own',
    needleMm: question.needle,
    size: best.fit.size,
    chanceAll: best.fit.chanceAll,
    from: measured ? 'evidence' : 'model',
    score: best,
  };
  const [down, up] = measured ? [tried(advised, -1), tried(advised, 1)] : [null, null];
  const verdict = measured ? verdictOf(question, own, down, up) : NO_NEEDLE;
  return {
    scores,
    advice: {
      bestSize: best.fit.size,
      needle: verdict.direction,
      needles: [down, own, up].flatMap((each) => (each === null ? [] : [plain(each)])),
      sentence: `${because(advised, best)}${verdict.clause}.`,
    },
  };
};

const plain = ({ way, needleMm, size, chanceAll, from }: Tried): BestOnNeedle => ({
  way,
  needleMm,
  size,
  chanceAll,
  from,
});

/** The best size on the next needle; null where there is none. */
const tried = ({ question, known, draws, seed }: Advised, way: 1 | -1): Tried | null => {
  const needle: Millimetres | null = nextNeedle(question.needle, way);
  if (needle === null && question.needle !== null) return null;
  const on = onNeedle(question, known, draws, { needle, way, seed });
  const { measurements } = on.known.model;
  const targets = fitTargets(on.question, measurements, on.known.passages);
  const score = bestSize(scoresOf(on.question, on.known, on.draws, targets), question.chosen);
  return (
    score && {
      way: way === 1 ? 'larger' : 'smaller',
      needleMm: needle,
      size: score.fit.size,
      chanceAll: score.fit.chanceAll,
      from: on.from,
      score,
    }
  );
};

const nothingToJudge = (question: ForecastQuestion, targets: readonly FitTarget[]): Advice => ({
  bestSize: null,
  needle: 'no-evidence',
  needles: [],
  sentence:
    targets.length === 0
      ? 'Say which ease or finished measurement is wanted, and for ease the body measurement, and each size can be judged.'
      : `None of the sizes ${question.sizes.join(', ')} has all the measurements that are wanted: fill in the missing cells of the size table.`,
});

/** How a garment fits: of a size begun afresh, or as it is. */
interface Fits {
  readonly chanceAll: number | null;
  readonly landmarks: readonly {
    readonly landmark: string;
    readonly chance: number;
    readonly miss: Miss;
  }[];
}

/** Of one size nothing is compared; of what is knit already it is said how that fits, not how it would. */
const because = ({ question, fit }: Advised, best: SizeScore): string => {
  const begun =
    question.measured.length > 0 || question.measurements.some(({ knit }) => knit !== undefined);
  const only = question.sizes.length === 1;
  if (only) {
    const so: Fits = begun ? fit : best.fit;
    const start = `All wanted measurements come out in range with ${percentText(so.chanceAll ?? 0)}${likely(so, ', though the')}`;
    return begun ? `${start}; begun afresh with ${percentText(best.fit.chanceAll)}` : start;
  }
  const first = sizeWords(best.fit.size);
  const start = begun
    ? `Begun afresh, ${first}`
    : `${first.slice(0, 1).toUpperCase()}${first.slice(1)}`;
  const fits = `${start} fits best at this gauge (${percentText(best.fit.chanceAll)} that all wanted measurements come out in range)`;
  const size = sizeWords(question.sizes[question.chosen] ?? '');
  if (begun) {
    const knit = `; ${size} as it is knit has ${percentText(fit.chanceAll ?? 0)}`;
    return `${fits}${knit}${likely(fit, ': its')}`;
  }
  return best.at === question.chosen
    ? `${fits}${likely(best.fit, ', though its')}`
    : `${fits}, because the ${missed(fit)} of ${size} would come out ${direction(fit)}`;
};

/** Landmark ids are words joined by hyphens. */
const spoken = (landmark: string): string => landmark.replaceAll('-', ' ');

const worst = ({ landmarks }: Fits) => landmarks.reduce((a, b) => (b.chance < a.chance ? b : a));
const missed = (fits: Fits): string => spoken(worst(fits).landmark);

/** A miss under half of ⅛ in, the mark of a tape, would be printed as none: it is not named. */
const LEAST_MISS_MM = 25.4 / 16;

const direction = (fits: Fits): string => {
  const { byMm, side } = worst(fits).miss;
  return byMm < LEAST_MISS_MM
    ? 'less surely in range'
    : `about {mm:${byMm.toFixed(1)}} too ${side}`;
};

const likely = (fits: Fits, lead: string): string =>
  worst(fits).miss.byMm < LEAST_MISS_MM
    ? ''
    : `${lead} ${missed(fits)} is likely to come out ${direction(fits)}`;

interface NeedleVerdict {
  readonly direction: NeedleAdvice;
  readonly clause: string;
}

const NO_NEEDLE: NeedleVerdict = {
  direction: 'no-evidence',
  clause: '; nothing has been measured yet, so swatch before changing needle',
};

/** Positive where a change is worth a swatch: by its chance, and where neither has one by how far it misses. */
const gain = (own: Tried, other: Tried | null): number => {
  if (other === null) return Number.NEGATIVE_INFINITY;
  const more = other.chanceAll - own.chanceAll;
  if (more > WORTH) return more;
  const hopeless = own.chanceAll < 0.01 && other.chanceAll < 0.01;
  const [here, there] = [own.score.miss, other.score.miss];
  return hopeless && there < NEARER * here ? WORTH * (1 - there / here) : 0;
};

const isMore = (own: Tried, other: Tried | null): boolean =>
  other !== null && wholePercent(other.chanceAll) > wholePercent(own.chanceAll);

const itOr = ({ sizes }: ForecastQuestion, size: string): string =>
  sizes.length === 1 ? 'it' : sizeWords(size);

const verdictOf = (
  question: ForecastQuestion,
  own: Tried,
  down: Tried | null,
  up: Tried | null,
): NeedleVerdict => {
  const [larger, smaller] = [gain(own, up), gain(own, down)];
  const pick = larger >= smaller ? up : down;
  if (pick !== null && Math.max(larger, smaller) > 0)
    return {
      direction: pick.way === 'larger' ? 'larger' : 'smaller',
      clause: isMore(own, pick)
        ? `; one needle size ${pick.way}, ${itOr(question, pick.size)} would have ${percentText(pick.chanceAll)}`
        : `; one needle size ${pick.way} would come nearer`,
    };
  const little = [down, up].find((each) => isMore(own, each)) ?? null;
  return {
    direction: 'keep',
    clause:
      little === null
        ? '; keep the needle'
        : `; one needle size ${little.way} would bring no more than ${percentText(little.chanceAll)}`,
  };
};
