import type { FittedStrip } from './fit-strips.ts';

/** Text of strips.ts: constants to six digits, far finer than any reading resolves. */
export const stripsSource = (fits: ReadonlyMap<string, FittedStrip>): string =>
  [
    "import type { Strip } from './strip.ts';",
    '',
    '/**',
    ' * Constants fitted to the load-extension table by scripts/fit-strips.mjs; do not edit by hand.',
    ' * Slope and stiffening in N/mm, limit and preStretch as fractions of the length at rest.',
    ' */',
    'export const STRIPS: Readonly<Record<string, Strip>> = {',
    ...[...fits].flatMap(([name, { strip }]) => [
      `  '${name}': {`,
      `    slope: ${six(strip.slope)},`,
      `    stiffening: ${six(strip.stiffening)},`,
      `    limit: ${six(strip.limit)},`,
      `    preStretch: ${six(strip.preStretch)},`,
      '  },',
    ]),
    '};',
    '',
  ].join('\n');

const six = (value: number): number => Number(value.toPrecision(6));
