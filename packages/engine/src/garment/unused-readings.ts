import { pitchIn, REST_WORDS, type Reading, type Specimen } from '../fabric/index.ts';
import { type Affine, againstTheRest, jointOf } from '../stats/index.ts';
import type { ForecastQuestion, Notice } from './forecast-types.ts';
import type { Known } from './known.ts';

/** Share of a variance that a reading takes away: this makes a range a four-hundredth narrower, which no print shows. */
const FLOOR = 0.005;

/** Why a reading changes nothing. */
type Why = 'no-count' | 'no-stretch' | 'outweighed';

/** What readings are there to tell of: the fabric in every state. */
const formsOf = ({ model: { fabric } }: Known): Affine[] =>
  (['width', 'length'] as const).flatMap((direction) =>
    (['asKnit', 'wet', 'dried', 'rewashed'] as const).map((state) =>
      pitchIn(fabric, direction, state),
    ),
  );

/**
 * Largest share of a variance of those forms that one reading takes away from what all others leave: with
 * covariance c of form and reading and, without it, variance p of the reading's miss, c²/p of it.
 */
const narrows = (known: Known, basisId: string): boolean => {
  const each = known.evidence.find(({ basis }) => basis.id === basisId);
  if (each === undefined) return false;
  const left = againstTheRest(known.post, [each]).covariance[0]!;
  const forms = formsOf(known);
  const { covariance } = jointOf(known.post, [each.form, ...forms]);
  const k = forms.length + 1;
  // c after the reading is c before it times sd²/p.
  const scale = left / each.sd ** 2;
  return forms.some((_, j) => {
    const before = covariance[j + 1]! * scale;
    const taken = before ** 2 / left;
    return taken > FLOOR * (covariance[(j + 1) * k + j + 1]! + taken);
  });
};

const whyUnused = (known: Known, specimen: Specimen, reading: Reading): Why | null => {
  if (reading.kind === 'set') return reading.pinned > reading.rest ? null : 'no-stretch';
  if (reading.kind === 'hang') return reading.after > reading.before ? null : 'no-stretch';
  if (narrows(known, `evidence:${specimen.id}:${reading.id}`)) return null;
  return reading.kind === 'extent' && reading.count === null ? 'no-count' : 'outweighed';
};

const SAYS: Readonly<Record<Why, string>> = {
  'no-count':
    'a length alone says nothing of the fabric. Give its stitches or rows, or measure the same again in another state',
  'no-stretch': 'it is no longer stretched than at rest. Check the two lengths',
  outweighed: 'the other readings say as much already. It does no harm',
};

/** Every reading narrows something, or is named here with what would make it count. */
export const unusedReadings = (question: ForecastQuestion, known: Known): Notice[] =>
  question.specimens.flatMap((specimen) =>
    specimen.readings.flatMap((reading) => {
      const why = whyUnused(known, specimen, reading);
      if (why === null) return [];
      return [
        {
          code: `reading-unused-${why}`,
          text: `${specimen.name}, ${lengthOf(reading)} in ${reading.direction}${stateOf(reading)}, changes nothing: ${SAYS[why]}.`,
          about: `evidence:${specimen.id}:${reading.id}`,
        },
      ];
    }),
  );

const stateOf = (reading: Reading): string =>
  reading.kind === 'set' ? '' : `, ${REST_WORDS[reading.state]}`;

const lengthOf = (reading: Reading): string => {
  if (reading.kind === 'count') return `${reading.count} over {mm:${reading.over}}`;
  if (reading.kind === 'extent') return `{mm:${reading.extent}}`;
  return reading.kind === 'set'
    ? `{mm:${reading.rest}} at rest`
    : `{mm:${reading.before}} unloaded`;
};
