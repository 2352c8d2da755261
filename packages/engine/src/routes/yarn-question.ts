import type { YarnQuestion, YarnStock } from '../fabric/index.ts';
import type { Fault } from '../units/index.ts';
import type { Luck } from './knit/luck.ts';
import type { RoutesQuestion } from './types.ts';

/** What is known of the yarn, with the gauge as the evidence has it. */
export const yarnQuestion = (
  { forecast, weighed }: RoutesQuestion,
  { pitch }: Pick<Luck, 'pitch'>,
): YarnQuestion => ({
  metresPer100g: forecast.metresPer100g,
  weightClass: forecast.weightClass,
  fibres: forecast.fibres,
  gauge: {
    stitch: forecast.stitch,
    width: pitch.width,
    row: pitch.length,
    state: 'asKnit',
  },
  weighed,
});

/**
 * What is at hand, beside the work that is left. Where nobody said how much is knit, what is left by the scale
 * cannot be set against what is still to knit: then all that was bought stands against all of the garment.
 */
export const stockNow = ({
  stock,
  progressSaid,
}: Pick<RoutesQuestion, 'stock' | 'progressSaid'>): YarnStock | null =>
  stock === null || progressSaid || !stock.lots.some(isSized) ? stock : { ...stock, leftG: null };

const isSized = ({ skeins, gramsEach, metresEach }: YarnStock['lots'][number]): boolean =>
  skeins > 0 && (gramsEach !== null || metresEach !== null);

/** The stock's own complaints name its fields alone. */
export const underStock = (fault: Fault): Fault =>
  /^(lots|leftG)/.test(fault.field) ? { ...fault, field: `stock.${fault.field}` } : fault;
