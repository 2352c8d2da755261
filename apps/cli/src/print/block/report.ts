import type {
  BlockPlan,
  MeasurementPlanned,
  OrderTried,
  OrderWay,
  PiecePlan,
  PinKind,
  StretchUse,
} from '@dryflat/engine/blocking';
import { formatLength, formatRange, mm } from '@dryflat/engine/units';
import type { GarmentRecord } from '@dryflat/record';
import { inUnits, type Units } from '../../faults.ts';
import type { Style } from '../style.ts';
import { hanging, padEnd, padStart } from '../text.ts';
import { inWords, landmarkName, type Words } from '../words.ts';
import { edgeWord, many, named, PIN_WORDS } from './words.ts';

export interface Telling {
  readonly units: Units;
  readonly words: Words;
  readonly style: Style;
}

const NAME = 20;
const CELL = 8;
const WIDE = 14;

const length = (value: number, unit: Units) => formatLength(mm(value), { unit, bare: true });

const headings =
  padEnd('', NAME) +
  ['wet', 'wanted'].map((each) => padStart(each, CELL)).join('') +
  ['on the mat', 'dried', 'rewashed'].map((each) => padStart(each, WIDE)).join('');

const measurementLine = (row: MeasurementPlanned, { units, words }: Telling): string => {
  const name = landmarkName(row.landmark, words).slice(0, NAME - 1);
  const spans = [row.reachedMm, row.afterDryingMm, row.afterRewashMm].map(({ p05Mm, p95Mm }) =>
    padStart(formatRange(p05Mm, p95Mm, units, { bare: true }), WIDE),
  );
  return (
    padEnd(name, NAME) +
    padStart(length(row.restMm, units), CELL) +
    padStart(length(row.targetMm, units), CELL) +
    spans.join('')
  );
};

const pinLines = (plan: PiecePlan, { units, words }: Telling): string[] => {
  const far = (value: number) => formatLength(mm(value), { unit: units });
  return plan.pins.flatMap(({ order, kind, edge, from: [a, b], pullN, along }) => {
    const what = `${PIN_WORDS[kind]}${along === null ? '' : ` of ${far(along.lengthMm)}, its middle`}`;
    const text = `${what} in the ${edgeWord(edge, words)}: ${far(a.mm)} from ${a.name}, ${far(b.mm)} from ${b.name}; pulls ${pullN.toFixed(1)} N`;
    return hanging(`${padStart(String(order), 4)}  `, text);
  });
};

const said = (texts: readonly string[], { units, words }: Telling): string[] =>
  texts.flatMap((text) => hanging('  - ', inWords(inUnits(text, units), words)));

const block = (heading: string, lines: readonly string[], style: Style): string[] =>
  lines.length === 0 ? [] : ['', style.heading(heading), ...lines];

const percent = (share: number) => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;

const gentlerTexts = ({ gentler }: PiecePlan, { words }: Telling): string[] =>
  gentler.slice(1).map(({ share, largestStretch, reached, beyondSafe }) => {
    const list = reached.map(
      ({ name, mm: value }) => `${landmarkName(name, words)} {mm:${value.toFixed(1)}}`,
    );
    const safe = beyondSafe.length === 0 ? ', nothing beyond what is called safe' : '';
    return `${percent(share)} of the stretch (at most ${percent(largestStretch)}${safe}): ${list.join(', ')}`;
  });

const WAYS: Readonly<Record<OrderWay, string>> = {
  outwards: 'from the middle of the top outwards',
  'lower-edge-first': 'the lower edge first, then the upper one, then the sides',
  'as-it-stood': 'as it was planned',
};

/** A rise of less is nothing on a tape, mm. */
const RISES = 1;

const fares = ({ slipped, lowerEdgeRisesMm }: OrderTried): string =>
  [
    slipped === 0 ? ', and none slips' : `, and ${many(slipped, 'pin')} would slip`,
    lowerEdgeRisesMm < RISES
      ? ''
      : `; the lower edge rises by {mm:${lowerEdgeRisesMm.toFixed(1)}} before it is pinned`,
  ].join('');

