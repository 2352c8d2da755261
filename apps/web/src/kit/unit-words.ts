import { useView } from '../store/index.ts';

/** Names of units whose spelling differs: [American, British]. */
const UNITS = {
  centimetres: ['centimeters', 'centimetres'],
  metres: ['meters', 'metres'],
} as const;

/** The unit's name in the knitter's own English. */
export const useUnitWord = (unit: keyof typeof UNITS): string =>
  UNITS[unit][useView().words === 'us' ? 0 : 1];
