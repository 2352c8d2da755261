import { formatMass } from '@dryflat/engine/units';
import { useMemo } from 'react';
import { useView } from '../../store/index.ts';

export interface Masses {
  /** `412 g`; `412 g (14.5 oz)` where inches are shown: kitchen scales have both. */
  readonly mass: (massG: number) => string;
}

export const useMasses = (): Masses => {
  const { units } = useView();
  return useMemo(
    () => ({
      mass: (massG) => {
        const grams = formatMass(massG, { unit: 'g' });
        return units === 'in' ? `${grams} (${formatMass(massG, { unit: 'oz' })})` : grams;
      },
    }),
    [units],
  );
};
