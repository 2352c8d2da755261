import { safeStretchOf } from '../../fabric/index.ts';
import { endsInPoints, wetStretch } from '../../garment/index.ts';
import { percentText } from '../../stats/index.ts';
import type { Make } from '../knit/luck.ts';
import { hardMakes, layMakes, pinMakes, wetMm } from '../knit/makes.ts';
import { type Mat, workOf } from '../price/work.ts';
import {
  type Bench,
  type Draft,
  mmToken,
  nothing,
  type Opened,
  spoken,
  together,
} from './draft.ts';

/** The garment finished as it is, and handled so. */
export const finishing = (bench: Bench, mat: Mat) =>
  workOf(bench.pieces, bench.question.progress, {
    stitch: bench.forecast.stitch,
    mat,
    sewn: bench.question.dried,
  });

const base = (bench: Bench) => ({ luck: bench.luck, judged: bench.own });

const lay = (bench: Bench): Draft => {
  const { question, forecast, luck } = bench;
  const before = bench.begun > 0 ? 'Go on as planned' : 'Knit it as planned';
  return {
    ...base(bench),
    id: 'lay',
    kind: 'lay',
    name: question.dried ? 'Leave it as it is' : `${before} and dry it flat, without pins`,
    makes: layMakes(luck),
    work: finishing(bench, question.dried ? 'none' : 'lay'),
    planned: forecast.drying === 'lay',
    reasons: ['Nothing is stretched, so the next wash gives nothing back.'],
  };
};

/** How far each pinned measurement is stretched, as a share of its wet length; 0 where it lies as large. */
const stretches = (bench: Bench, makes: readonly Make[]) =>
  makes.flatMap((make, at) => {
    if (make.pinnedTo === null) return [];
    const wet = wetMm(bench.luck, make, at);
    const asked = Math.max(0, make.pinnedTo / wet - 1);
    const { wanted } = bench.luck.known.model.measurements[at]!;
    return [{ at, wanted, asked, done: Math.min(asked, make.limit) }];
  });

type Stretch = ReturnType<typeof stretches>[number];

const largest = (all: readonly Stretch[], by: (s: Stretch) => number): Stretch | null =>
  all.reduce<Stretch | null>((a, b) => (a === null || by(b) > by(a) ? b : a), null);

/** Where one pin has to hold what is stretched, whether it does is not known here. */
const onOnePin = ({ forecast: { kind } }: Bench, all: readonly Stretch[]): string[] => {
  const held = all
    .filter(({ done, wanted }) => done >= 0.01 && endsInPoints(kind, wanted.landmark))
    .map(({ wanted }) => `the ${spoken(wanted.landmark)}`);
  return held.length === 0
    ? []
    : [
        `The points at the ends of ${held.join(' and of ')} hang on one pin each, and it is counted on to hold: the plan for the mat says how far short they stay.`,
      ];
};

/** What the next soak takes back, where that is most. */
const takenBack = (bench: Bench, makes: readonly Make[]): string => {
  const lost = stretches(bench, makes).map((each) => {
    const make = makes[each.at]!;
    const { luck } = bench;
    const mm =
      luck.range(each.at, make, 'dried').p50Mm - luck.range(each.at, make, 'rewashed').p50Mm;
    return { ...each, mm };
  });
  const most = lost.reduce<(typeof lost)[number] | null>(
    (a, b) => (a === null || b.mm > a.mm ? b : a),
    null,
  );
  return most === null || most.mm < 1
    ? 'The next wash takes hardly anything back.'
    : `The next wash without pins takes back about ${mmToken(most.mm)} at the ${spoken(most.wanted.landmark)}.`;
};

const heat = ({ forecast }: Bench): string[] =>
  forecast.fibres.some(({ fibre, share }) => fibre === 'acrylic' && share >= 0.3)
    ? ['Acrylic keeps hardly any of a wet stretch, and heat ruins it for good.']
    : [];

const reached = (all: readonly Stretch[]): string => {
  const most = largest(all, ({ done }) => done);
  return most === null || most.done < 0.001
    ? 'Everything lies as large as it is pinned already; pins only square it.'
    : `Pinning stretches the ${spoken(most.wanted.landmark)} by ${(100 * most.done).toFixed(1)} % of its wet length.`;
};

