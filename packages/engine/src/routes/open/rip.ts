import type { PartName } from '../../garment/index.ts';
import { percentText } from '../../stats/index.ts';
import type { Make } from '../knit/luck.ts';
import { times } from '../knit/makes.ts';
import { type KnitPiece, knitPieces } from '../knit/pieces.ts';
import { shareOfPart, workOf } from '../price/work.ts';
import type { Knitting, RipTo, RouteCount } from '../types.ts';
import { plannedMat } from './afresh.ts';
import { type Aim, aimsOf, stitchesFor, withFactors } from './aim.ts';
import {
  type Bench,
  type Draft,
  nothing,
  type Opened,
  partWord,
  spoken,
  together,
} from './draft.ts';
import { fromTheTop, rowSteps, rowsName } from './row-words.ts';
import { type InRows, inRows, isKnitByRows, piecesInRows, staysOf } from './rows.ts';

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

type Told = Omit<Draft, 'luck' | 'judged'>;

/** A measurement that is not changed keeps its share of work: pieces are those of now. */
const draft = (bench: Bench, more: Told): Draft => ({
  luck: bench.luck,
  judged: bench.own,
  ...more,
});

/** The rows that a knitter counts, as figures. */
export const rowCounts = ({ pieces }: Pick<Knitting, 'pieces'>): RouteCount[] => {
  const row = pieces.find(({ ripTo }) => ripTo !== null)?.ripTo?.row ?? null;
  const changed = pieces[0]?.stretches.filter(({ by }) => by !== 0) ?? [];
  return [
    ...(row === null ? [] : [{ what: 'row to rip down to', count: row }]),
    ...changed.map(({ to, by }) => ({
      what: `rows ${by > 0 ? 'more' : 'fewer'} ${to === 'shoulder' ? 'above the underarm' : to === 'end' ? 'in all' : `before the ${to}`}`,
      count: Math.abs(by),
    })),
  ];
};

/** Lengths of a part that are likely to miss and can be mended by rows, worst first. */
export const rowAims = (bench: Bench, part: PartName): Aim[] =>
  aimsOf(bench).filter(
    ({ direction, part: on, fit }) =>
      direction === 'length' && on === part && isKnitByRows(fit.landmark),
  );

/** Those lengths in whole rows. */
export const rowsMet = (bench: Bench, part: PartName): InRows =>
  inRows(
    bench,
    bench.planned,
    part,
    rowAims(bench, part).map(({ fit, byMm }) => ({ landmark: fit.landmark, byMm })),
  );

export const knittingOf = (more: Partial<Knitting>): Knitting => ({
  pieces: [],
  edge: null,
  stitches: [],
  sides: null,
  ...more,
});

const ripLength = (bench: Bench, part: PartName, aim: Aim, met: InRows, ripTo: RipTo): Draft => {
  const pieces = piecesInRows(bench, part, met);
  const told = { part, pieces };
  const done = shareOfPart(bench.pieces, bench.question.progress, part);
  const ripped = pieces.some((each) => each.ripTo !== null);
  return draft(bench, {
    id: `rip-length:${part}`,
    kind: 'rip-length',
    name: rowsName(bench, told),
    makes: met.makes,
    work: knitOn(bench, met.makes, part, staysOf(bench, ripTo)),
    knitting: knittingOf({ pieces }),
    counts: rowCounts({ pieces }),
    steps: [...rowSteps(bench, told), ...fromTheTop(bench, part)],
    reasons: [
      `The ${spoken(aim.fit.landmark)} as planned comes out in range with ${percentText(aim.fit.chance)}; this aims at the middle of what is wanted.`,
      ...(ripped || done === 0 ? [] : ['That row is not reached yet: nothing has to be ripped.']),
    ],
  });
};

const openLength = (bench: Bench, part: PartName): Opened => {
  const name = `Longer or shorter ${partWord(bench, part)}`;
  const out = (why: string) => nothing('rip-length', name, why);
  const [aim] = rowAims(bench, part);
  if (aim === undefined) {
    const other = aimsOf(bench).find((each) => each.part === part && each.direction === 'length');
    return out(
      other === undefined
        ? 'No length of it that is wanted is likely to miss.'
        : `The ${spoken(other.fit.landmark)} is shaped on its own: work its rows out anew.`,
    );
  }
  const met = rowsMet(bench, part);
  if (met.ripTo === null) return out('The change would be less than a row.');
  return { drafts: [ripLength(bench, part, aim, met, met.ripTo)], leftOut: [] };
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
      const { wanted } = aim.target.measurement;
      const planned = wanted.counts[bench.forecast.chosen] ?? mm / bench.luck.pitch.width.median;
      return count === null ? [] : [{ aim, now: planned, count }];
    });

/** Begun afresh with so many stitches there: as wide as they are. */
const withStitches = (
  bench: Bench,
  makes: readonly Make[],
  all: readonly Pick<Recounted, 'aim' | 'count'>[],
): Make[] => {
  const { pitch, median } = bench.luck;
  const factors = new Map(
    all.map(({ aim: { target }, count }) => [
      target.at,
      (count * pitch.width.median) / (median.afresh[target.at]! * makes[target.at]!.factor),
    ]),
  );
  return withFactors(makes, factors, (make, by) => times(make, by, 'afresh'));
};

