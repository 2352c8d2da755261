import type { Fibre, Stitch, Treatment } from '../textile/index.ts';
import type { Basis } from './basis.ts';
import type { Direction } from './specimen.ts';

/** Mean and standard deviation of the logarithm of a ratio of lengths. */
export interface LogRatio {
  readonly mean: number;
  readonly sd: number;
}

export type PerDirection = Readonly<Record<Direction, LogRatio>>;

/**
 * What is believed of a fabric before this knitter washed any of it: log ratios of lengths at rest.
 * `dried`: dried without pins over as knit. `wet`: wet over dried. `rewashed`: after later soaks
 * over dried.
 */
export interface GrowthPrior {
  readonly dried: PerDirection;
  readonly wet: PerDirection;
  readonly rewashed: PerDirection;
  readonly bases: readonly Basis[];
}

export type Washing = 'by-hand' | 'machine-wool' | 'machine-warm' | 'not-said';

export interface FabricKind {
  readonly fibres: readonly { readonly fibre: Fibre; readonly share: number }[];
  readonly treatment: Treatment;
  readonly stitch: Stitch;
  readonly washing: Washing;
}

const ratio = (mean: number, sd: number): LogRatio => ({ mean, sd });
const row = (width: LogRatio, length: LogRatio): PerDirection => ({ width, length });

/**
 * Growth from as knit to dried without pins. No published figures for hand knitting were found, so
 * every row is an assumption, wide on purpose. Directions follow what was published for machine
 * knits: cotton shrinks in length and grows in width (Fletcher and Roberts 1952), linen likewise;
 * that superwash wool, alpaca, silk and viscose lengthen is the word of the trade, without source.
 */
const DRIED: Readonly<Record<Fibre | 'superwash', PerDirection>> = {
  wool: row(ratio(-0.005, 0.035), ratio(0.01, 0.035)),
  superwash: row(ratio(0.02, 0.04), ratio(0.055, 0.05)),
  alpaca: row(ratio(0.01, 0.04), ratio(0.05, 0.05)),
  mohair: row(ratio(0.0, 0.035), ratio(0.02, 0.04)),
  cashmere: row(ratio(0.0, 0.04), ratio(0.02, 0.045)),
  silk: row(ratio(0.0, 0.04), ratio(0.04, 0.045)),
  cotton: row(ratio(0.01, 0.04), ratio(-0.03, 0.045)),
  linen: row(ratio(0.02, 0.045), ratio(-0.02, 0.05)),
  hemp: row(ratio(0.02, 0.05), ratio(-0.02, 0.05)),
  viscose: row(ratio(0.0, 0.045), ratio(0.04, 0.05)),
  lyocell: row(ratio(0.0, 0.045), ratio(0.03, 0.05)),
  acrylic: row(ratio(0.0, 0.025), ratio(0.005, 0.03)),
  nylon: row(ratio(0.0, 0.03), ratio(0.005, 0.035)),
  polyester: row(ratio(0.0, 0.03), ratio(0.005, 0.035)),
  other: row(ratio(0.0, 0.05), ratio(0.02, 0.06)),
};

const SAME = (mean: number, sd: number): PerDirection => row(ratio(mean, sd), ratio(mean, sd));
const WET = { superwash: row(ratio(0.02, 0.025), ratio(0.05, 0.04)), rest: SAME(0.02, 0.025) };
const REWASHED = { superwash: row(ratio(0, 0.015), ratio(0.01, 0.02)), rest: SAME(-0.005, 0.018) };

/** Other patterns than stockinette have been measured less: their assumptions are wider. */
const STITCH_FACTOR: Readonly<Record<Stitch, number>> = {
  stockinette: 1,
  garter: 1.25,
  'rib-1x1': 1.3,
  seed: 1.25,
  lace: 1.6,
  cables: 1.3,
  colourwork: 1.1,
  other: 1.6,
};

