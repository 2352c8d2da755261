import { times } from '../knit/makes.ts';
import type { PartName } from '../knit/pieces.ts';
import { shareOfPart, type Work } from '../price/work.ts';
import { plannedMat } from './afresh.ts';
import { type Aim, edgeMoved, firstAim, indexOf, withFactors } from './aim.ts';
import {
  type Bench,
  type Draft,
  edgeWord,
  mmToken,
  nothing,
  type Opened,
  percent,
  spoken,
  together,
} from './draft.ts';
import { finishing } from './drying.ts';

/** The width of the edge that rows are added to. */
const EDGE: Readonly<Record<PartName, string>> = { body: 'hem', sleeve: 'cuff' };

/** Stitches around the edge that rows are added to: its own width, else the widest that is known. */
const edgeStitches = (bench: Bench, part: PartName): number => {
  const { luck } = bench;
  const own = indexOf(bench, EDGE[part]);
  const widths = luck.known.model.measurements.flatMap(({ wanted }, at) =>
    wanted.direction === 'width' ? [luck.median.there[at]!] : [],
  );
  const mm = own >= 0 ? luck.median.there[own]! : Math.max(0, ...widths);
  return (mm / luck.pitch.width.median) * (part === 'sleeve' ? 2 : 1);
};

/** All that is left, and some more. */
const more = (bench: Bench, extra: Partial<Work>): Work => {
  const rest = finishing(bench, plannedMat(bench.forecast));
  return {
    ...rest,
    knit: [...rest.knit, ...(extra.knit ?? [])],
    rip: [...rest.rip, ...(extra.rip ?? [])],
    castOn: rest.castOn + (extra.castOn ?? 0),
    bindOff: rest.bindOff + (extra.bindOff ?? 0),
    seamsMm: rest.seamsMm + (extra.seamsMm ?? 0),
    ends: rest.ends + (extra.ends ?? 0),
  };
};

const because = (aim: Aim): string =>
  `The ${spoken(aim.fit.landmark)} as planned comes out in range with ${percent(aim.fit.chance)}.`;

type Told = Pick<Draft, 'id' | 'kind' | 'name' | 'makes' | 'work' | 'counts' | 'reasons'>;
const one = (bench: Bench, told: Told): Opened => ({
  drafts: [{ luck: bench.luck, judged: bench.own, ...told }],
  leftOut: [],
});

const rowsOf = (bench: Bench, mm: number): number =>
  Math.max(1, Math.round(Math.abs(mm) / bench.luck.pitch.length.median));

/** Rows of the ribbing that lies below the rows that are taken out; it is knit on again. */
const borderRows = (bench: Bench): number => {
  const at = indexOf(bench, 'rib-depth');
  return at < 0 ? 0 : rowsOf(bench, bench.luck.median.there[at]!);
};

/** Rows at the lower edge, added or taken off; a change of length without ripping what is above. */
const openRows = (bench: Bench, part: PartName): Opened => {
  const edge = edgeWord(bench, part);
  const aim = firstAim(bench, 'length', part);
  if (aim === undefined)
    return nothing(
      'add',
      `Rows at the ${edge}`,
      'No length of it that is wanted is likely to miss.',
    );
  const above = aim.fit.landmark === 'armhole-depth' || aim.fit.landmark === 'yoke-depth';
  if (above || aim.fit.landmark === 'foot-length')
    return nothing(
      'add',
      `Rows at the ${edge}`,
      `The ${spoken(aim.fit.landmark)} lies ${above ? 'above it' : 'beyond the heel'}.`,
    );
  if (shareOfPart(bench.pieces, bench.question.progress, part) === 0)
    return nothing('add', `Rows at the ${edge}`, 'It is not begun: knit it to the length at once.');
  const rows = rowsOf(bench, aim.byMm);
  const stitches = edgeStitches(bench, part);
  const makes = withFactors(bench.planned, edgeMoved(bench, aim), times);
  const longer = aim.byMm > 0;
  const fabric = (deep: number) => ({ name: `${edge} border`, stitches: stitches * deep });
  const border = borderRows(bench);
  return one(bench, {
    id: `${longer ? 'add' : 'take-away'}:${edge}`,
    kind: longer ? 'add' : 'take-away',
    name: longer
      ? `Pick up along the ${edge} and knit a border of ${rows} rows downwards`
      : border > 0
        ? `Take ${rows} rows out above the ribbing of the ${edge} and knit the ribbing on again`
        : `Take ${rows} rows off at the ${edge}, bound off downwards`,
    makes,
    counts: [{ what: 'rows', count: rows }],
    work: more(
      bench,
      longer
        ? { knit: [fabric(rows)], bindOff: stitches, ends: 2 }
        : {
            knit: border > 0 ? [fabric(border)] : [],
            rip: [fabric(border + rows)],
            bindOff: stitches,
            ends: 2,
          },
    ),
    reasons: [
      because(aim),
      longer
        ? 'Picked-up stitches run the other way: in ribbing or garter nobody sees it, in other stitches a line shows.'
        : 'A row is snipped and unpicked all around; the stitches are bound off downwards.',
    ],
  });
};

