import { type PartName, partOf } from '../../garment/index.ts';
import { percentText } from '../../stats/index.ts';
import type { Make } from '../knit/luck.ts';
import { times } from '../knit/makes.ts';
import { shareOf, shareOfPart, type Work } from '../price/work.ts';
import { plannedMat } from './afresh.ts';
import { type Aim, firstAim, indexOf, withFactors } from './aim.ts';
import {
  type Bench,
  type Draft,
  edgeWord,
  mmToken,
  nothing,
  type Opened,
  spoken,
  together,
} from './draft.ts';
import { finishing } from './drying.ts';
import { knittingOf } from './rip.ts';
import { rowsWord } from './row-words.ts';

/** The width of the edge that rows are added to. */
const EDGE: Readonly<Record<PartName, 'hem' | 'cuff'>> = { body: 'hem', sleeve: 'cuff' };

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
  `The ${spoken(aim.fit.landmark)} as planned comes out in range with ${percentText(aim.fit.chance)}.`;

type Told = Omit<Draft, 'luck' | 'judged'>;
const one = (bench: Bench, told: Told): Opened => ({
  drafts: [{ luck: bench.luck, judged: bench.own, ...told }],
  leftOut: [],
});

const rowsOf = (bench: Bench, mm: number): number =>
  Math.max(1, Math.round(Math.abs(mm) / bench.luck.pitch.length.median));

/** More than this share of a length is not taken off it. */
const MOST_TAKEN = 0.9;

/** Rows of the ribbing that lies below the rows that are taken out; it is knit on again. */
const borderRows = (bench: Bench): number => {
  const at = indexOf(bench, 'rib-depth');
  return at < 0 ? 0 : rowsOf(bench, bench.luck.median.there[at]!);
};

/** Lengths that the lower edge of a part ends: rows there change them and nothing above. */
const FROM_EDGE: ReadonlySet<string> = new Set([
  'body-length',
  'underarm-length',
  'sleeve-length',
  'hat-height',
  'leg-length',
  'length',
]);

/** The lower edge moved by so many rows: every length that it ends gets that much longer. */
const edgeMakes = (bench: Bench, part: PartName, byMm: number): Make[] => {
  const { luck, planned } = bench;
  const factors = new Map(
    luck.known.model.measurements.flatMap(({ wanted: { landmark } }, at) =>
      FROM_EDGE.has(landmark) && partOf(landmark) === part
        ? [[at, 1 + byMm / luck.median.there[at]!] as const]
        : [],
    ),
  );
  return withFactors(planned, factors, times);
};

/** Of sleeves one by one. */
const edgeSteps = (
  part: PartName,
  all: string,
  {
    longer,
    rows,
    border,
    stitches,
  }: Record<'rows' | 'border' | 'stitches', number> & {
    readonly longer: boolean;
  },
): string[] => {
  const many = Math.round(stitches / (part === 'sleeve' ? 2 : 1));
  const edge = part === 'sleeve' ? 'each cuff' : `the ${all}`;
  if (longer)
    return [
      `Pick up about ${many} stitches along ${edge}, knit ${rowsWord(rows)} downwards, and bind off.`,
    ];
  const first = border > 0 ? `row ${border}, where the ribbing ends,` : 'the cast-on edge';
  const take = `At ${edge}, take out all from ${first} up to row ${border + rows}, counted from the cast-on edge`;
  return border > 0
    ? [
        `${take}: snip a stitch there and unpick the row all around.`,
        `Put the about ${many} stitches above it on the needle, knit the ${border} rows of ribbing downwards, and bind off.`,
      ]
    : [`${take}, and bind the about ${many} stitches above it off downwards.`];
};

/** A piece that is not begun has those rows as it is knit. */
const restSteps = ({ pieces, question }: Bench, part: PartName, by: number): string[] =>
  pieces
    .filter(({ name, part: on }) => on === part && shareOf(question.progress, name) === 0)
    .map(
      ({ name }) =>
        `Knit the ${name} with ${rowsWord(by)} ${by > 0 ? 'more' : 'fewer'} above its ribbing.`,
    );

