import type { Cited, Fibre, FibreShare, Stitch } from '../textile/index.ts';
import type { BasisKind } from './basis.ts';
import { extensionAtLoad } from './extension.ts';
import {
  type ExtensionRow,
  type LoadPoint,
  type MeasuredRow,
  measuredRow,
  type PulledStitch,
} from './extension-data.ts';
import type { Direction } from './specimen.ts';

/** Where the straight part of a low-load curve ends, N/mm. */
const LOW_LOAD = 0.02;

/**
 * A measured row counted from no load at all. The readings count strain from a frame that already
 * carries a few N/m; the chord of the low-load slope is carried back to no load, and everything
 * beyond moves out by as much. An assumption: below its first frame the strip was not read.
 */
export const fromRest = (row: MeasuredRow): ExtensionRow => {
  const shift = Math.max(0, LOW_LOAD / row.lowLoadSlope - extensionAtLoad(row, LOW_LOAD));
  if (shift === 0) return row;
  const points = row.points
    .filter(({ load }) => load >= LOW_LOAD)
    .map(({ load, extension }) => ({ load, extension: extension + shift }));
  return { points, otherWay: row.otherWay };
};

/**
 * How much of the cotton curve a fibre takes, the rest being acrylic, and the log-SD of what that
 * leaves open. Only acrylic and cotton were pulled; two yarns of one stitch differ by a log-SD of
 * 0.45 at hanging loads, which is the least that any yarn gets.
 */
export interface FibreLean {
  readonly cotton: number;
  readonly logSd: number;
  readonly because: string;
}

export const BETWEEN_YARNS_LOG_SD = 0.45;

const MEASURED: Pick<FibreLean, 'logSd'> = { logSd: BETWEEN_YARNS_LOG_SD };
const asCotton: FibreLean = { cotton: 1, logSd: 0.5, because: 'taken as cotton, which was pulled' };
const asAcrylic: FibreLean = {
  cotton: 0,
  logSd: 0.5,
  because: 'taken as acrylic, which was pulled',
};
const between: FibreLean = {
  cotton: 0.5,
  logSd: 0.55,
  because: 'taken half way between acrylic and cotton; no animal fibre was pulled',
};

const LEAN: Readonly<Record<Fibre, FibreLean>> = {
  cotton: { cotton: 1, ...MEASURED, because: 'cotton was pulled' },
  acrylic: { cotton: 0, ...MEASURED, because: 'acrylic was pulled' },
  linen: asCotton,
  hemp: asCotton,
  viscose: asCotton,
  lyocell: asCotton,
  nylon: asAcrylic,
  polyester: asAcrylic,
  wool: between,
  alpaca: between,
  mohair: between,
  cashmere: between,
  silk: between,
  other: { cotton: 0.5, logSd: 0.7, because: 'unknown fibre, half way between acrylic and cotton' },
};

/** A stitch that was not pulled, as a factor on one that was. All assumptions. */
export interface StitchLean {
  readonly as: PulledStitch;
  readonly width: number;
  readonly length: number;
  readonly logSd: number;
  readonly because: string;
}

const pulled = (as: PulledStitch): StitchLean => ({
  as,
  width: 1,
  length: 1,
  logSd: 0,
  because: 'this stitch was pulled',
});

export const STITCH_LEAN: Readonly<Record<Stitch, StitchLean>> = {
  stockinette: pulled('stockinette'),
  garter: pulled('garter'),
  'rib-1x1': pulled('rib-1x1'),
  seed: pulled('seed'),
  lace: {
    as: 'garter',
    width: 1.4,
    length: 1.2,
    logSd: 0.5,
    because: 'lace is taken as garter with more give, open as it is',
  },
  cables: {
    as: 'stockinette',
    width: 1.3,
    length: 1,
    logSd: 0.5,
    because: 'cables are taken as stockinette that gives more in width, drawn in as it is',
  },
  colourwork: {
    as: 'stockinette',
    width: 0.6,
    length: 0.8,
    logSd: 0.5,
    because: 'stranded colourwork is taken as stockinette held by the yarn carried behind it',
  },
  other: {
    as: 'stockinette',
    width: 1.2,
    length: 1.2,
    logSd: 0.8,
    because: 'an unknown stitch is taken as stockinette with a little more give',
  },
};

export interface ExtensionChoice {
  readonly row: ExtensionRow;
  /** Natural-log standard deviation of the extension about the row, yarn and stitch together. */
  readonly logSd: number;
  readonly kind: BasisKind;
  readonly because: string;
  readonly cited: Cited;
}

const mix = (a: number, b: number, share: number): number => a * (1 - share) + b * share;

/** Both rows read at the loads that either was read at, up to where both end, and mixed. */
const mixedRow = (acrylic: ExtensionRow, cotton: ExtensionRow, share: number): ExtensionRow => {
  if (share === 0) return acrylic;
  if (share === 1) return cotton;
  const both = [...acrylic.points, ...cotton.points].map(({ load }) => load);
  const shared = [...new Set(both)].filter((load) =>
    [acrylic, cotton].every((row) => row.points.some((point) => point.load === load)),
  );
  const points: LoadPoint[] = shared
    .sort((a, b) => a - b)
    .map((load) => ({
      load,
      extension: mix(extensionAtLoad(acrylic, load), extensionAtLoad(cotton, load), share),
    }));
  return { points, otherWay: mix(acrylic.otherWay, cotton.otherWay, share) };
};

const scaled = (row: ExtensionRow, factor: number): ExtensionRow =>
  factor === 1
    ? row
    : {
        points: row.points.map((p) => ({ load: p.load, extension: p.extension * factor })),
        otherWay: row.otherWay * factor,
      };

/** Shares are scaled to a whole; no fibre at all counts as `other`. */
export const leanOf = (fibres: readonly FibreShare[]): FibreLean => {
  const total = fibres.reduce((sum, { share }) => sum + share, 0);
  if (!(total > 0)) return LEAN.other;
  const mean = (of: (lean: FibreLean) => number) =>
    fibres.reduce((sum, { fibre, share }) => sum + of(LEAN[fibre]) * (share / total), 0);
  const reasons = new Set(fibres.map(({ fibre }) => `${fibre}: ${LEAN[fibre].because}`));
  return {
    cotton: mean((lean) => lean.cotton),
    logSd: mean((lean) => lean.logSd),
    because: [...reasons].join('; '),
  };
};

/**
 * Load-extension row for a stitch in a blend, counted from rest. `kind` is `published` only where
 * yarn and stitch were both pulled; everything else is an assumption, wider, and says why.
 */
export const rowForBlend = (
  stitch: Stitch,
  fibres: readonly FibreShare[],
  direction: Direction,
): ExtensionChoice => {
  const fibre = leanOf(fibres);
  const lean = STITCH_LEAN[stitch];
  const base = mixedRow(
    fromRest(measuredRow('acrylic', lean.as, direction)),
    fromRest(measuredRow('cotton', lean.as, direction)),
    fibre.cotton,
  );
  const measured = fibre.logSd === BETWEEN_YARNS_LOG_SD && lean.logSd === 0;
  return {
    row: scaled(base, lean[direction]),
    logSd: Math.hypot(fibre.logSd, lean.logSd),
    kind: measured ? 'published' : 'assumption',
    because: `${lean.because}; ${fibre.because}`,
    cited: measured
      ? { source: 'singal-2024-data', standing: 'data' }
      : { source: null, standing: 'assumption' },
  };
};

export const rowFor = (stitch: Stitch, fibre: Fibre, direction: Direction): ExtensionChoice =>
  rowForBlend(stitch, [{ fibre, share: 1 }], direction);
