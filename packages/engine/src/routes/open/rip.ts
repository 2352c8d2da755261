import type { Make } from '../knit/luck.ts';
import { times } from '../knit/makes.ts';
import { type KnitPiece, knitPieces, type PartName } from '../knit/pieces.ts';
import { shareOf, shareOfPart, workOf } from '../price/work.ts';
import { plannedMat } from './afresh.ts';
import {
  type Aim,
  aimsOf,
  firstAim,
  indexOf,
  lengthsMet,
  stitchesFor,
  withFactors,
} from './aim.ts';
import {
  type Bench,
  type Draft,
  nothing,
  type Opened,
  partWord,
  percent,
  spoken,
  together,
  topWord,
} from './draft.ts';

const PARTS: readonly PartName[] = ['body', 'sleeve'];

/** Knit on from where `stays` is kept of the pieces of a part; everything else goes on as it is. */
export const knitOn = (
  bench: Bench,
  makes: readonly Make[],
  part: PartName,
  stays: (piece: KnitPiece) => number,
) =>
  workOf(knitPieces(bench.forecast.kind, bench.luck, makes), bench.question.progress, {
    stitch: bench.forecast.stitch,
    mat: plannedMat(bench.forecast),
    sewn: false,
    now: bench.pieces,
    stays: (piece) => (piece.part === part ? stays(piece) : 1),
  });

/** A measurement that is not changed keeps its share of work: pieces are those of now. */
const draft = (
  bench: Bench,
  more: Pick<Draft, 'id' | 'kind' | 'name' | 'makes' | 'work' | 'counts' | 'reasons'>,
): Draft => ({ luck: bench.luck, judged: bench.own, ...more });

export const rows = (bench: Bench, mm: number): number =>
  Math.round(mm / bench.luck.pitch.length.median);

/** Rows from the cast-on to where the shaping of the top begins; null where no length says. */
export const underarmRow = (bench: Bench, part: PartName): number | null => {
  const at = indexOf(bench, part === 'sleeve' ? 'sleeve-length' : 'underarm-length');
  return at < 0 ? null : rows(bench, bench.luck.median.there[at]!);
};

/** A piece that ends at its underarm gives up the rows that change; they are never less than one. */
const staysBelow =
  (bench: Bench, part: PartName, byMm: number) =>
  ({ belowUnderarm }: KnitPiece): number => {
    const at = indexOf(bench, part === 'sleeve' ? 'sleeve-length' : 'underarm-length');
    if (belowUnderarm < 1 || at < 0) return belowUnderarm;
    const row = bench.luck.pitch.length.median;
    return Math.max(0, 1 - Math.max(row, Math.abs(byMm)) / bench.luck.median.there[at]!);
  };

export const isAboveUnderarm = ({ question }: Bench, piece: KnitPiece): boolean => {
  const share = shareOf(question.progress, piece.name);
  return share > piece.belowUnderarm || share >= 1;
};

const ripLength = (bench: Bench, part: PartName, aim: Aim): Draft => {
  const row = underarmRow(bench, part);
  const done = shareOfPart(bench.pieces, bench.question.progress, part);
  const own = bench.pieces.filter((piece) => piece.part === part);
  const reachesIt = own.some((piece) => isAboveUnderarm(bench, piece));
  const makes = withFactors(bench.planned, lengthsMet(bench, part), times);
  const more = rows(bench, aim.byMm);
  const word = more > 0 ? 'more' : 'fewer';
  const goOn = `${Math.abs(more)} rows ${word} than planned`;
  const top = topWord(bench, part);
  const back = row === null ? `where its ${top} begins` : `the underarm, row ${row}`;
  return draft(bench, {
    id: `rip-length:${part}`,
    kind: 'rip-length',
    name: reachesIt
      ? `Rip the ${partWord(bench, part)} back to ${back}, and go on with ${goOn}`
      : `Knit the ${partWord(bench, part)} with ${goOn} before the ${top}`,
    makes,
    work: knitOn(bench, makes, part, staysBelow(bench, part, aim.byMm)),
    counts: [
      ...(row === null || !reachesIt ? [] : [{ what: 'row to rip back to', count: row }]),
      { what: `rows ${word}`, count: Math.abs(more) },
    ],
    reasons: [
      `The ${spoken(aim.fit.landmark)} as planned comes out in range with ${percent(aim.fit.chance)}; this aims at the middle of what is wanted.`,
      ...(reachesIt || done === 0
        ? []
        : ['That row is not reached yet: nothing has to be ripped.']),
    ],
  });
};

const openLength = (bench: Bench, part: PartName): Opened => {
  const name = `Longer or shorter ${partWord(bench, part)}`;
  const aim = firstAim(bench, 'length', part);
  if (aim === undefined)
    return nothing('rip-length', name, 'No length of it that is wanted is likely to miss.');
  if (Math.abs(aim.byMm) < bench.luck.pitch.length.median)
    return nothing('rip-length', name, 'The change would be less than a row.');
  return { drafts: [ripLength(bench, part, aim)], leftOut: [] };
};

/** Widths that are shaped above the first row, and change together when more or fewer stitches are worked. */
const SHAPED: Readonly<Record<PartName, readonly string[]>> = {
  body: ['chest', 'waist', 'hip'],
  sleeve: ['upper-arm'],
};

/** A width with the count of stitches that comes nearest to what is wanted there. */
interface Recounted {
  readonly aim: Aim;
  readonly now: number;
  readonly count: number;
}