/** Rows at the lower edge, added or taken off; a change of length without ripping what is above. */
const openRows = (bench: Bench, part: PartName): Opened => {
  const edge = edgeWord(bench, part);
  const out = (why: string) => nothing('add', `Rows at the ${edge}`, why);
  const aim = firstAim(bench, 'length', part);
  if (aim === undefined) return out('No length of it that is wanted is likely to miss.');
  if (!FROM_EDGE.has(aim.fit.landmark))
    return out(`The ${spoken(aim.fit.landmark)} does not end there.`);
  if (shareOfPart(bench.pieces, bench.question.progress, part) === 0)
    return out('It is not begun: knit it to the length at once.');
  const rows = rowsOf(bench, aim.byMm);
  const longer = aim.byMm > 0;
  const row = bench.luck.pitch.length.median;
  if (!longer && rows * row > MOST_TAKEN * bench.luck.median.there[aim.target.at]!)
    return out('More would have to come off than is worth keeping.');
  const stitches = edgeStitches(bench, part);
  const fabric = (deep: number) => ({ name: `${edge} border`, stitches: stitches * deep });
  const border = borderRows(bench);
  return one(bench, {
    id: `${longer ? 'add' : 'take-away'}:${edge}`,
    kind: longer ? 'add' : 'take-away',
    name: longer
      ? `Pick up along the ${edge} and knit a border of ${rowsWord(rows)} downwards`
      : border > 0
        ? `Take ${rowsWord(rows)} out above the ribbing of the ${edge} and knit the ribbing on again`
        : `Take ${rowsWord(rows)} off at the ${edge}, bound off downwards`,
    makes: edgeMakes(bench, part, (longer ? rows : -rows) * row),
    knitting: knittingOf({ edge: { at: EDGE[part], rows: longer ? rows : -rows } }),
    counts: [{ what: 'rows', count: rows }],
    steps: [
      ...edgeSteps(part, edge, { longer, rows, border, stitches }),
      ...restSteps(bench, part, longer ? rows : -rows),
    ],
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

/** All girths of the body by so many mm wider. */
export const girthsBy = (bench: Bench, byMm: number): Make[] => {
  const { median } = bench.luck;
  const factors = new Map(
    GIRTHS.map((each) => indexOf(bench, each))
      .filter((at) => at >= 0)
      .map((at) => [at, Math.max(0.05, 1 + byMm / median.there[at]!)]),
  );
  return withFactors(bench.planned, factors, times);
};

const takenIn = (bench: Bench, aim: Aim): Told => {
  const byEach = -aim.byMm / 2;
  const stitches = Math.max(1, Math.round(byEach / bench.luck.pitch.width.median));
  return {
    id: 'take-away:sides',
    kind: 'take-away',
    name: `Take in each side by ${mmToken(byEach)} with a seam`,
    makes: girthsBy(bench, aim.byMm),
    knitting: knittingOf({ sides: { stitches: -stitches, mm: -byEach } }),
    counts: [{ what: 'stitches into each seam', count: stitches }],
    work: more(bench, { seamsMm: 2 * sideMm(bench), ends: 4 }),
    reasons: [because(aim), 'The fabric that is taken in stays inside as a ridge.'],
  };
};

const withPanels = (bench: Bench, aim: Aim): Told => {
  const { pitch } = bench.luck;
  const side = sideMm(bench);
  const each = Math.max(1, Math.round(aim.byMm / 2 / pitch.width.median));
  const mm = each * pitch.width.median;
  return {
    id: 'add:gusset',
    kind: 'add',
    name: `Knit a panel of ${each} stitches for each side and sew it in`,
    makes: girthsBy(bench, 2 * mm),
    knitting: knittingOf({ sides: { stitches: each, mm } }),
    counts: [{ what: 'stitches of a panel', count: each }],
    work: more(bench, {
      knit: [{ name: 'side panels', stitches: (2 * each * side) / pitch.length.median }],
      castOn: 2 * each,
      bindOff: 2 * each,
      seamsMm: 4 * side,
      ends: 8,
    }),
    steps: [
      `Knit two panels of ${each} stitches and ${Math.round(side / pitch.length.median)} rows, and sew one into each side, from the lower edge to the underarm.`,
    ],
    reasons: [
      because(aim),
      'A panel widens the body below the underarm alone: the armholes and the cross back stay as they are.',
    ],
  };
};

const sideways = (bench: Bench, aim: Aim): Told =>
  aim.byMm < 0 ? takenIn(bench, aim) : withPanels(bench, aim);

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
