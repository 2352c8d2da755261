import { place } from './faults.ts';
import type { SizeField } from './mesh.ts';

/** The size as a field that is always positive, and a word on the first place where it was not. */
export const checkedSize = (
  size: number | SizeField,
): { size: SizeField; trouble: () => string | undefined } => {
  if (typeof size === 'number') return { size: () => size, trouble: () => undefined };
  let first: string | undefined;
  const checked: SizeField = (x, y) => {
    const value = size(x, y);
    if (value > 0) return value;
    first ??= `${value} at ${place([x, y])}`;
    return Number.POSITIVE_INFINITY;
  };
  return { size: checked, trouble: () => first };
};
