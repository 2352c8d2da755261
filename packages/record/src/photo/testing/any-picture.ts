import fc from 'fast-check';
import { joined } from '../bytes.ts';
import { PLAIN, type Plain } from './pictures.ts';
import { PLANTED, PLANTS } from './planted.ts';

/** A picture of any format with the text planted in some of its places, one behind the other. */
export const anyPlanted: fc.Arbitrary<{ readonly plain: Plain; readonly bytes: Uint8Array }> = fc
  .constantFrom(...(Object.keys(PLAIN) as Plain[]))
  .chain((plain) =>
    fc.shuffledSubarray(Object.values(PLANTS[plain]), { minLength: 1 }).map((plants) => ({
      plain,
      bytes: plants.reduce((picture, plant) => plant(picture, PLANTED), PLAIN[plain]),
    })),
  );

/** `at`: a share of the whole. `out`: how many bytes go there. `into`: what comes in their place. */
interface Cut {
  readonly at: number;
  readonly out: number;
  readonly into: Uint8Array;
}

const cut: fc.Arbitrary<Cut> = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
  out: fc.oneof({ weight: 9, arbitrary: fc.nat(2) }, fc.nat(100_000)),
  into: fc.uint8Array({ maxLength: 4 }),
});

const changed = (bytes: Uint8Array, { at, out, into }: Cut): Uint8Array => {
  const from = Math.floor(at * bytes.length);
  return joined([bytes.subarray(0, from), into, bytes.subarray(from + out)]);
};

/** The same with up to three places of it broken: bytes changed, put in, taken out, or all behind cut off. */
export const anyMutated: fc.Arbitrary<Uint8Array> = fc
  .tuple(anyPlanted, fc.array(cut, { maxLength: 3 }))
  .map(([{ bytes }, cuts]) => cuts.reduce(changed, bytes));
