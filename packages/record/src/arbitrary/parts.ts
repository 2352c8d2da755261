import { LANDMARKS } from '@dryflat/engine/garment';
import fc from 'fast-check';
import type { BodyMeasure } from '../schema/index.ts';

/** Small arbitraries that the others are made of. */
type Optional<T> = { [K in keyof T]: fc.Arbitrary<T[K]> };

/** An object whose keys named in `required` are always there and whose others come and go. */
export const partial = <T extends object>(
  model: { [K in keyof T]-?: fc.Arbitrary<Exclude<T[K], undefined>> },
  requiredKeys: readonly (keyof T)[],
): fc.Arbitrary<T> =>
  fc.record(model as unknown as Optional<T>, {
    requiredKeys: [...requiredKeys] as never,
    noNullPrototype: true,
  }) as unknown as fc.Arbitrary<T>;

export const list = <T>(of: fc.Arbitrary<T>, most = 3) => fc.array(of, { maxLength: most });
export const id = fc.string({ minLength: 1, maxLength: 12 });
export const label = fc.string({ maxLength: 20 });
export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
export const whole = (min: number, max: number) => fc.integer({ min, max });
export const positive = between(0.01, 99_999);
/** JSON writes minus zero as zero, so there is none here. */
export const signed = between(-99_999, 99_999).map((value) => value + 0);
export const share = between(0, 1);
const instant = fc.date({
  min: new Date('2000-01-01'),
  max: new Date('2099-12-31'),
  noInvalidDate: true,
});
export const day = instant.map((date) => date.toISOString().slice(0, 10));
export const moment = instant.map((date) => date.toISOString());
export const span = fc.constantFrom('flat' as const, 'around' as const);
export const direction = fc.constantFrom('width' as const, 'length' as const);
export const landmark = fc.oneof(fc.constantFrom(...LANDMARKS.map((each) => each.id)), id);
const howMany = whole(0, 10_000);
const runs = list(fc.record({ lengthMm: positive, count: howMany }));

export const stock = fc.record({ straight: howMany, tPins: howMany, combs: runs, wires: runs });
export const pinCounts = fc.record({
  straight: howMany,
  tPins: howMany,
  combs: howMany,
  wires: howMany,
});

export const bodyMeasure: fc.Arbitrary<BodyMeasure> = fc.record({
  landmark,
  mm: positive,
  from: fc.oneof(
    fc.record({ kind: fc.constant('measured' as const) }),
    fc.record({ kind: fc.constant('table' as const), table: id, size: label }),
  ),
});
