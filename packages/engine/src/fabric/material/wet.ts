import type { Fibre, FibreShare, ReferenceKey } from '../../textile/index.ts';

/** What a fabric carries wet at a strain, over what it carries dry. Every number is an assumption. */
export interface WetLoad {
  readonly factor: number;
  /** Log-SD of the factor. */
  readonly logSd: number;
  readonly because: string;
  /** Work that gives the direction, where there is one; none gives the size for a knit. */
  readonly after: ReferenceKey | null;
}

const hair: WetLoad = {
  factor: 0.6,
  logSd: 0.35,
  because:
    'wet hair is far more pliable, as its glass transition falls below room temperature (Wortmann, Rigby and Phillips 1984)',
  after: 'wortmann-1984',
};

const plant: WetLoad = {
  factor: 1.2,
  logSd: 0.3,
  because: 'wet cotton yarn is 15 to 38 % stiffer (Pillay 1963)',
  after: 'pillay-1963',
};

const regenerated: WetLoad = {
  after: null,
  factor: 0.6,
  logSd: 0.4,
  because: 'regenerated cellulose swells and softens in water',
};

const dryish: WetLoad = {
  after: null,
  factor: 1,
  logSd: 0.15,
  because: 'a fibre that takes up hardly any water is taken as dry',
};

const WET_LOAD: Readonly<Record<Fibre, WetLoad>> = {
  wool: hair,
  alpaca: hair,
  mohair: hair,
  cashmere: hair,
  silk: {
    after: null,
    factor: 0.75,
    logSd: 0.35,
    because: 'silk softens in water, less than hair',
  },
  cotton: plant,
  linen: { ...plant, because: 'taken as cotton' },
  hemp: { ...plant, because: 'taken as cotton' },
  viscose: regenerated,
  lyocell: { ...regenerated, factor: 0.75 },
  acrylic: dryish,
  polyester: dryish,
  nylon: {
    after: null,
    factor: 0.85,
    logSd: 0.25,
    because: 'nylon takes up a little water and softens',
  },
  other: { after: null, factor: 0.85, logSd: 0.5, because: 'unknown fibre' },
};

/**
 * Of a blend: log factors and log-SDs weighted by share. Shares are scaled to a whole; no fibre at all
 * is `other`. That a knit follows its fibre at all is an assumption, so every row is wide.
 */
export const wetLoadOf = (fibres: readonly FibreShare[]): Omit<WetLoad, 'after'> => {
  const total = fibres.reduce((sum, { share }) => sum + share, 0);
  if (!(total > 0)) return WET_LOAD.other;
  const mean = (of: (row: WetLoad) => number) =>
    fibres.reduce((sum, { fibre, share }) => sum + of(WET_LOAD[fibre]) * (share / total), 0);
  const reasons = new Set(fibres.map(({ fibre }) => `${fibre}: ${WET_LOAD[fibre].because}`));
  return {
    factor: Math.exp(mean((row) => Math.log(row.factor))),
    logSd: mean((row) => row.logSd),
    because: [...reasons].join('; '),
  };
};
