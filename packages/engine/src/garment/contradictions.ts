import type { Direction, Evidence, Specimen } from '../fabric/index.ts';
import { againstTheRest } from '../stats/index.ts';
import type { ForecastQuestion, Notice } from './forecast-types.ts';
import type { Known } from './known.ts';

/**
 * A reading that the rest of the evidence would call a 1 in 1,000 surprise is named: evidence is
 * combined as if it agreed, so a slip of the tape would otherwise hide in the middle.
 */
const SLIP_Z = 3.29;
/** A specimen that lies apart from everything else is named at 1 in 20: both may be right, and only one is the garment's. */
const APART_Z = 1.96;

/** Evidence that contradicts other evidence, or what was expected of the garment: each is named. */
export const contradictions = (question: ForecastQuestion, known: Known): Notice[] => {
  const apart = question.specimens.flatMap((specimen) => apartFromTheRest(known, specimen));
  const named = new Set(apart.map(({ specimen }) => specimen.id));
  return [
    ...apartNotices(question, known, apart),
    ...known.evidence.flatMap((each) => slip(known, each, named)),
    ...overruledNotices(known),
  ];
};

interface Apart {
  readonly specimen: Specimen;
  readonly direction: Direction;
  /** Logarithm of its pitch over that of everything else, and how many of its spreads that is. */
  readonly by: number;
  readonly z: number;
}

/** Readings of pitch; one whose count nobody gave says nothing of it. */
const pitchReadings = (known: Known, specimen: Specimen, direction: Direction): Evidence[] =>
  specimen.readings.flatMap((reading) => {
    if (reading.kind !== 'count' && reading.kind !== 'extent') return [];
    if (reading.direction !== direction || reading.count === null || reading.read === 'stretched')
      return [];
    return known.evidenceOf(`evidence:${specimen.id}:${reading.id}`);
  });

/**
 * A specimen is left out as a whole: left out one by one, its readings would hold each other in place.
 * What the pattern's gauge says is no specimen: a hand that differs from it contradicts nobody.
 */
const apartFromTheRest = (known: Known, specimen: Specimen): Apart[] => {
  const others = known.evidence.some(
    ({ basis }) =>
      basis.id.startsWith('evidence:') && !basis.id.startsWith(`evidence:${specimen.id}:`),
  );
  if (!others) return [];
  return (['width', 'length'] as const).flatMap((direction) => {
    const own = pitchReadings(known, specimen, direction);
    if (own.length === 0) return [];
    const { miss, covariance } = againstTheRest(known.post, own);
    const mean = miss.reduce((sum, x) => sum + x, 0) / own.length;
    const variance = covariance.reduce((sum, x) => sum + x, 0) / own.length ** 2;
    const z = Math.abs(mean) / Math.sqrt(variance);
    return z > APART_Z ? [{ specimen, direction, by: mean, z }] : [];
  });
};

const percent = (log: number): string => `${Math.abs(100 * Math.expm1(log)).toFixed(0)} %`;

const APART_MEND =
  'Only one of them can be the garment’s: see which was knit on its needle and washed as it will be, and leave the other out or knit a third.';

const apartNotices = (
  question: ForecastQuestion,
  known: Known,
  apart: readonly Apart[],
): Notice[] =>
  (['width', 'length'] as const).flatMap((direction): Notice[] => {
    const these = apart.filter((each) => each.direction === direction);
    const what = direction === 'width' ? 'stitches' : 'rows';
    const knit = question.specimens.filter(
      (specimen) => pitchReadings(known, specimen, direction).length > 0,
    );
    const code = 'specimens-disagree';
    const [one, other] = knit;
    if (these.length > 0 && one !== undefined && other !== undefined && knit.length === 2) {
      const most = Math.max(...these.map(({ by }) => Math.abs(by)));
      return [
        {
          code,
          text: `${one.name} and ${other.name} do not agree: their ${what} differ by about ${percent(most)}, more than pieces of one hand and yarn usually do. ${APART_MEND}`,
        },
      ];
    }
    // The one that is farthest off draws the others along; without it they may well agree.
    const worst = these.reduce<Apart | null>((a, b) => (a === null || b.z > a.z ? b : a), null);
    if (worst === null) return [];
    const { specimen, by } = worst;
    return [
      {
        code,
        text: `${specimen.name} does not agree with what else was knit: its ${what} are ${percent(by)} ${by > 0 ? 'larger' : 'smaller'}. ${APART_MEND}`,
      },
    ];
  });

const slip = (known: Known, each: Evidence, apart: ReadonlySet<string>): Notice[] => {
  if (each.basis.kind !== 'measured' || apart.has(each.basis.id.split(':')[1] ?? '')) return [];
  const { miss, covariance } = againstTheRest(known.post, [each]);
  const by = miss[0]!;
  if (by * by <= SLIP_Z ** 2 * covariance[0]!) return [];
  return [
    {
      code: 'evidence-disagrees',
      text: `This does not agree with the rest, it is ${percent(by)} ${by > 0 ? 'larger' : 'smaller'} than they suggest: ${each.basis.text}. Measure it again before trusting the range.`,
    },
  ];
};

const CHANGE: Readonly<Record<string, string>> = {
  dried: 'from as knit to dried',
  wet: 'from dried to wet',
  rewashed: 'from the first drying to later washes',
};

/** Where the tape stands against counts, gauge or the usual change, that is said; a wish is no evidence. */
const overruledNotices = ({ model, overruled }: Known): Notice[] => [
  ...model.measurements.flatMap(({ wanted }) =>
    overruled.lengths.has(wanted.id) && wanted.worked === 'counted'
      ? [
          {
            code: 'tape-against-counts',
            text: `${wanted.name}: the tape says something else than the stitches or rows and the gauge do. What was measured is taken; the counts or the gauge of that piece may not be as entered.`,
          },
        ]
      : [],
  ),
  ...[...overruled.growth].map((term) => {
    const [state = '', direction = ''] = term.split(' ');
    return {
      code: 'tape-against-growth',
      text: `The ${direction} changed ${CHANGE[state]} by more than is usual for this yarn. What was measured is taken, and what lies ahead is less sure for it.`,
    };
  }),
  ...[...overruled.parts].map((term) => {
    const [part = '', state = '', direction = ''] = term.split(' ');
    const [here, there] = part === 'body' ? ['body', 'sleeves'] : ['sleeves', 'body'];
    return {
      code: 'tape-against-growth',
      text: `The ${direction} of the ${here} changed ${CHANGE[state]} by more than is usual for this yarn. What was measured is taken there; of the ${there} no more than the usual change is: measure them too.`,
    };
  }),
];
