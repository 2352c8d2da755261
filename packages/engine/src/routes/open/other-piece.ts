import { percentText } from '../../stats/index.ts';
import type { Make } from '../knit/luck.ts';
import type { KnitPiece } from '../knit/pieces.ts';
import { shareOf, type Work } from '../price/work.ts';
import { GIRTHS, girthsBy, sideMm } from './add.ts';
import { plannedMat } from './afresh.ts';
import { type Aim, firstAim, indexOf } from './aim.ts';
import { type Bench, type Draft, mmToken, nothing, type Opened, spoken } from './draft.ts';
import { finishing } from './drying.ts';
import { knitOn, knittingOf, rowCounts, rowsMet } from './rip.ts';
import { fromTheTop, rowSteps, rowsName } from './row-words.ts';
import { inRows, piecesInRows, staysOf } from './rows.ts';

/** Of a body in two halves, the one that is begun and the one that is not. */
interface Halves {
  readonly kept: KnitPiece;
  readonly fresh: KnitPiece;
}

const halvesOf = ({ pieces, question }: Bench): Halves | null => {
  const body = pieces.filter(({ part }) => part === 'body');
  const begun = body.filter(({ name }) => shareOf(question.progress, name) > 0);
  const [kept] = begun;
  const fresh = body.find((piece) => piece !== kept);
  return body.length === 2 && begun.length === 1 && kept !== undefined && fresh !== undefined
    ? { kept, fresh }
    : null;
};

/** The half that is not begun knit with so many stitches more (fewer, below 0) up to the underarm. */
const widened = (bench: Bench, work: Work, { fresh }: Halves, stitches: number): Work => {
  const rows = sideMm(bench) / bench.luck.pitch.length.median;
  return {
    ...work,
    knit: work.knit.map((each) =>
      each.name === fresh.name
        ? { ...each, stitches: Math.max(0, each.stitches + stitches * rows) }
        : each,
    ),
    castOn: Math.max(0, work.castOn + stitches),
    bindOff: Math.max(0, work.bindOff + stitches),
  };
};

/** Stitches more in that half, an even number, and what all girths come to by them. */
const girths = (bench: Bench, aim: Aim): { stitches: number; byMm: number; makes: Make[] } => {
  const { pitch } = bench.luck;
  const stitches =
    2 * Math.sign(aim.byMm) * Math.max(1, Math.round(Math.abs(aim.byMm) / pitch.width.median / 2));
  const byMm = stitches * pitch.width.median;
  return { stitches, byMm, makes: girthsBy(bench, byMm) };
};

const eachOf = ({ name, copies }: KnitPiece): string =>
  copies === 2 ? `each ${name}` : `the ${name}`;
const allOf = ({ name, copies }: KnitPiece): string =>
  copies === 2 ? `the ${name}s` : `the ${name}`;
const wideWords = ({ copies }: KnitPiece, stitches: number): string =>
  `${Math.abs(stitches) / copies} stitches ${stitches > 0 ? 'wider' : 'narrower'}`;

type Half = Omit<Draft, 'luck' | 'judged'>;

const drafted = (
  bench: Bench,
  { kept, fresh }: Halves,
  aim: Aim,
): Omit<Half, 'id' | 'name' | 'work'> => {
  const { stitches, byMm, makes } = girths(bench, aim);
  const more = stitches > 0;
  return {
    kind: more ? 'add' : 'take-away',
    makes,
    counts: [
      {
        what: `stitches ${more ? 'more' : 'fewer'} in ${eachOf(fresh)}`,
        count: Math.abs(stitches) / fresh.copies,
      },
    ],
    reasons: [
      `The ${spoken(aim.fit.landmark)} as planned comes out in range with ${percentText(aim.fit.chance)}.`,
      more
        ? `Half of these stitches are bound off at each underarm; each side seam lies ${mmToken(byMm / 4)} towards ${allOf(kept)}.`
        : `Each side seam lies ${mmToken(-byMm / 4)} towards ${allOf(fresh)}.`,
    ],
  };
};

/** Rows of both halves as they are planned. */
const asPlanned = (bench: Bench) => inRows(bench, bench.planned, 'body', []);

const wider = (bench: Bench, halves: Halves, aim: Aim): Draft => {
  const { kept, fresh } = halves;
  const draft = drafted(bench, halves, aim);
  const { stitches } = girths(bench, aim);
  const pieces = piecesInRows(bench, 'body', asPlanned(bench), { [fresh.name]: stitches });
  const own = pieces.filter(({ piece }) => piece === fresh.name);
  return {
    luck: bench.luck,
    judged: bench.own,
    ...draft,
    id: `${draft.kind}:${fresh.name}`,
    name: `Keep ${allOf(kept)}, and knit ${eachOf(fresh)} ${wideWords(fresh, stitches)} than planned`,
    knitting: knittingOf({ pieces }),
    steps: rowSteps(bench, { part: 'body', pieces: own }),
    work: widened(bench, finishing(bench, plannedMat(bench.forecast)), halves, stitches),
  };
};

/** The same, and both halves made as long as is wanted: what is knit is ripped no farther than its underarm. */
const widerAndLong = (bench: Bench, halves: Halves, aim: Aim): Draft[] => {
  const { fresh } = halves;
  const met = rowsMet(bench, 'body');
  if (met.ripTo === null) return [];
  const draft = drafted(bench, halves, aim);
  const { stitches, makes: wide } = girths(bench, aim);
  // Lengths and widths are different measurements: the ones of either stand.
  const makes = met.makes.map((make, at) => (make === bench.planned[at] ? wide[at]! : make));
  const pieces = piecesInRows(bench, 'body', met, { [fresh.name]: stitches });
  const told = { part: 'body', pieces } as const;
  return [
    {
      luck: bench.luck,
      judged: bench.own,
      ...draft,
      id: `${draft.kind}:${fresh.name}:length`,
      name: `${rowsName(bench, told)}; knit ${eachOf(fresh)} so too, ${wideWords(fresh, stitches)}`,
      makes,
      knitting: knittingOf({ pieces }),
      counts: [...(draft.counts ?? []), ...rowCounts({ pieces })],
      steps: [...rowSteps(bench, told), ...fromTheTop(bench, 'body')],
      work: widened(
        bench,
        knitOn(bench, makes, 'body', staysOf(bench, met.ripTo)),
        halves,
        stitches,
      ),
    },
  ];
};

/** A body of which one half is knit: the other takes up what all of it is too narrow or too wide by. */
export const openOtherPiece = (bench: Bench): Opened => {
  const out = (why: string) => nothing('add', 'The other half wider or narrower', why);
  if (indexOf(bench, 'chest') < 0) return out('It has no halves.');
  const halves = halvesOf(bench);
  if (halves === null)
    return out('There is no half of the body that is begun beside one that is not.');
  const aim = firstAim(bench, 'width', 'body');
  if (aim === undefined || !GIRTHS.some((each) => each === aim.fit.landmark))
    return out('No girth of the body is likely to miss.');
  return { drafts: [wider(bench, halves, aim), ...widerAndLong(bench, halves, aim)], leftOut: [] };
};