/** How long a panel in the side is: to the underarm, else all of the length. */
export const sideMm = (bench: Bench): number => {
  const at = ['underarm-length', 'body-length', 'length']
    .map((each) => indexOf(bench, each))
    .find((k) => k >= 0);
  return at === undefined ? 0 : bench.luck.median.there[at]!;
};

/** Girths that all change when the sides do. */
export const GIRTHS = ['chest', 'waist', 'hip', 'hem'] as const;

const sideways = (bench: Bench, aim: Aim): Told => {
  const { luck } = bench;
  const factors = new Map(
    GIRTHS.map((each) => indexOf(bench, each))
      .filter((at) => at >= 0)
      .map((at) => [at, Math.max(0.05, 1 + aim.byMm / luck.median.there[at]!)]),
  );
  const makes = withFactors(bench.planned, factors, times);
  const side = sideMm(bench);
  const each = Math.max(1, Math.round(Math.abs(aim.byMm) / 2 / luck.pitch.width.median));
  if (aim.byMm < 0)
    return {
      id: 'take-away:sides',
      kind: 'take-away',
      name: `Take in each side by ${mmToken(-aim.byMm / 2)} with a seam`,
      makes,
      counts: [{ what: 'stitches into each seam', count: each }],
      work: more(bench, { seamsMm: 2 * side, ends: 4 }),
      reasons: [because(aim), 'The fabric that is taken in stays inside as a ridge.'],
    };
  return {
    id: 'add:gusset',
    kind: 'add',
    name: `Knit a panel of ${each} stitches for each side and sew it in`,
    makes,
    counts: [{ what: 'stitches of a panel', count: each }],
    work: more(bench, {
      knit: [{ name: 'side panels', stitches: (2 * each * side) / luck.pitch.length.median }],
      castOn: 2 * each,
      bindOff: 2 * each,
      seamsMm: 4 * side,
      ends: 8,
    }),
    reasons: [
      because(aim),
      'A panel widens the body below the underarm alone: the armholes and the cross back stay as they are.',
    ],
  };
};

const openSides = (bench: Bench): Opened => {
  const name = 'Panels in the sides, or taking them in';
  const aim = firstAim(bench, 'width', 'body');
  const out = (why: string) => nothing('add', name, why);
  if (indexOf(bench, 'chest') < 0) return out('It has no sides.');
  if (aim === undefined || !GIRTHS.some((each) => each === aim.fit.landmark))
    return out('No girth of the body is likely to miss.');
  if (shareOfPart(bench.pieces, bench.question.progress, 'body') === 0)
    return out('The body is not begun: cast on the stitches that are wanted.');
  return one(bench, sideways(bench, aim));
};

/** Ways to add to what is knit or take away from it, without knitting it again. */
export const openAdding = (bench: Bench): Opened => {
  const sleeved = bench.pieces.some(({ part }) => part === 'sleeve');
  return together([
    openRows(bench, 'body'),
    ...(sleeved ? [openRows(bench, 'sleeve')] : []),
    openSides(bench),
  ]);
};
