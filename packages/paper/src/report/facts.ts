import { formatMass, formatYarnLength } from '@dryflat/engine/units';
import type { Telling } from '../input/telling.ts';
import type { Report } from './report.ts';
import type { YarnUsed } from './used.ts';

type Fact = readonly [what: string, is: string];

const WASHINGS: Readonly<Record<Report['washing'], string | null>> = {
  'by-hand': 'by hand',
  'machine-wool': 'machine, wool cycle',
  'machine-warm': 'machine, warm',
  'not-said': null,
};

const washed = ({ washing, drying }: Report): string =>
  [WASHINGS[washing], drying === 'pin' ? 'pinned out' : 'dried flat without pins']
    .filter((each) => each !== null)
    .join(', ');

/** Grams, and ounces too for a reader of inches; metres or yards where the band tells them. */
const massWords = (grams: number, { units }: Telling): string =>
  units === 'in'
    ? `${formatMass(grams, { unit: 'oz' })} (${formatMass(grams, { unit: 'g' })})`
    : formatMass(grams, { unit: 'g' });

const lengthWords = (metres: number, { units }: Telling): string =>
  formatYarnLength(metres, { unit: units === 'in' ? 'yd' : 'm' });

const fibreWords = ({ fibres }: YarnUsed): string =>
  fibres.map(({ fibre, percent }) => `${percent} % ${fibre.replaceAll('-', ' ')}`).join(', ');

const yarnFact = (yarn: YarnUsed, telling: Telling): Fact => {
  const { name, dyeLots, skeins, usedG, metresPer100g } = yarn;
  const parts = [
    fibreWords(yarn),
    ...(metresPer100g === null ? [] : [`${lengthWords(metresPer100g, telling)} to 100 g`]),
    ...(skeins === 0 ? [] : [`${skeins} bought`]),
    ...(dyeLots.length === 0 ? [] : [`dye lot ${dyeLots.join(', ')}`]),
    ...(usedG === null ? [] : [`${massWords(usedG, telling)} used`]),
  ].filter((part) => part !== '');
  return ['Yarn', [name, ...parts].join('; ')];
};

/** Metres in all where there is one yarn: of several, nobody knows how much of each. */
const used = ({ usedG, yarns }: Report, telling: Telling): string => {
  const perMass = yarns.length === 1 ? (yarns[0]?.metresPer100g ?? null) : null;
  const mass = massWords(usedG ?? 0, telling);
  return perMass === null
    ? mass
    : `${mass}, about ${lengthWords(((usedG ?? 0) * perMass) / 100, telling)}`;
};

const hoursWords = (hours: number): string => `${Math.round(hours * 2) / 2} hours`;

/** What is said in a line each, in order; what nobody said is left out. */
export const factsOf = (report: Report, telling: Telling): Fact[] => [
  ['Pattern', report.pattern],
  ...(report.size === null ? [] : [['Size knit', report.size] as const]),
  ...(report.openSizes.length === 0
    ? []
    : [['Size knit', `not said: one of ${report.openSizes.join(', ')}`] as const]),
  ...report.yarns.map((yarn) => yarnFact(yarn, telling)),
  ...(report.usedG === null ? [] : [['Yarn used', used(report, telling)] as const]),
  ...(report.needleMm === null ? [] : [['Needle', `${report.needleMm} mm`] as const]),
  ['Washed', washed(report)],
  ...(report.hours === null ? [] : [['Time', hoursWords(report.hours)] as const]),
  ...(report.finishedOn === null ? [] : [['Finished', report.finishedOn] as const]),
];
