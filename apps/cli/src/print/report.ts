import { type Forecast, sizeWords } from '@dryflat/engine/garment';
import type { GarmentRecord } from '@dryflat/record';
import { inUnits, type Units } from '../faults.ts';
import { basisLines, numbered } from './bases.ts';
import { cite } from './cite.ts';
import { fitLines, sizeLines } from './fit.ts';
import { gaugeLines } from './gauge.ts';
import { measurementLines } from './measurements.ts';
import type { Style } from './style.ts';
import { hanging } from './text.ts';
import { inWords, STATE_WORDS, type Words } from './words.ts';

export interface Reporting {
  readonly units: Units;
  readonly words: Words;
  readonly style: Style;
}

const titleLines = (record: GarmentRecord, forecast: Forecast, { units, style }: Reporting) => {
  const { chosenSize } = forecast;
  const size =
    chosenSize === null || record.pattern.sizes.length === 1 ? '' : `, ${sizeWords(chosenSize)}`;
  const unit = units === 'cm' ? 'centimetres' : 'inches';
  const pinned = forecast.measurements.some(({ pinnedMm }) => pinnedMm !== null)
    ? ' → marks what it is pinned to.'
    : '';
  return [
    style.strong(`${record.name}${size}`),
    ...hanging(
      '',
      `All lengths in ${unit}. Below each likeliest number stands the range that should hold nine times in ten.${pinned}`,
    ).map(style.quiet),
  ];
};

const adviceLines = ({ advice }: Forecast, { units, words }: Reporting): string[] =>
  advice.sentence === '' ? [] : hanging('', inWords(inUnits(advice.sentence, units), words));

/** Where it was measured later than the plan judges, that is said. */
const laterLines = ({ plan }: GarmentRecord, { judgedAt }: Forecast): string[] =>
  judgedAt === plan.judgeAt
    ? []
    : hanging(
        '',
        `The fit that counts is ${STATE_WORDS[plan.judgeAt]}; it was measured ${STATE_WORDS[judgedAt]} since, and is judged so.`,
      );

/** Notices of the engine and of the file, one paragraph each, none hidden. */
export const noticeLines = (texts: readonly string[], { units, style }: Reporting): string[] =>
  texts.length === 0
    ? []
    : [style.warning('To know'), ...texts.flatMap((text) => hanging('  - ', inUnits(text, units)))];

const withHeading = ([first, ...rest]: readonly string[], style: Style): string[] =>
  first === undefined ? [] : [style.heading(first), ...rest];

/** Blocks of lines with an empty line between them, those without a line left out. */
export const inBlocks = (blocks: readonly (readonly string[])[]): string => {
  const text = blocks
    .filter((block) => block.length > 0)
    .map((block) => block.map((line) => line.trimEnd()).join('\n'))
    .join('\n\n');
  return `${text.replaceAll('\u00a0', ' ')}\n`;
};

/** The whole forecast for a reader at a terminal: measurements, gauge, fit, notices, evidence. */
export const report = (
  record: GarmentRecord,
  forecast: Forecast,
  notices: readonly string[],
  reporting: Reporting,
): string => {
  const { units, words, style } = reporting;
  const blocks = [
    titleLines(record, forecast, reporting),
    measurementLines(forecast, numbered(forecast.evidence), units, style),
    withHeading(gaugeLines(forecast, units, words), style),
    withHeading(fitLines(forecast, units, words), style),
    withHeading(sizeLines(forecast), style),
    laterLines(record, forecast),
    adviceLines(forecast, reporting),
    noticeLines(
      [...forecast.notices.map(({ text }) => inWords(text, words)), ...notices],
      reporting,
    ),
    withHeading(basisLines(forecast.evidence, cite, reporting), style),
    [
      style.quiet(
        `${forecast.draws} draws from seed ${forecast.seed}: the same file and seed give the same bytes.`,
      ),
    ],
  ];
  return inBlocks(blocks);
};
