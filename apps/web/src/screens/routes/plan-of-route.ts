import type { Route } from '@dryflat/engine/routes';
import type { GarmentRecord } from '@dryflat/record';

type Recipe = (draft: GarmentRecord) => void;

const lay: Recipe = ({ plan }) => {
  plan.drying = 'lay';
  plan.pinTo = [];
};

const toSchematic: Recipe = ({ plan }) => {
  plan.drying = 'pin';
  plan.pinTo = [];
};

/** Pinned to the route's own lengths, for they stop short of the pattern's. */
const gently =
  ({ measurements }: Route): Recipe =>
  (draft) => {
    draft.plan.drying = 'pin';
    draft.plan.pinTo = measurements.flatMap(({ id, pinnedMm, span }) => {
      const asked = draft.pattern.measurements.find((each) => each.id === id);
      if (pinnedMm === null || asked === undefined) return [];
      return [{ measurement: id, mm: pinnedMm, ...(asked.span !== undefined && { span }) }];
    });
  };

/** Another size is begun afresh: nothing of it is knit. */
const inSize =
  (size: string): Recipe =>
  (draft) => {
    if (!draft.pattern.sizes.includes(size)) return;
    draft.pattern.chosen = size;
    delete draft.progress;
  };

/** What taking a route changes in the record; null where the record has no place for that. */
export const planOfRoute = (route: Route): Recipe | null => {
  const { kind, id, recipient } = route;
  if (recipient !== null) return null;
  if (kind === 'lay') return lay;
  if (kind === 'schematic') return toSchematic;
  if (kind === 'gentle') return gently(route);
  const [, size] = /^size:(.+)$/.exec(id) ?? [];
  return kind === 'size' && size !== undefined ? inSize(size) : null;
};

/** Where a route that no press can take is worked out. */
export const placeOfRoute = ({ kind }: Route): 'mat' | 'yarn' | 'wearer' | 'counts' | null => {
  if (kind === 'harder') return 'mat';
  if (kind === 'needle') return 'yarn';
  if (kind === 'give') return 'wearer';
  return ['rip-length', 'rip-width', 're-knit', 'blend', 'add', 'take-away'].includes(kind)
    ? 'counts'
    : null;
};
