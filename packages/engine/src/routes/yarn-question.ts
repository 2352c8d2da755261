import type { YarnQuestion } from '../fabric/index.ts';
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

/** The stock's own complaints name its fields alone. */
export const underStock = (fault: Fault): Fault =>
  /^(lots|leftG)/.test(fault.field) ? { ...fault, field: `stock.${fault.field}` } : fault;
