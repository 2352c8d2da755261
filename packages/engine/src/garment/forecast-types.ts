import type { Basis, Direction, ForecastState, Specimen } from '../fabric/index.ts';
import type { Fibre, Stitch, Treatment } from '../textile/index.ts';
import type { Grams, Millimetres } from '../units/index.ts';
import type { GarmentKind } from './kinds.ts';

/** A measurement as the pattern asks for it, in one size after another. */
export interface MeasurementWanted {
  readonly id: string;
  readonly name: string;
  readonly landmark: string;
  readonly direction: Direction;
  /** `around` for girths given around, `flat` otherwise; the engine converts nothing silently. */
  readonly span: 'flat' | 'around';
  readonly worked: 'counted' | 'to-length';
  readonly values: readonly (Millimetres | null)[];
  readonly counts: readonly (number | null)[];
  readonly stitch: Stitch;
  /** What a piece of the garment that is there has, whatever the pattern says. */
  readonly knit?: PieceCount | undefined;
}

/** Stitches of a piece that is knit or begun, at the place of a measurement. */
export interface PieceCount {
  /** What the piece is called. */
  readonly piece: string;
  /** Across the piece, as they were counted, and over the measurement's span: the rest of it is taken to be alike. */
  readonly across: number;
  readonly stitches: number;
}

/** A tape measurement of the garment itself. */
export interface MeasuredOnGarment {
  readonly id: string;
  readonly measurement: string;
  readonly state: 'asKnit' | 'wet' | 'pinned' | 'dried' | 'worn' | 'rewashed';
  readonly value: Millimetres;
  readonly span: 'flat' | 'around';
}

export interface FitWanted {
  readonly landmark: string;
  /** Body measurement, null where none was given. */
  readonly body: Millimetres | null;
  readonly bodyFrom: 'measured' | 'table' | null;
  /** Wanted ease over the body, or wanted finished range (around for girths). */
  readonly kind: 'ease' | 'finished';
  readonly min: Millimetres;
  readonly max: Millimetres;
}

export interface ForecastQuestion {
  readonly kind: GarmentKind;
  readonly stitch: Stitch;
  readonly fibres: readonly { readonly fibre: Fibre; readonly share: number }[];
  readonly treatment: Treatment;
  /** How many yarns there are; one where it is left out. */
  readonly yarns?: number;
  readonly weightClass: number | null;
  readonly metresPer100g: number | null;
  readonly mass: Grams | null;
  readonly needle: Millimetres | null;
  readonly patternNeedle: Millimetres | null;
  /** Pattern gauge as pitches: width of a stitch and height of a row, with the state they hold in. */
  readonly patternGauge: {
    readonly stitch: Millimetres;
    /** Null where the pattern gives stitches only. */
    readonly row: Millimetres | null;
    readonly state: 'asKnit' | 'dried';
  } | null;
  readonly sizes: readonly string[];
  readonly chosen: number;
  readonly measurements: readonly MeasurementWanted[];
  readonly specimens: readonly Specimen[];
  readonly measured: readonly MeasuredOnGarment[];
  readonly wanted: readonly FitWanted[];
  readonly drying: 'lay' | 'pin';
  readonly pinTo: readonly { readonly measurement: string; readonly value: Millimetres }[];
  readonly judgeAt: 'dried' | 'worn' | 'rewashed';
  readonly washing: 'by-hand' | 'machine-wool' | 'machine-warm' | 'not-said';
}

/** 5th, 50th and 95th percentile, in millimetres. Nine times in ten the truth should lie between the outer two. */
export interface Range {
  readonly p05Mm: number;
  readonly p50Mm: number;
  readonly p95Mm: number;
}

export interface MeasurementForecast {
  readonly id: string;
  readonly name: string;
  readonly landmark: string;
  readonly direction: Direction;
  readonly span: 'flat' | 'around';
  /** What the pattern says for the chosen size; null where it says nothing. */
  readonly targetMm: number | null;
  readonly states: Readonly<Record<ForecastState, Range>>;
  /** What it is pinned to, where the plan pins it; null where it is left alone. */
  readonly pinnedMm: number | null;
  /** Ids of the bases that this number stands on, strongest first. */
  readonly standsOn: readonly string[];
}