const recounted = (bench: Bench, part: PartName): Recounted[] =>
  aimsOf(bench)
    .filter((each) => each.part === part && SHAPED[part].includes(each.fit.landmark))
    .flatMap((aim) => {
      const mm = bench.luck.median.there[aim.target.at]!;
      const count = stitchesFor(bench, mm * aim.factor);
      return count === null ? [] : [{ aim, now: mm / bench.luck.pitch.width.median, count }];
    });

const ripWidth = (bench: Bench, part: PartName, all: readonly Recounted[]): Draft => {
  const { aim, now, count } = all[0]!;
  const { luck } = bench;
  const widths = new Map(all.map((each) => [each.aim.target.at, each.count / each.now]));
  const makes = withFactors(
    withFactors(bench.planned, lengthsMet(bench, part), times),
    widths,
    (make, by) => times(make, by, 'afresh'),
  );
  const ribbing = indexOf(bench, 'rib-depth');
  const row = ribbing < 0 ? 1 : rows(bench, luck.median.there[ribbing]!);
  const change =
    count < now ? 'fewer increases or more decreases' : 'more increases or fewer decreases';
  return draft(bench, {
    id: `rip-width:${part}`,
    kind: 'rip-width',
    name: `Rip the ${partWord(bench, part)} back to row ${row} and work ${change}, to ${count} stitches around the ${spoken(aim.fit.landmark)}`,
    makes,
    work: knitOn(bench, makes, part, ({ inRibbing }) => inRibbing),
    counts: [
      { what: 'row to rip back to', count: row },
      ...all.flatMap((each) => [
        { what: `stitches at the ${spoken(each.aim.fit.landmark)}`, count: each.count },
        { what: `${spoken(each.aim.fit.landmark)} as planned`, count: Math.round(each.now) },
      ]),
    ],
    reasons: [
      'The cast-on edge stays, so the hem or cuff keeps its width; lengths above it are knit to what is wanted.',
      'Armholes and neck have to be worked out for the new count.',
    ],
  });
};

const openWidth = (bench: Bench, part: PartName): Opened => {
  const name = `More or fewer increases in the ${partWord(bench, part)}`;
  const out = (why: string) => nothing('rip-width', name, why);
  const begun = shareOfPart(bench.pieces, bench.question.progress, part);
  if (begun === 0) return out('It is not begun: choose its size before casting on.');
  const all = recounted(bench, part);
  if (all.length === 0) return out('No width above its first rows is likely to miss.');
  return { drafts: [ripWidth(bench, part, all)], leftOut: [] };
};

/** Each judged measurement of a part made to the middle of what is wanted, the others as they are. */
const refitted = (bench: Bench, part: PartName): Make[] => {
  const own = aimsOf(bench).filter((aim) => aim.part === part);
  const factors = new Map(own.map(({ target, factor }) => [target.at, factor]));
  const { measurements } = bench.luck.known.model;
  return bench.planned.map((make, at) =>
    bench.own.targets.some((t) => t.at === at) && own.length > 0 && factors.has(at)
      ? times(make, factors.get(at)!, 'afresh')
      : ownPart(measurements[at]!.wanted.landmark, part)
        ? { ...make, from: 'afresh' }
        : make,
  );
};

const SLEEVE: ReadonlySet<string> = new Set(['upper-arm', 'cuff', 'sleeve-length']);
const ownPart = (landmark: string, part: PartName): boolean =>
  SLEEVE.has(landmark) === (part === 'sleeve');

const openAgain = (bench: Bench, part: PartName): Opened => {
  const name = `Knit the ${partWord(bench, part)} again`;
  const out = (why: string) => nothing('re-knit', name, why);
  if (!bench.pieces.some((piece) => piece.part === part)) return out('It has none.');
  if (!bench.pieces.some((piece) => piece.part !== part))
    return out('It is the whole garment: that is beginning again.');
  if (shareOfPart(bench.pieces, bench.question.progress, part) === 0)
    return out('Nothing of it is knit yet.');
  const aims = aimsOf(bench).filter((aim) => aim.part === part);
  if (aims.length === 0) return out('None of its measurements is likely to miss.');
  const makes = refitted(bench, part);
  return {
    drafts: [
      draft(bench, {
        id: `re-knit:${part}`,
        kind: 're-knit',
        name: `${name}, to the measurements that are wanted`,
        makes,
        work: knitOn(bench, makes, part, () => 0),
        counts: aims.flatMap((aim) => {
          const mm = bench.luck.median.there[aim.target.at]! * aim.factor;
          return aim.direction === 'width'
            ? [
                {
                  what: `stitches at the ${spoken(aim.fit.landmark)}`,
                  count: stitchesFor(bench, mm) ?? 0,
                },
              ]
            : [{ what: `rows to the ${spoken(aim.fit.landmark)}`, count: rows(bench, mm) }];
        }),
        reasons: [
          'The rest stays; the seam or pick-up between them has to be eased to the new edge.',
        ],
      }),
    ],
    leftOut: [],
  };
};

/** Ways that rip a part of what is knit and keep the rest. */
export const openRipping = (bench: Bench): Opened => {
  const parts = PARTS.filter((part) => bench.pieces.some((piece) => piece.part === part));
  return together(
    parts.flatMap((part) => [
      openLength(bench, part),
      openWidth(bench, part),
      openAgain(bench, part),
    ]),
  );
};
