import { type Measure, type RecountedLine, writeCounts, writeHeel } from '@dryflat/engine/counts';
import { sizeWords } from '@dryflat/engine/garment';
import {
  explain,
  formatCountOver,
  formatLength,
  formatOffBy,
  formatSigned,
  mm,
} from '@dryflat/engine/units';
import type { ToldCounts, ToldPart, ToldText } from '../commands/told-counts.ts';
import { inUnits, type Units } from '../faults.ts';
import type { Style } from './style.ts';
import { hanging, inCommon, padEnd, padStart } from './text.ts';
import { gaugeWord, inWords, landmarkName, STATE_WORDS, type Words } from './words.ts';

interface Telling {
  readonly units: Units;
  readonly words: Words;
  readonly style: Style;
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

const NAME = 34;
const CELL = 11;

const headings =
  padEnd('', NAME) +
  ['count', 'wanted', 'is', 'off by'].map((each) => padStart(each, CELL)).join('');

const measureLine = (each: Measure, { units, words }: Telling): string => {
  const what = each.direction === 'width' ? 'sts' : 'rows';
  const size = (value: number) => formatLength(mm(value), { unit: units, bare: true });
  const cells = [
    `${each.count} ${what}`,
    size(each.wantedMm),
    size(each.mm),
    formatOffBy(each.mm, each.wantedMm, { unit: units, bare: true }),
  ];
  const name = landmarkName(each.landmark, words).slice(0, NAME - 1);
  return padEnd(name, NAME) + cells.map((cell) => padStart(cell, CELL)).join('');
};

const numbered = (lines: readonly string[], { units }: Telling): string[] =>
  lines.flatMap((line, i) => hanging(`${padStart(String(i + 1), 4)}  `, inUnits(line, units)));

/** The foot of a sock is not cast on: it goes on from the heel. */
const linesOf = ({ name, counts }: ToldPart, words: Words): string[] => {
  const [first = '', ...rest] = writeCounts(counts.steps, { words, pitch: counts.pitch });
  const [castOn] = counts.steps;
  return name === 'foot' && castOn?.kind === 'cast-on'
    ? [`Go on in the round over all ${castOn.stitches} stitches.`, ...rest]
    : [first, ...rest];
};

const copiesOf = ({ counts }: ToldPart): string => {
  if (counts.copies === 1) return '';
  const [castOn] = counts.steps;
  const alike = counts.name === 'sleeve' || (castOn?.kind === 'cast-on' && castOn.round);
  return alike ? ', two of them' : ', two of them, the second reversed';
};

const partLines = (part: ToldPart, telling: Telling): string[] => {
  const { style, words } = telling;
  const { name, counts } = part;
  const copies = copiesOf(part);
  const lines = linesOf(part, words);
  return [
    '',
    style.strong(`${name}${copies}, ${counts.stitches} stitches`),
    style.quiet(headings),
    ...counts.measures.map((each) => measureLine(each, telling)),
    '',
    ...numbered(lines, telling),
  ];
};

const HALF = 38;

/** Two texts beside each other, each within its half of the line. */
const beside = (left: string, right: readonly string[]): string[] => {
  const [a, b] = [hanging('', left, HALF), right.flatMap((text) => hanging('', text, HALF))];
  return Array.from(
    { length: Math.max(a.length, b.length) },
    (_, i) => `  ${padEnd(a[i] ?? '', HALF)}  ${b[i] ?? ''}`,
  );
};

const offBy = ({ stitches, rows }: RecountedLine, units: Units): string => {
  const signed = (value: number) => formatSigned(mm(value), { unit: units });
  const wide =
    stitches === null
      ? ''
      : `${stitches.mine} for ${stitches.theirs} stitches, ${signed(stitches.errorMm)}; `;
  return `${wide}${rows.mine} for ${rows.theirs} rows, ${signed(rows.errorMm)}`;
};

const besideLine = (each: RecountedLine, telling: Telling): string[] => {
  const { words, units, style } = telling;
  const write = (steps: RecountedLine['mine']) =>
    writeCounts(steps, { words }).map((text) => inUnits(text, units));
  return [
    ...beside(write([each.theirs])[0] ?? '', write(each.mine)),
    ...hanging('      ', offBy(each, units)).map(style.quiet),
  ];
};

const textLines = ({ piece, found }: ToldText, telling: Telling): string[] => {
  const { style, units, words } = telling;
  const heading = style.heading(`The pattern’s own counts of: ${piece}`);
  if (!found.ok)
    return [
      '',
      heading,
      ...found.faults.flatMap((each) => hanging('  - ', inUnits(explain(each), units))),
    ];
  const columns = beside('as printed', [`at your ${gaugeWord(words).toLowerCase()}`]);
  return [
    '',
    heading,
    ...columns.map(style.quiet),
    ...found.value.lines.flatMap((each) => besideLine(each, telling)),
  ];
};

const gaugeLine = ({ pitch }: ToldCounts, { units, words }: Telling): string => {
  const span = units === 'cm' ? '10cm' : '4in';
  const over = (what: 'stitches' | 'rows', size: number) =>
    formatCountOver({ count: 1, over: mm(size) }, what, span);
  const state = STATE_WORDS[pitch.state];
  return `${gaugeWord(words)}, ${state}, as forecast: ${over('stitches', pitch.stitch)}, ${over('rows', pitch.row)}. Lengths are flat, and ${state}.`;
};

const heelLines = ({ heel }: ToldCounts, style: Style): string[] =>
  heel === null ? [] : ['', style.strong('heel'), '', ...hanging('', writeHeel(heel))];

const block = (
  heading: string,
  texts: readonly string[],
  { style, units, words }: Telling,
): string[] =>
  texts.length === 0
    ? []
    : [
        '',
        style.heading(heading),
        ...texts.flatMap((text) => hanging('  - ', inWords(inUnits(text, units), words))),
      ];

const sizeLines = (told: ToldCounts, telling: Telling): string[] => {
  const { style } = telling;
  return [
    ...told.parts.flatMap((part) => [
      ...(part.name === 'foot' ? heelLines(told, style) : []),
      ...partLines(part, telling),
    ]),
    ...told.texts.flatMap((text) => textLines(text, telling)),
  ];
};

/** Counts for a reader at a terminal; those of each size one after the other, where it is open. */
export const countsReport = (
  told: readonly ToldCounts[],
  notices: readonly string[],
  telling: Telling,
): string => {
  const { style } = telling;
  const [first] = told;
  const open = told.length > 1;
  const { common, own } = inCommon(
    told.map(({ parts, notices: ofSize }) =>
      [...parts.flatMap(({ counts }) => counts.notices), ...ofSize].map(({ text }) => text),
    ),
  );
  const lines = [
    style.strong(`${first?.record.name}${open ? ', no size chosen' : ''}`),
    ...(open ? hanging('', 'Which size? Each follows; --size asks for one.').map(style.quiet) : []),
    ...(first ? hanging('', gaugeLine(first, telling)).map(style.quiet) : []),
    ...told.flatMap((each, k) => [
      ...(open ? ['', style.heading(capital(sizeWords(each.record.pattern.chosen ?? '')))] : []),
      ...sizeLines(each, telling),
      ...block('To know of this size', own[k] ?? [], telling),
    ]),
    ...block('To know', [...new Set([...common, ...notices])], telling),
  ];
  return `${lines
    .map((line) => line.trimEnd())
    .join('\n')
    .replaceAll('\u00a0', ' ')}\n`;
};
