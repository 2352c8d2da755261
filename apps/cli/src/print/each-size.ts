import {
  type EachSize,
  type Forecast,
  keyMeasurements,
  type MeasurementForecast,
  sizeWords,
} from '@dryflat/engine/garment';
import { formatLength, formatRange, mm } from '@dryflat/engine/units';
import type { GarmentRecord } from '@dryflat/record';
import type { Units } from '../faults.ts';
import { chanceText } from './chance.ts';
import { inBlocks, noticeLines, type Reporting } from './report.ts';
import { hanging, padStart } from './text.ts';
import { inWords, STATE_WORDS } from './words.ts';

const number = (
  { judgedAt }: Forecast,
  { name, direction, span, states }: MeasurementForecast,
  unit: Units,
): string => {
  const { p05Mm, p50Mm, p95Mm } = states[judgedAt];
  const around = direction === 'width' ? `, ${span}` : '';
  return `${name}${around}: ${formatLength(mm(p50Mm), { unit, bare: true })} (${formatRange(p05Mm, p95Mm, unit)})`;
};

const sizeLines = (forecast: Forecast, best: string | null, unit: Units): string[] => {
  const chance =
    forecast.chanceAllFit === null ? '' : `${padStart(chanceText(forecast.chanceAllFit), 9)}  `;
  const numbers = keyMeasurements(forecast).map((each) => number(forecast, each, unit));
  const said = numbers.length === 0 ? 'the pattern gives no number for it' : numbers.join('; ');
  const fits = forecast.chosenSize === best ? ', fits best' : '';
  return hanging(chance, `${sizeWords(forecast.chosenSize ?? '')}${fits}: ${said}`);
};

/** Every size of a garment of which nobody has said the size, one paragraph each, and what holds for all. */
export const eachSizeReport = (
  record: GarmentRecord,
  { sizes, best, notices }: EachSize,
  others: readonly string[],
  reporting: Reporting,
): string => {
  const { units, words, style } = reporting;
  const [first] = sizes;
  const state = STATE_WORDS[first?.judgedAt ?? 'dried'];
  const wanted = sizes.some(({ chanceAllFit }) => chanceAllFit !== null);
  const blocks = [
    [
      style.strong(`${record.name}, no size chosen`),
      ...hanging(
        '',
        `Which size? Each as it would come out ${state}, begun afresh: ${wanted ? 'the chance that all that is wanted fits, then ' : ''}the likeliest number with the range that should hold nine times in ten.`,
      ).map(style.quiet),
    ],
    sizes.flatMap((each) => sizeLines(each, best, units)),
    hanging(
      '',
      wanted && best === null
        ? 'In none of them all that is wanted is likely to fit.'
        : 'Choose one in pattern.chosen. All of one size: add --size.',
    ),
    noticeLines([...notices.map(({ text }) => inWords(text, words)), ...others], reporting),
    [
      style.quiet(
        `${first?.draws ?? 0} draws from seed ${first?.seed ?? 0}: the same file and seed give the same bytes.`,
      ),
    ],
  ];
  return inBlocks(blocks);
};
