import type { Fibre } from './fibre-names.ts';
import { type Figure, figure, percent, remembered } from './figure.ts';

/**
 * What is known of a fibre. Regains, swelling and retention are fractions (of dry mass, of dry
 * size, of dry mass); density is g/cm³ at 65 % relative humidity. Null: no figure was found.
 */
export interface FibreFacts {
  readonly fibre: Fibre;
  readonly regain: {
    /** Commercial regain of ASTM D1909: a convention of trade, not a measurement. */
    readonly commercial: Figure | null;
    /** Agreed allowance of the European Union; combed (worsted) fibre where the two differ. */
    readonly agreed: Figure | null;
    /** The same for carded (woollen-spun) fibre; null where only one is agreed. */
    readonly agreedCarded: Figure | null;
    /** Measured, in air of 65 % relative humidity at 20 °C. */
    readonly real: Figure | null;
  };
  readonly density: Figure | null;
  readonly swelling: {
    readonly diameter: Figure | null;
    readonly length: Figure | null;
    readonly volume: Figure | null;
  };
  /** Water that a centrifuge leaves in the fibre. */
  readonly retention: Figure | null;
}

const astm = (low: number, high = low) => percent('shuvo-2020', 'read', low, high);
const notes = (low: number, high = low) => percent('textile-regain-notes', 'read', low, high);
const agreed = (value: number) => percent('austria-allowances-1975', 'read', value);
const regulation = (value: number) => percent('eu-1007-2011', 'read-second-hand', value);
const air = (low: number, high = low) => percent('shuvo-2020', 'read', low, high);
const airRemembered = (low: number, high = low) => remembered(low / 100, high / 100);
const dense = (value: number) => figure('morton-hearle-2008', 'read', value);
const swells = (low: number, high = low) => percent('morton-hearle-2008', 'read', low, high);
const holds = (low: number, high: number) => percent('astm-d2402', 'from-memory', low, high);
const d1909Remembered = (value: number) => percent('astm-d1909', 'from-memory', value);

const noSwelling = { diameter: null, length: null, volume: null };

const hair = (fibre: Fibre): FibreFacts => ({
  fibre,
  regain: {
    commercial: d1909Remembered(13.6),
    agreed: agreed(18.25),
    agreedCarded: agreed(17),
    real: airRemembered(14, 16),
  },
  density: remembered(1.3, 1.32),
  swelling: noSwelling,
  retention: null,
});

const table: Readonly<Record<Fibre, FibreFacts>> = {
  wool: {
    fibre: 'wool',
    regain: {
      commercial: astm(13.6),
      agreed: agreed(18.25),
      agreedCarded: regulation(17),
      real: air(14, 18),
    },
    density: dense(1.31),
    swelling: { diameter: swells(8, 17), length: airRemembered(1, 2), volume: swells(36, 41) },
    retention: holds(40, 45),
  },
  alpaca: hair('alpaca'),
  mohair: hair('mohair'),
  cashmere: hair('cashmere'),
  silk: {
    fibre: 'silk',
    regain: { commercial: astm(11), agreed: agreed(11), agreedCarded: null, real: air(10) },
    density: dense(1.34),
    swelling: { diameter: swells(16, 19), length: swells(1.3, 1.6), volume: swells(30, 32) },
    retention: holds(40, 50),
  },
  cotton: {
    fibre: 'cotton',
    regain: { commercial: astm(8.5), agreed: regulation(8.5), agreedCarded: null, real: air(7, 8) },
    density: dense(1.52),
    swelling: { diameter: swells(7, 23), length: null, volume: null },
    retention: holds(45, 50),
  },
  linen: {
    fibre: 'linen',
    regain: { commercial: astm(12), agreed: agreed(12), agreedCarded: null, real: air(7) },
    density: remembered(1.5),
    swelling: { diameter: null, length: swells(0.1, 0.2), volume: null },
    retention: holds(50, 55),
  },
  hemp: {
    fibre: 'hemp',
    regain: { commercial: astm(12), agreed: agreed(12), agreedCarded: null, real: air(8) },
    density: remembered(1.48, 1.5),
    swelling: noSwelling,
    retention: null,
  },
  viscose: {
    fibre: 'viscose',
    regain: {
      commercial: notes(11),
      agreed: agreed(13),
      agreedCarded: null,
      real: airRemembered(12, 14),
    },
    density: dense(1.49),
    swelling: { diameter: swells(25, 52), length: swells(3.7, 4.8), volume: swells(74, 127) },
    retention: holds(90, 100),
  },
  lyocell: {
    fibre: 'lyocell',
    regain: {
      commercial: null,
      agreed: percent('eu-1007-2011', 'from-memory', 13),
      agreedCarded: null,
      real: airRemembered(11, 12),
    },
    density: remembered(1.5, 1.52),
    swelling: noSwelling,
    retention: holds(60, 70),
  },
  acrylic: {
    fibre: 'acrylic',
    regain: {
      commercial: notes(1.5),
      agreed: agreed(2),
      agreedCarded: null,
      real: airRemembered(1, 2),
    },
    density: dense(1.19),
    swelling: noSwelling,
    retention: holds(5, 10),
  },
  nylon: {
    fibre: 'nylon',
    regain: {
      commercial: notes(4, 4.5),
      agreed: regulation(6.25),
      agreedCarded: null,
      real: airRemembered(4),
    },
    density: dense(1.14),
    swelling: { diameter: swells(1.9, 2.6), length: swells(2.7, 2.9), volume: swells(8, 11) },
    retention: holds(10, 15),
  },
  polyester: {
    fibre: 'polyester',
    regain: {
      commercial: notes(0.4),
      agreed: agreed(1.5),
      agreedCarded: null,
      real: airRemembered(0.4),
    },
    density: dense(1.39),
    swelling: noSwelling,
    retention: holds(3, 5),
  },
  other: {
    fibre: 'other',
    regain: { commercial: null, agreed: null, agreedCarded: null, real: null },
    density: null,
    swelling: noSwelling,
    retention: null,
  },
};

export const FIBRE_FACTS: readonly FibreFacts[] = Object.values(table);

/** Total: every `Fibre` has a row; `other` has nothing but nulls. */
export const factsOf = (fibre: Fibre): FibreFacts => table[fibre];
