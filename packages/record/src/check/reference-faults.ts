import type { Fault } from '@dryflat/engine/units';
import { nearest } from '../read/nearest.ts';
import type { GarmentRecord } from '../schema/index.ts';
import { fault } from './doubt.ts';

type Reference = { readonly measurement: string };

/** References to measurements that the pattern does not have. */
export const referenceFaults = (record: GarmentRecord): Fault[] => {
  const ids = [...new Set(record.pattern.measurements.map(({ id }) => id))];
  return references(record).flatMap(([path, list]) =>
    list.flatMap(({ measurement }, at) =>
      ids.includes(measurement) ? [] : [dangling(`${path}[${at}].measurement`, measurement, ids)],
    ),
  );
};

const references = (record: GarmentRecord): (readonly [string, readonly Reference[]])[] => [
  ...record.pieces.map((each, at) => [`pieces[${at}].measured`, each.measured] as const),
  ['plan.pinTo', record.plan.pinTo],
  ...record.forecasts.map(
    (each, at) => [`forecasts[${at}].measurements`, each.measurements] as const,
  ),
  ...record.outcomes.map((each, at) => [`outcomes[${at}].measured`, each.measured] as const),
];

const dangling = (path: string, given: string, ids: readonly string[]): Fault => {
  const meant = nearest(given, ids);
  return fault(
    'unknown-measurement',
    path,
    given,
    'the pattern has no measurement of this id',
    meant === null
      ? `Use one of ${ids.join(', ') || 'the pattern, once it has any'}.`
      : `Use "${meant}", or add the measurement to the pattern.`,
  );
};