/** The way in which a length misses what is wanted when it misses, and by how much its median lies beyond; 0 inside. */
export interface Miss {
  readonly side: 'small' | 'large';
  readonly byMm: number;
}

export interface LandmarkFit {
  readonly landmark: string;
  readonly measurement: string;
  readonly bodyMm: number | null;
  readonly wantedMm: {
    readonly min: number;
    readonly max: number;
    readonly kind: 'ease' | 'finished';
  };
  /** Ease where there is a body measurement; null otherwise. Taken in the state that the plan judges at. */
  readonly easeMm: Range | null;
  readonly finishedMm: Range;
  /** Chance that it lies in the wanted range, 0 to 1. */
  readonly chance: number;
  readonly chanceByState: Readonly<Record<'dried' | 'worn' | 'rewashed', number>>;
  /** Which way it misses when it misses: chance of being too small and too large. */
  readonly tooSmall: number;
  readonly tooLarge: number;
  readonly miss: Miss;
}

export interface SizeFit {
  readonly size: string;
  /** Chance that every wanted landmark is in range. */
  readonly chanceAll: number;
  readonly landmarks: readonly {
    readonly landmark: string;
    readonly p50Mm: number;
    readonly chance: number;
    readonly miss: Miss;
  }[];
}

export type NeedleAdvice = 'larger' | 'smaller' | 'keep' | 'no-evidence';

/** The size that fits best on a needle, begun afresh. */
export interface BestOnNeedle {
  readonly way: 'smaller' | 'own' | 'larger';
  /** Null where the garment's needle is not known. */
  readonly needleMm: number | null;
  readonly size: string;
  readonly chanceAll: number;
  /** `evidence`: measured on this needle. `model`: moved from the garment's own. */
  readonly from: 'evidence' | 'model';
}

export interface Advice {
  readonly bestSize: string | null;
  readonly needle: NeedleAdvice;
  /** Thinnest first; empty where no size can be judged. */
  readonly needles: readonly BestOnNeedle[];
  /** Why, in one sentence; lengths in it are left as {mm:123.4} tokens for the view to print in its unit. */
  readonly sentence: string;
}

/** Something the knitter should know, or say: shown beside the result, never hidden. */
export interface Notice {
  readonly code: string;
  readonly text: string;
  /** Id of the basis that it is about, where it is about one: it is said beside that too. */
  readonly about?: string;
}

/** Pitches by state: width of a stitch, height of a row, in millimetres. */
export interface GaugeForecast {
  readonly stitch: Readonly<Record<ForecastState, Range>>;
  readonly row: Readonly<Record<ForecastState, Range>>;
}

/** The gauge after one more reading; the first step is what is believed before any. */
export interface GaugeStep {
  readonly basisId: string | null;
  readonly label: string;
  readonly stitch: Readonly<Record<ForecastState, Range>>;
  readonly row: Readonly<Record<ForecastState, Range>>;
}

export interface Forecast {
  readonly seed: number;
  readonly draws: number;
  readonly chosenSize: string | null;
  readonly gauge: GaugeForecast;
  readonly measurements: readonly MeasurementForecast[];
  readonly judgedAt: 'dried' | 'worn' | 'rewashed';
  readonly fit: readonly LandmarkFit[];
  readonly chanceAllFit: number | null;
  readonly sizes: readonly SizeFit[];
  readonly advice: Advice;
  readonly notices: readonly Notice[];
  /** Everything the result stands on, with its kind. */
  readonly evidence: readonly Basis[];
}

/** `forecast(question, { seed, draws })` is pure: same question and seed, same bytes. */
export interface ForecastOptions {
  readonly seed?: number;
  /** Number of draws; 10,000 by default. */
  readonly draws?: number;
}