const short = (all: readonly Stretch[]): string[] => {
  const most = largest(all, ({ asked, done }) => asked - done);
  return most === null || most.asked - most.done < 0.005
    ? []
    : [
        `It stops short of the ${spoken(most.wanted.landmark)} that is wanted, which asks for ${(100 * most.asked).toFixed(1)} %.`,
      ];
};

const pinned = (
  bench: Bench,
  draft: Pick<Draft, 'id' | 'kind' | 'name'>,
  makes: readonly Make[],
  more: readonly string[] = [],
): Draft => {
  const all = stretches(bench, makes);
  return {
    ...base(bench),
    ...draft,
    makes,
    work: finishing(bench, 'pin'),
    planned: draft.kind === 'schematic' && bench.forecast.drying === 'pin',
    reasons: [
      reached(all),
      ...short(all),
      ...onOnePin(bench, all),
      takenBack(bench, makes),
      ...more,
      ...heat(bench),
    ],
    bases: ['kept-share'],
  };
};

const again = ({ question }: Bench): string =>
  question.dried ? 'Wet it again and block' : 'Block';

const gentle = (bench: Bench): Opened => {
  const { limit } = safeStretchOf(bench.forecast);
  const makes = pinMakes(bench.luck, limit);
  const whole = stretches(bench, pinMakes(bench.luck));
  if (whole.every(({ asked }) => asked <= limit))
    return nothing(
      'gentle',
      'Block it gently',
      'Blocking to the schematic stretches nothing by more than what is called safe: the two are one.',
    );
  const name = `${again(bench)} it gently, no stretch over ${percentText(limit)}`;
  return { drafts: [pinned(bench, { id: 'gentle', kind: 'gentle', name }, makes)], leftOut: [] };
};

const schematic = (bench: Bench): Opened => ({
  drafts: [
    pinned(
      bench,
      { id: 'schematic', kind: 'schematic', name: `${again(bench)} it to the schematic` },
      pinMakes(bench.luck),
    ),
  ],
  leftOut: [],
});

/** A load that pulls hard at the edges, N/mm: three times what pinning by hand is trusted with. Assumption. */
const FULL_LOAD = 0.3;

/** Share of what the fabric gives at all that is asked of it where that is most. */
const ofGive = (bench: Bench, all: readonly Stretch[]): string => {
  const stretch = wetStretch(bench.forecast);
  const give = (d: 'width' | 'length') => stretch(d, FULL_LOAD);
  const most = largest(all, ({ done, wanted }) => done / give(wanted.direction));
  if (most === null) return '';
  const share = most.done / give(most.wanted.direction);
  return `That is ${percentText(Math.min(1, share))} of what such fabric gives under a load that pulls hard at its edges: they scallop, pins bend, and a thin place may run.`;
};

const harder = (bench: Bench): Opened => {
  const makes = hardMakes(bench.forecast, bench.luck);
  const all = stretches(bench, makes);
  if (all.every(({ asked }) => asked < 0.005))
    return nothing(
      'harder',
      'Block it harder',
      'What is pinned lies as large as it is wanted already, and pins do not push.',
    );
  const name = `${again(bench)} it harder, beyond the schematic, so that what stays is enough`;
  const draft = { id: 'harder', kind: 'harder', name } as const;
  return { drafts: [pinned(bench, draft, makes, [ofGive(bench, all)])], leftOut: [] };
};

/** Ways to dry what is knit, or will be, as it is planned. */
export const openDrying = (bench: Bench): Opened => {
  const none = bench.luck.pinned.every(({ pinnedTo }) => pinnedTo === null);
  const first = { drafts: [lay(bench)], leftOut: [] };
  if (!none) return together([first, gentle(bench), schematic(bench), harder(bench)]);
  const why = 'No measurement but ribbing has a length to pin to.';
  return together([
    first,
    nothing('gentle', 'Block it gently', why),
    nothing('schematic', 'Block it to the schematic', why),
    nothing('harder', 'Block it harder', why),
  ]);
};
