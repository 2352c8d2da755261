import type { BodyStart } from '@dryflat/engine/garment';
import type { BodyMeasure, GarmentRecord, WantedFit } from '@dryflat/record';

/** The value of one's own tape; null takes the measurement away. */
export const setBody = (draft: GarmentRecord, landmark: string, valueMm: number | null): void => {
  const { body } = draft.wearer;
  const at = body.findIndex((each) => each.landmark === landmark);
  if (valueMm === null) {
    if (at >= 0) body.splice(at, 1);
    return;
  }
  const own: BodyMeasure = { landmark, mm: valueMm, from: { kind: 'measured' } };
  if (at >= 0) body[at] = own;
  else body.push(own);
};

/**
 * Starts the body from one size of a published table, for the places in `wanted`. What was measured
 * on the body itself stays. Gives the number of measurements taken over.
 */
export const startFromTable = (
  draft: GarmentRecord,
  starts: readonly BodyStart[],
  from: { readonly table: string; readonly size: string },
  wanted: readonly string[],
): number => {
  const own = new Set(
    draft.wearer.body.flatMap(({ landmark, from }) => (from.kind === 'measured' ? landmark : [])),
  );
  const taken = starts.filter(({ body }) => wanted.includes(body) && !own.has(body));
  for (const { body, middle } of taken) {
    const row: BodyMeasure = { landmark: body, mm: middle, from: { kind: 'table', ...from } };
    const at = draft.wearer.body.findIndex((each) => each.landmark === body);
    if (at >= 0) draft.wearer.body[at] = row;
    else draft.wearer.body.push(row);
  }
  return taken.length;
};

/** The wish at a landmark; null takes it away. */
export const setWanted = (draft: GarmentRecord, landmark: string, wish: WantedFit | null): void => {
  const { wanted } = draft.wearer;
  const at = wanted.findIndex((each) => each.landmark === landmark);
  if (wish === null) {
    if (at >= 0) wanted.splice(at, 1);
  } else if (at >= 0) wanted[at] = wish;
  else wanted.push(wish);
};
