import type { Strip } from './strip.ts';

/**
 * Constants fitted to the load-extension table by scripts/fit-strips.mjs; do not edit by hand.
 * Slope and stiffening in N/mm, limit and preStretch as fractions of the length at rest.
 */
export const STRIPS: Readonly<Record<string, Strip>> = {
  'acrylic stockinette width': {
    slope: 0.268277,
    stiffening: 0.0175063,
    limit: 0.669928,
    preStretch: 0.01672,
  },
  'acrylic stockinette length': {
    slope: 0.537907,
    stiffening: 0.0424288,
    limit: 0.464183,
    preStretch: 0.00151048,
  },
  'cotton stockinette width': {
    slope: 0.132277,
    stiffening: 0.00689173,
    limit: 0.719795,
    preStretch: 0.0204039,
  },
  'cotton stockinette length': {
    slope: 0.467377,
    stiffening: 0.054134,
    limit: 0.38262,
    preStretch: 0.0069879,
  },
  'acrylic garter width': {
    slope: 0.203725,
    stiffening: 0.0186703,
    limit: 0.802474,
    preStretch: 0.0220321,
  },
  'acrylic garter length': {
    slope: 0.0697843,
    stiffening: 0.0138086,
    limit: 1.0757,
    preStretch: 0.0448901,
  },
  'cotton garter width': {
    slope: 0.0786453,
    stiffening: 0.00822556,
    limit: 0.730017,
    preStretch: 0.0229098,
  },
  'cotton garter length': {
    slope: 0.0249044,
    stiffening: 0.019419,
    limit: 1.31241,
    preStretch: 0.0560131,
  },
  'acrylic rib-1x1 width': {
    slope: 0.00925733,
    stiffening: 0.00621712,
    limit: 3.06986,
    preStretch: 0.2,
  },
  'acrylic rib-1x1 length': {
    slope: 0.0992036,
    stiffening: 0.0267104,
    limit: 0.779298,
    preStretch: 0.023599,
  },
  'cotton rib-1x1 width': {
    slope: 0.00216504,
    stiffening: 0.00267316,
    limit: 2.67532,
    preStretch: 0.177535,
  },
  'cotton rib-1x1 length': {
    slope: 0.0206428,
    stiffening: 0.0107736,
    limit: 0.839796,
    preStretch: 0.0980805,
  },
  'acrylic seed width': {
    slope: 0.0759118,
    stiffening: 0.0167251,
    limit: 0.841189,
    preStretch: 0.0357582,
  },
  'acrylic seed length': {
    slope: 0.0409455,
    stiffening: 0.0150193,
    limit: 1.2969,
    preStretch: 0.00012341,
  },
  'cotton seed width': {
    slope: 0.0205546,
    stiffening: 0.00704546,
    limit: 0.935091,
    preStretch: 0.118261,
  },
  'cotton seed length': {
    slope: 0.0307797,
    stiffening: 0.0198196,
    limit: 1.02747,
    preStretch: 0.0706611,
  },
};
