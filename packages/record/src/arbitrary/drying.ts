import fc from 'fast-check';
import type { Drying, Finished, RoomAirKept } from '../schema/index.ts';
import { between, day, id, label, list, moment, partial, pinCounts, positive } from './parts.ts';

const humidity = between(0.01, 99.99);
type Dry = NonNullable<Drying['dry']>;
type Thick = NonNullable<Drying['thick']>[number];

const dry: fc.Arbitrary<Dry> = fc.record({
  massG: positive,
  air: fc.oneof(fc.constantFrom('here' as const, 'label' as const), humidity),
});

const air = partial<RoomAirKept>(
  {
    temperatureC: between(0, 45),
    humidityPercent: humidity,
    movement: fc.constantFrom('still', 'moving'),
    altitudeM: between(-500, 6000).map((value) => value + 0),
  },
  ['temperatureC', 'humidityPercent', 'movement'],
);

const thick: fc.Arbitrary<Thick> = fc.record({
  id,
  name: label,
  share: between(0.001, 0.999),
  times: between(1.001, 50),
});

export const drying = partial<Drying>(
  {
    id,
    begun: moment,
    dry,
    wet: fc.oneof(
      positive,
      fc.constantFrom('towel' as const, 'spun' as const, 'dripping' as const),
    ),
    air,
    on: fc.constantFrom('mat', 'rack'),
    layers: fc.constantFrom(1, 2),
    pinned: fc.boolean(),
    fabricM2: between(0.001, 100),
    thick: list(thick),
    weighings: list(fc.record({ id, at: moment, massG: positive })),
    touches: list(
      fc.record({
        id,
        at: moment,
        where: label,
        feels: fc.constantFrom('wet' as const, 'cool' as const, 'dry' as const),
      }),
    ),
    turned: list(moment),
    dried: moment,
  },
  ['id', 'begun', 'wet', 'air', 'on', 'layers', 'pinned', 'weighings', 'touches', 'turned'],
);

export const finished = partial<Finished>({ on: day, missing: pinCounts, remark: label }, [
  'on',
  'remark',
]);
