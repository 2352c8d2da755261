import type { Spread } from '../stats/index.ts';
import type { FibreShare } from '../textile/index.ts';
import type { Celsius, Grams } from '../units/index.ts';

export type { Spread };

/** The air that the garment dries in. */
export interface RoomAir {
  /** 0 to 45 °C. */
  readonly temperature: Celsius;
  /** Relative humidity, percent, above 0 and below 100. */
  readonly humidityPercent: number;
  /** `moving`: a fan, a draught or wind on it. */
  readonly movement: 'still' | 'moving';
  /** Height above the sea, m; 0 where left out. */
  readonly altitudeM?: number;
}

/** Mass of the garment dry, before the wash, and the air it had when it was weighed. */
export interface DryWeighing {
  readonly mass: Grams;
  /** `here`: in this room. `label`: the sum of the balls as sold. A number: relative humidity, percent. */
  readonly air: 'here' | 'label' | number;
}

/** A part that is thicker than the rest: ribbing, a hem, a sleeve laid over the body. */
export interface ThickPlace {
  readonly name: string;
  /** Share of the garment's mass, 0 to 1, open. */
  readonly share: number;
  /** How many times as thick as the rest, as it lies; above 1. */
  readonly times: number;
}

export interface Lying {
  /** `rack`: air reaches both faces. `mat`: one. */
  readonly on: 'mat' | 'rack';
  /** One face of the fabric, all layers counted, m²; null where it was not measured. */
  readonly fabricM2: number | null;
  /** 2 for a sewn garment lying doubled. */
  readonly layers: 1 | 2;
  /** The thick places; null where nobody said: then the usual one. */
  readonly thick: readonly ThickPlace[] | null;
  /** A pinned piece cannot be turned. */
  readonly pinned: boolean;
}

export interface Weighing {
  /** Since the mass after pressing was taken; 0 or more. */
  readonly hours: number;
  readonly mass: Grams;
}

export interface DryingQuestion {
  readonly fibres: readonly FibreShare[];
  readonly dry: DryWeighing;
  /** Mass after pressing, or, without a scale, how the water was taken out. */
  readonly wet: Grams | 'towel' | 'spun' | 'dripping';
  readonly air: RoomAir;
  readonly lying: Lying;
  readonly weighings: readonly Weighing[];
  /** SD of one reading of the scale with its handling, g; 2 where left out. */
  readonly scaleSd?: number;
}

export interface DryingOptions {
  readonly seed?: number;
  /** 2,000 where left out. */
  readonly draws?: number;
}

/** One hand on the clock, in hours since the mass after pressing was taken. */
export interface ClockMark {
  readonly kind: 'look' | 'turn' | 'dry';
  /** The same mark keeps it from forecast to forecast. */
  readonly id: 'first-look' | 'turn' | 'may-be-dry' | 'look-again' | 'dry';
  readonly hours: number;
  /** Range of what the mark waits for. */
  readonly within: Spread;
  /** What to do then, one sentence. */
  readonly text: string;
}

/** Where things stand at the last weighing. */
export interface DryNow {
  readonly hours: number;
  /** Chance that it is dry, 0 to 1. */
  readonly chance: number;
  readonly state: 'dry' | 'not-dry' | 'unsure';
  readonly text: string;
}

/** What a hand can tell where there is no scale. */
export interface TouchWorth {
  /** Where to feel: the last place to dry. */
  readonly where: string;
  /** Regain below which the fibre no longer feels damp; null where no figure was found. */
  readonly feelsDryAt: number | null;
  /** Hours that are left when that place first feels dry; null with it. */
  readonly hoursLeft: Spread | null;
  readonly text: string;
}

/** Something that a number stands on. */
export interface DryingBasis {
  readonly what: string;
  readonly source: string | null;
  readonly standing: string;
}

export interface DryingForecast {
  readonly seed: number;
  readonly draws: number;
  /** How many equal draws the weighted ones are worth; few is a notice. */
  readonly effectiveDraws: number;
  /** Water above what the yarn holds in this room, g, at the start. */
  readonly waterG: Spread;
  /** Mass when it is dry in this room, g. */
  readonly dryMassG: Spread;
  /** What the scale shows when it counts as dry, g: the middle of the dry mass with the tolerance of the whole. */
  readonly dryAtG: number;
  /** What the whole loses while all of it is wet, g/h. */
  readonly rateG: Spread;
  /** Hours until it is dry, the thick places too. */
  readonly dryHours: Spread;
  /** What counts as dry: excess water over dry fibre, of the whole and of its last place. */
  readonly tolerance: { readonly whole: number; readonly place: number };
  readonly places: readonly {
    readonly name: string;
    readonly share: number;
    readonly dryHours: Spread;
  }[];
  /** In order of time; those that the last weighing is past are left out. */
  readonly marks: readonly ClockMark[];
  /** Mass over time, g, from the start to the late end of the range. */
  readonly course: readonly { readonly hours: number; readonly massG: Spread }[];
  /** Null before the first weighing. */
  readonly now: DryNow | null;
  readonly touch: TouchWorth;
  readonly wetBulb: {
    readonly value: number;
    readonly iterations: number;
    readonly residual: number;
    readonly converged: boolean;
  };
  /** How the weighings were taken in. */
  readonly fit: {
    readonly iterations: number;
    readonly residual: number;
    readonly converged: boolean;
  };
  readonly notices: readonly { readonly code: string; readonly text: string }[];
  readonly bases: readonly DryingBasis[];
}
