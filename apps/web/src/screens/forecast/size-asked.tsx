import type { Forecast } from '@dryflat/engine/garment';
import { type GarmentRecord, inSize, isSizeOpen } from '@dryflat/record';
import { type ReactNode, useMemo, useState } from 'react';
import { Card, Select } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { useForecast } from '../../worker/index.ts';
import { chancePercent } from '../result/chance-words.ts';
import { sizeTitle } from '../result/size-title.ts';
import { ChooseSize } from './size-list.tsx';

export interface SizeAsked {
  /** As it is; or, while nobody has said the size, as if it were the one that is looked at. */
  readonly record: GarmentRecord;
  /** Of that size; null until it is there. */
  readonly forecast: Forecast | null;
  /** Asks the size where it is open: each with its chance that all fits. */
  readonly question: ReactNode;
}

/** The open garment for an answer that hangs on its size: the best one is looked at first, and any other in its place. */
export const useSizeAsked = (): SizeAsked => {
  const { record } = useGarment();
  const { forecast, sizes } = useForecast();
  const [looked, lookAt] = useState<string | null>(null);
  const { pattern } = record;
  const known = looked !== null && pattern.sizes.includes(looked) ? looked : null;
  const size = isSizeOpen(pattern) ? (known ?? sizes?.best ?? pattern.sizes[0] ?? null) : null;
  const sized = useMemo(() => (size === null ? record : inSize(record, size)), [record, size]);
  if (size === null) return { record, forecast, question: null };
  const each = sizes?.sizes ?? [];
  const labelOf = (value: string): string => {
    const chance = each.find(({ chosenSize }) => chosenSize === value)?.chanceAllFit ?? null;
    return `${sizeTitle(value)}${chance === null ? '' : `, all fits: ${chancePercent(chance)}`}${value === sizes?.best ? ', fits best' : ''}`;
  };
  const question = (
    <Card title="Which size?">
      <p>None is chosen yet. What follows is as if it were this one.</p>
      <Select
        label="As if it were"
        value={size}
        onChange={lookAt}
        options={pattern.sizes.map((value) => ({ value, label: labelOf(value) }))}
      />
      <ChooseSize size={size} chosen={false} />
    </Card>
  );
  const told = each.find(({ chosenSize }) => chosenSize === size) ?? null;
  return { record: sized, forecast: told, question };
};
