import { sizeWords } from '@dryflat/engine/garment';
import type { SizeAtNeedle } from '@dryflat/engine/routes';
import type { ToldRoutes } from '../../commands/told-routes.ts';
import { chanceText } from '../chance.ts';
import type { Reporting } from '../report.ts';
import { padEnd, padStart } from '../text.ts';
import { inWords } from '../words.ts';

const NAME = 34;
const CELL = 11;

const nameOf = ({ size, lengthsOf }: SizeAtNeedle): string =>
  size === lengthsOf ? sizeWords(size) : `stitches of ${size}, lengths of ${lengthsOf}`;

const needleOf = ({ needleMm, gaugeFrom }: SizeAtNeedle): string =>
  needleMm === null ? 'this needle' : `${needleMm} mm${gaugeFrom === 'model' ? '*' : ''}`;

/** More needles than a line of 80 columns holds are left to `--json`. */
const MOST = Math.floor((80 - NAME) / CELL);

const MOVED = '  * by a usual step of the needle; knit a swatch on it to be sure';

/** Before casting on: the chance of all that is wanted, sizes down and needles across; nothing once it is begun. */
export const sizeLines = (
  { sizes, question }: ToldRoutes,
  { style, words }: Reporting,
): string[] => {
  const needles = [...new Set(sizes.map(needleOf))].slice(0, MOST);
  const names = [...new Set(sizes.map(nameOf))];
  const begun = question.progress.some(({ share }) => share > 0);
  if (begun || names.length < 2 || sizes.every(({ chanceAllFit }) => chanceAllFit === null))
    return [];
  const cell = (name: string, needle: string): string => {
    const found = sizes.find((each) => nameOf(each) === name && needleOf(each) === needle);
    return padStart(found === undefined ? '' : chanceText(found.chanceAllFit ?? 0), CELL);
  };
  return [
    style.heading('Before casting on: chance of all of it, by size and needle'),
    `${padEnd('', NAME)}${needles.map((needle) => padStart(needle, CELL)).join('')}`,
    ...names.map(
      (name) => `  ${padEnd(name, NAME - 2)}${needles.map((each) => cell(name, each)).join('')}`,
    ),
    ...(needles.some((needle) => needle.endsWith('*')) ? [style.quiet(inWords(MOVED, words))] : []),
  ];
};