/** What trying the order, and another with all pins at the same places, has shown. */
const orderTexts = ({ orders: { planned, other } }: PiecePlan): string[] =>
  planned === null
    ? []
    : [
        `In this order, ${WAYS[planned.way]}, no pin bears more than ${planned.highestPullN.toFixed(1)} N on the way${fares(planned)}.${
          other === null
            ? ''
            : ` With the same pins ${WAYS[other.way]} it would be ${other.highestPullN.toFixed(1)} N${fares(other)}.`
        }`,
      ];

const stretchText = ({ overWet, along, edge, where }: StretchUse, words: Words): string => {
  const what = edge === null ? 'fabric' : edgeWord(edge, words);
  const way = along === 'width' ? 'across' : 'lengthwise';
  return `At its worst the ${what} is stretched to ${percent(overWet)} over its wet size ${way}, {mm:${where.x.toFixed(0)}} from the left of the mat and {mm:${where.y.toFixed(0)}} from its top.`;
};

const summary = (plan: PiecePlan, words: Words): string[] => {
  const counts = new Map<PinKind, number>();
  for (const { kind } of plan.pins) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const list = [...counts].map(([kind, count]) => many(count, PIN_WORDS[kind]));
  if (plan.pinsForWires > 0) list.push(`${many(plan.pinsForWires, 'pin')} along the wires`);
  const { stretchUse, scallopMm } = plan;
  return [
    list.length === 0 ? 'No pins.' : `${list.join(', ')}.`,
    stretchText(stretchUse, words),
    `Between pins the edge lies up to {mm:${scallopMm.max.toFixed(1)}} inside its line.`,
    ...orderTexts(plan),
  ];
};

const pieceLines = (plan: PiecePlan, telling: Telling): string[] => {
  const { style, words } = telling;
  const sewn = plan.layers === 2 ? ', sewn, lying double' : '';
  const before = (plan.beforeSewing ?? []).map(
    ({ name, mm: value }) => `${landmarkName(name, words)} {mm:${value.toFixed(1)}}`,
  );
  return [
    style.strong(`${plan.name}${sewn}`),
    style.quiet(headings),
    ...plan.measurements.map((row) => measurementLine(row, telling)),
    '',
    ...summary(plan, words).flatMap((text) => hanging('', inUnits(text, telling.units))),
    ...block('Pins, in this order', pinLines(plan, telling), style),
    ...block(
      'What it will not do',
      said(
        plan.couldNot.map(({ what, why }) => `${named(what, words)}: ${why}.`),
        telling,
      ),
      style,
    ),
    ...block(
      'With more at hand',
      said(
        plan.moreStock.map(({ what, gains }) => `${what}: ${gains}.`),
        telling,
      ),
      style,
    ),
    ...block('With less stretch', said(gentlerTexts(plan, telling), telling), style),
    ...block('Pinned so before sewing', said(before, telling), style),
  ];
};

/** What is to be known before any pin. */
const SAID_FIRST = 'mat-too-small';

/** A plan for a reader at a terminal. */
export const blockReport = (
  record: GarmentRecord,
  plan: BlockPlan,
  notices: readonly string[],
  telling: Telling,
): string => {
  const { style, units, words } = telling;
  const unit = units === 'cm' ? 'centimetres' : 'inches';
  const to = `Lengths in ${unit}, flat. Ranges should hold nine times in ten. Lay a piece in the middle of the mat, its hem towards you.`;
  const texts = (isFirst: boolean): string[] =>
    plan.notices
      .filter(({ code }) => (code === SAID_FIRST) === isFirst)
      .map(({ text }) => named(text, words));
  const lines = [
    style.strong(record.name),
    ...hanging('', to).map(style.quiet),
    ...block('Larger than the mat', said(texts(true), telling), style),
    ...plan.pieces.flatMap((piece) => ['', ...pieceLines(piece, telling)]),
    ...block('To know', said([...texts(false), ...notices], telling), style),
  ];
  return `${lines
    .map((line) => line.trimEnd())
    .join('\n')
    .replaceAll('\u00a0', ' ')}\n`;
};