const ripWidth = (bench: Bench, part: PartName, all: readonly Recounted[]): Draft => {
  const { aim, now, count } = all[0]!;
  const met = rowsMet(bench, part);
  const makes = withStitches(bench, met.makes, all);
  const ribbing = bench.pieces.find((piece) => piece.part === part)?.marks.ribbing ?? 0;
  const row = Math.max(1, Math.round(ribbing / bench.luck.pitch.length.median));
  const ripTo: RipTo = { mark: ribbing > 0 ? 'ribbing' : 'cast-on', below: 0, row };
  const pieces = piecesInRows(bench, part, { ...met, ripTo });
  const change =
    count < now ? 'fewer increases or more decreases' : 'more increases or fewer decreases';
  const stitches = all.map(({ aim: { fit }, count: n }) => ({ landmark: fit.landmark, count: n }));
  const there = stitches.map(
    ({ landmark, count: n }) => `${n} stitches around the ${spoken(landmark)}`,
  );
  return draft(bench, {
    id: `rip-width:${part}`,
    kind: 'rip-width',
    name: `Rip the ${partWord(bench, part)} down to ${ribbing > 0 ? `row ${row}` : 'its first row'} and work ${change}, to ${count} stitches around the ${spoken(aim.fit.landmark)}`,
    makes,
    work: knitOn(bench, makes, part, staysOf(bench, ripTo)),
    knitting: knittingOf({ pieces, stitches }),
    counts: [
      { what: 'row to rip down to', count: row },
      ...all.flatMap((each) => [
        { what: `stitches at the ${spoken(each.aim.fit.landmark)}`, count: each.count },
        { what: `${spoken(each.aim.fit.landmark)} as planned`, count: Math.round(each.now) },
      ]),
    ],
    steps: [
      ...rowSteps(bench, { part, pieces }, [`Work ${change}, to ${there.join(' and ')}.`]),
      ...fromTheTop(bench, part),
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

/** All of a part begun afresh, its judged widths and lengths to the middle of what is wanted. */
const refitted = (bench: Bench, part: PartName) => {
  const { measurements } = bench.luck.known.model;
  const begun = bench.planned.map(
    (make, at): Make =>
      isOf(measurements[at]!.wanted.landmark, part) ? { ...make, from: 'afresh' } : make,
  );
  const own = aimsOf(bench).filter((each) => each.part === part);
  const widths = own.flatMap((aim) => {
    if (aim.direction !== 'width') return [];
    const count = stitchesFor(bench, bench.luck.median.there[aim.target.at]! * aim.factor);
    return count === null ? [] : [{ aim, count }];
  });
  const asks = rowAims(bench, part).map(({ fit, target, factor }) => ({
    landmark: fit.landmark,
    byMm: bench.luck.median.there[target.at]! * factor - bench.luck.median.afresh[target.at]!,
  }));
  const met = inRows(bench, begun, part, asks);
  return { ...met, makes: withStitches(bench, met.makes, widths), widths };
};

const SLEEVE: ReadonlySet<string> = new Set(['upper-arm', 'cuff', 'sleeve-length']);
const isOf = (landmark: string, part: PartName): boolean =>
  SLEEVE.has(landmark) === (part === 'sleeve');

const knitAgain = (bench: Bench, part: PartName, name: string): Draft => {
  const { makes, widths, stretches } = refitted(bench, part);
  const ripTo: RipTo = { mark: 'cast-on', below: 0, row: 0 };
  const pieces = piecesInRows(bench, part, { stretches, ripTo });
  const stitches = widths.map(({ aim, count }) => ({ landmark: aim.fit.landmark, count }));
  const there = stitches.map(
    ({ landmark, count }) => `${count} stitches at the ${spoken(landmark)}`,
  );
  return draft(bench, {
    id: `re-knit:${part}`,
    kind: 're-knit',
    name: `${name}, to the measurements that are wanted`,
    makes,
    work: knitOn(bench, makes, part, () => 0),
    knitting: knittingOf({ pieces, stitches }),
    counts: [
      ...stitches.map(({ landmark, count }) => ({
        what: `stitches at the ${spoken(landmark)}`,
        count,
      })),
      ...stretches.flatMap(({ to, rows }) =>
        rows === null ? [] : [{ what: `rows to the ${to}`, count: rows }],
      ),
    ],
    steps: rowSteps(
      bench,
      { part, pieces },
      there.length === 0 ? [] : [`Shape it to ${there.join(' and ')}.`],
    ),
    reasons: ['The rest stays; the seam or pick-up between them has to be eased to the new edge.'],
  });
};

const openAgain = (bench: Bench, part: PartName): Opened => {
  const name = `Knit the ${partWord(bench, part)} again`;
  const out = (why: string) => nothing('re-knit', name, why);
  if (!bench.pieces.some((piece) => piece.part === part)) return out('It has none.');
  if (!bench.pieces.some((piece) => piece.part !== part))
    return out('It is the whole garment: that is beginning again.');
  if (shareOfPart(bench.pieces, bench.question.progress, part) === 0)
    return out('Nothing of it is knit yet.');
  if (!aimsOf(bench).some((aim) => aim.part === part))
    return out('None of its measurements is likely to miss.');
  return { drafts: [knitAgain(bench, part, name)], leftOut: [] };
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
