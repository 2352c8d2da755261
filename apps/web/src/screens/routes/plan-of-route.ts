import type { Route } from '@dryflat/engine/routes';
import type { GarmentRecord } from '@dryflat/record';

type Recipe = (draft: GarmentRecord) => void;

/** What taking a route changes in the record; null where it has no place for that. */
export const planOfRoute = ({ kind, id, recipient }: Route): Recipe | null => {
  if (recipient !== null) return null;
  if (kind === 'lay')
    return ({ plan }) => {
      plan.drying = 'lay';
      plan.pinTo = [];
    };
  if (kind === 'gentle' || kind === 'schematic')
    return ({ plan }) => {
      plan.drying = 'pin';
    };
  const [, size] = /^size:(.+)$/.exec(id) ?? [];
  if (kind === 'size' && size !== undefined)
    return ({ pattern }) => {
      if (pattern.sizes.includes(size)) pattern.chosen = size;
    };
  return null;
};
