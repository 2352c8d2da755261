import type { ParsedCounts } from '@dryflat/engine/units';
import type { CountReading } from '@dryflat/record';

interface Circumstances {
  readonly state: CountReading['state'];
  /** Of what was dried: whether on pins. Left out where nobody said. */
  readonly pinned?: boolean;
  readonly read: CountReading['read'];
  /** Empty where nobody said. */
  readonly place: string;
}

/** Readings from one line: a count of stitches, one of rows, or both. */
export const readingsOf = (
  { stitches, rows }: ParsedCounts,
  { state, pinned, read, place }: Circumstances,
  newId: () => string,
): CountReading[] =>
  (
    [
      ['width', stitches],
      ['length', rows],
    ] as const
  ).flatMap(([direction, counted]) =>
    counted === null
      ? []
      : [
          {
            kind: 'count' as const,
            id: newId(),
            direction,
            count: counted.count,
            overMm: counted.over,
            state,
            ...(pinned !== undefined && { pinned }),
            read,
            ...(place !== '' && { place }),
          },
        ],
  );
