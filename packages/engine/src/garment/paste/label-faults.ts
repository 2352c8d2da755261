import type { Fault } from '../../units/index.ts';
import { tableFault } from './reading.ts';

const unnamed = (index: number): Fault =>
  tableFault(
    'size-unnamed',
    `sizes[${index}]`,
    '',
    'this column has no size at its head',
    'Type its size.',
  );

const repeated = (index: number, label: string): Fault =>
  tableFault(
    'size-repeated',
    `sizes[${index}]`,
    label,
    'this size is named twice',
    'Give each size a name of its own.',
  );

/** Sizes are told apart by their labels, so each needs one of its own. */
export function labelFaults(sizes: readonly string[]): Fault[] {
  const seen = new Set<string>();
  return sizes.flatMap((label, index) => {
    if (label === '') return [unnamed(index)];
    if (seen.has(label)) return [repeated(index, label)];
    seen.add(label);
    return [];
  });
}
