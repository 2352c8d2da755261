import { pitchIn, REST_WORDS, type Reading } from '../fabric/index.ts';
import { type Affine, againstTheRest, covariancesWith, sdOf } from '../stats/index.ts';
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
 * Whether one reading takes away from what all others leave of a variance of those forms: with covariance c
 * of form and reading and, without it, variance p of the reading's miss, c²/p of it.
 */
const narrowing = (known: Known): ((id: string) => boolean) => {
  const forms = formsOf(known);
  const sds = forms.map((form) => sdOf(known.post, form));
  const covariances = covariancesWith(known.post, forms);
  return (id) => {
    const [each] = known.evidenceOf(id);
    if (each === undefined) return false;
    const left = againstTheRest(known.post, [each]).covariance[0]!;
    // c after the reading is c before it times sd²/p.
    const scale = left / each.sd ** 2;
    return covariances(each.form).some((after, j) => {
      const taken = (after * scale) ** 2 / left;
      return taken > FLOOR * (sds[j]! ** 2 + taken);
    });
  };
};

const whyUnused = (reading: Reading, narrows: () => boolean): Why | null => {
  if (reading.kind === 'set') return reading.pinned > reading.rest ? null : 'no-stretch';
  if (reading.kind === 'hang') return reading.after > reading.before ? null : 'no-stretch';
  if (narrows()) return null;
  return reading.kind === 'extent' && reading.count === null ? 'no-count' : 'outweighed';
};

const SAYS: Readonly<Record<Why, string>> = {
  'no-count':
    'a length alone says nothing of the fabric. Give its stitches or rows, or measure the same again in another state',
  'no-stretch': 'it is no longer stretched than at rest. Check the two lengths',
  outweighed: 'the other readings say as much already. It does no harm',
};

/** Every reading narrows something, or is named here with what would make it count. */
export const unusedReadings = (question: ForecastQuestion, known: Known): Notice[] => {
  const narrows = narrowing(known);
  return question.specimens.flatMap((specimen) =>
    specimen.readings.flatMap((reading) => {
      const id = `evidence:${specimen.id}:${reading.id}`;
      const why = whyUnused(reading, () => narrows(id));
      if (why === null) return [];
      return [
        {
          code: `reading-unused-${why}`,
          text: `${specimen.name}, ${lengthOf(reading)} in ${reading.direction}${stateOf(reading)}, changes nothing: ${SAYS[why]}.`,
          about: id,
        },
      ];
    }),
  );
};

const stateOf = (reading: Reading): string =>
  reading.kind === 'set' ? '' : `, ${REST_WORDS[reading.state]}`;

const lengthOf = (reading: Reading): string => {
  if (reading.kind === 'count') return `${reading.count} over {mm:${reading.over}}`;
  if (reading.kind === 'extent') return `{mm:${reading.extent}}`;
  return reading.kind === 'set'
    ? `{mm:${reading.rest}} at rest`
    : `{mm:${reading.before}} unloaded`;
};