const FELTS = new Set<Fibre>(['wool', 'alpaca', 'mohair', 'cashmere']);
/** Warm machine washing of untreated hair: felting shrinks by no fixed amount. Assumption. */
const FELTING = ratio(-0.08, 0.08);
/** Not knowing how it will be washed adds doubt. Assumption. */
const WASH_DOUBT: Readonly<Record<Washing, number>> = {
  'by-hand': 0,
  'machine-wool': 0.01,
  'machine-warm': 0.015,
  'not-said': 0.01,
};

/** The prior of a blend: means and SDs weighted by share of mass, then widened by stitch and washing. */
export const growthPrior = (kind: FabricKind): GrowthPrior => ({
  dried: perDirection((d) => driedRatio(kind, d)),
  wet: treated(kind, WET),
  rewashed: perDirection((d) => rewashedRatio(kind, d)),
  bases: growthBases(kind),
});

const perDirection = (of: (direction: Direction) => LogRatio): PerDirection => ({
  width: of('width'),
  length: of('length'),
});

const isSuperwash = (kind: FabricKind, fibre: Fibre): boolean =>
  fibre === 'wool' && kind.treatment === 'superwash';

const treated = (
  kind: FabricKind,
  table: { readonly superwash: PerDirection; readonly rest: PerDirection },
): PerDirection => {
  const share = kind.fibres.reduce((s, f) => s + (isSuperwash(kind, f.fibre) ? f.share : 0), 0);
  return perDirection((d) => ({
    mean: share * table.superwash[d].mean + (1 - share) * table.rest[d].mean,
    sd: share * table.superwash[d].sd + (1 - share) * table.rest[d].sd,
  }));
};

const driedRatio = (kind: FabricKind, direction: Direction): LogRatio => {
  let mean = 0;
  let sd = 0;
  for (const { fibre, share } of kind.fibres) {
    const part = DRIED[isSuperwash(kind, fibre) ? 'superwash' : fibre][direction];
    mean += share * part.mean;
    sd += share * (kind.treatment === 'unknown' && fibre === 'wool' ? part.sd + 0.015 : part.sd);
  }
  const felt = feltingShare(kind);
  return {
    mean: mean + felt * FELTING.mean,
    sd: Math.hypot(sd * STITCH_FACTOR[kind.stitch], felt * FELTING.sd, WASH_DOUBT[kind.washing]),
  };
};

const rewashedRatio = (kind: FabricKind, direction: Direction): LogRatio => {
  const base = treated(kind, REWASHED)[direction];
  const felt = feltingShare(kind) / 2;
  return {
    mean: base.mean + felt * FELTING.mean,
    sd: Math.hypot(base.sd, felt * FELTING.sd, WASH_DOUBT[kind.washing] / 2),
  };
};

/** Share of the yarn that felts when washed warm by machine. */
const feltingShare = (kind: FabricKind): number =>
  kind.washing !== 'machine-warm'
    ? 0
    : kind.fibres.reduce(
        (sum, f) => sum + (FELTS.has(f.fibre) && !isSuperwash(kind, f.fibre) ? f.share : 0),
        0,
      );

const percent = (r: LogRatio): string =>
  `${signed(100 * Math.expm1(r.mean))} %, give or take ${(100 * r.sd * 1.645).toFixed(1)} points`;

const signed = (value: number): string => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)}`;

const growthBases = (kind: FabricKind): Basis[] => {
  const names = kind.fibres.map((f) => f.fibre).join(', ') || 'unknown fibre';
  const what = kind.treatment === 'superwash' ? `${names}, machine-washable` : names;
  return (['width', 'length'] as const).map((direction) => ({
    id: `growth-${direction}`,
    kind: 'assumption',
    text: `From as knit to dried, ${what} (${kind.stitch}) changes in ${direction} by ${percent(driedRatio(kind, direction))}: no published figure was found for hand knits; a washed swatch replaces this`,
    source: null,
  }));
};
