import { fillLengths, formatLength, formatRange, formatSigned } from '@dryflat/engine/units';
import { useMemo } from 'react';
import { useView } from '../store/index.ts';

export interface Lengths {
  /** `13⅜ in`, `34 cm`. */
  readonly length: (valueMm: number) => string;
  /** The same without the unit. */
  readonly bare: (valueMm: number) => string;
  /** `13⅜–13¾ in`, rounded outwards. */
  readonly range: (lowMm: number, highMm: number) => string;
  /** A range of ease, with signs. */
  readonly easeRange: (lowMm: number, highMm: number) => string;
  /** Ease: `+2 in`, `−5 cm`. */
  readonly signed: (valueMm: number) => string;
  /** A sentence of the engine with its lengths filled in. */
  readonly sentence: (text: string) => string;
  readonly units: 'cm' | 'in';
}

/** Prints lengths in the unit that everything is shown in. */
export const useLengths = (): Lengths => {
  const { units: unit } = useView();
  return useMemo(() => {
    const length = (value: number): string => formatLength(value, { unit });
    return {
      length,
      bare: (value) => formatLength(value, { unit, bare: true }),
      range: (low, high) => formatRange(low, high, unit),
      easeRange: (low, high) => formatRange(low, high, unit, { signed: true }),
      signed: (value) => formatSigned(value, { unit }),
      sentence: (text) => fillLengths(text, length),
      units: unit,
    };
  }, [unit]);
};
