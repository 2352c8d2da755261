import { stretchConflicts } from '../fabric/index.ts';
import { cautionsOf } from './cautions.ts';
import { contradictions } from './contradictions.ts';
import type { ForecastQuestion, MeasurementForecast, Notice } from './forecast-types.ts';
import type { Known } from './known.ts';
import { endsInPoints } from './landmarks.ts';
import { pieceCountNotices } from './piece-counts.ts';
import { unusedReadings } from './unused-readings.ts';

/** What the knitter should know beside the numbers. */
export const noticesOf = (
  question: ForecastQuestion,
  known: Known,
  measurements: readonly MeasurementForecast[],
): Notice[] => [
  ...gaugeNotices(question, known),
  ...pieceCountNotices(question),
  ...contradictions(question, known),
  ...unusedReadings(question, known),
  ...stretchConflicts(known.model.fabric, known.post, question.specimens).map((text) => ({
    code: 'stretched-below-flat',
    text,
  })),
  ...pinNotices(question, measurements, known),
  ...hangNotices(question, known),
  ...cautionsOf(question),
];

const gaugeNotices = (question: ForecastQuestion, known: Known): Notice[] => {
  const out: Notice[] = [];
  if (question.patternGauge === null)
    out.push({
      code: 'no-pattern-gauge',
      text: 'The pattern’s gauge is not given, so counts cannot be worked out from its measurements: ranges are wide until it is.',
    });
  if (!known.evidence.some((e) => e.basis.kind === 'measured'))
    out.push({
      code: 'nothing-measured',
      text: 'Nothing has been measured yet: this rests on the pattern and on assumptions alone. A swatch, washed as the garment will be, narrows it most.',
    });
  else if (!hasState(question, 'dried') && !hasState(question, 'rewashed'))
    out.push({
      code: 'never-washed',
      text: 'Nothing has been measured after a wash, so how the fabric changes is assumed, not known.',
    });
  return out;
};

const hasState = (question: ForecastQuestion, state: string): boolean =>
  question.specimens.some((s) =>
    s.readings.some((r) => r.kind === 'set' || ('state' in r && r.state === state)),
  ) || question.measured.some((m) => m.state === state);

/** What a tape does not tell from no stretch: 2 mm in 20 cm. */
const POINT_STRETCH = 0.01;

const pinNotices = (
  question: ForecastQuestion,
  measurements: readonly MeasurementForecast[],
  known: Known,
): Notice[] => {
  if (question.drying !== 'pin') return [];
  const over = measurements.filter((m, k) => {
    const limit = known.passages[k]?.pinLimit ?? 0;
    return m.pinnedMm !== null && m.pinnedMm > m.states.wet.p50Mm * (1 + limit);
  });
  return [
    {
      code: 'block-not-permanent',
      text: 'What pinning gains, the next soak gives back in part or in whole: compare dried with rewashed.',
    },
    ...measurements.flatMap((m) =>
      m.pinnedMm === null || m.pinnedMm > m.states.wet.p05Mm
        ? []
        : [
            {
              code: 'wet-larger-than-pinned',
              text: `${m.name}: it will lie about {mm:${m.states.wet.p50Mm.toFixed(1)}} wet, more than the {mm:${m.pinnedMm}} wanted. Pins pull, they do not push: pat it in, but do not count on it.`,
            },
          ],
    ),
    ...measurements.flatMap(({ name, landmark, pinnedMm, states }) =>
      pinnedMm !== null &&
      pinnedMm > states.wet.p50Mm * (1 + POINT_STRETCH) &&
      endsInPoints(question.kind, landmark)
        ? [
            {
              code: 'pinned-to-points',
              text: `${name}: {mm:${pinnedMm}} is counted as reached, and each end in a point hangs on one pin, which may have to bear more than a hand gives. The plan for the mat says how far short it stays.`,
            },
          ]
        : [],
    ),
    ...over.map((m) => ({
      code: 'pinned-beyond-give',
      text: `${m.name}: pinning to {mm:${m.pinnedMm}} asks for more than this fabric gives by hand from {mm:${m.states.wet.p50Mm.toFixed(1)}} wet; less is counted on.`,
    })),
  ];
};

const hangNotices = (question: ForecastQuestion, known: Known): Notice[] => {
  const hangs = known.passages.some((p) => p.hang !== 0);
  return question.mass === null && hangs
    ? [
        {
          code: 'mass-guessed',
          text: 'The garment’s weight is estimated from its size; weigh it, or the yarn in it, for a better figure of how far it hangs.',
        },
      ]
    : [];
};
