import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

const TWO_POW_32 = 2 ** 32;

/** Uniform and normal numbers from a fixed seed: the same seed gives the same sequence. */
export interface RandomSource {
  /** Uniform on (0, 1): never exactly 0 or 1. */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
}

/**
 * Box and Muller 1958 on a xoroshiro128+ stream: two normals from two uniforms, the second kept
 * for the next call.
 */
export const randomSource = (seed: number): RandomSource => {
  const stream = xoroshiro128plus(seed | 0);
  const uniform = (): number => ((stream.next() >>> 0) + 0.5) / TWO_POW_32;
  let spare = Number.NaN;
  const normal = (): number => {
    if (!Number.isNaN(spare)) {
      const kept = spare;
      spare = Number.NaN;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return { uniform, normal };
};

/** Fill `into` with standard normals. */
export const fillNormals = (source: RandomSource, into: Float64Array): Float64Array => {
  for (let i = 0; i < into.length; i++) into[i] = source.normal();
  return into;
};
