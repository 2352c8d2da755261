import type { LogNormal, Spread } from '../../stats/index.ts';
import type { FibreShare, Stitch } from '../../textile/index.ts';
import type { Basis } from '../basis.ts';
import type { RestState } from '../specimen.ts';

/** A swatch, or any piece, that was weighed and whose stitches are known. */
export interface WeighedFabric {
  readonly id: string;
  readonly name: string;
  readonly stitch: Stitch;
  /** g, above 0. */
  readonly massG: number;
  /** Stitches across and rows up; their product is what was weighed. Above 0. */
  readonly across: number;
  readonly up: number;
  /** `counted` one by one, or worked out from the extents and the gauge. */
  readonly counts: 'counted' | 'from-extents';
}

/** What is known of the gauge that yarn per stitch is worked out from. */
export interface GaugeForYarn {
  readonly stitch: Stitch;
  /** Width of a stitch and height of a row, mm; null where not known. */
  readonly width: LogNormal | null;
  readonly row: LogNormal | null;
  readonly state: RestState;
}

export interface YarnQuestion {
  /** From the label; null where it says nothing. */
  readonly metresPer100g: number | null;
  readonly weightClass: number | null;
  /** Shares of mass; empty where not known. */
  readonly fibres: readonly FibreShare[];
  readonly gauge: GaugeForYarn | null;
  readonly weighed: readonly WeighedFabric[];
}

/** What the yarn in a stitch was found from; the strongest comes first. */
export type YarnFrom = 'weighed' | 'loop-length' | 'stitch-ratio' | 'yarn-class' | 'nothing';

/** Yarn in one stitch of a pattern, by length and by mass. */
export interface YarnPerStitch {
  readonly stitch: Stitch;
  readonly lengthMm: LogNormal;
  readonly massG: LogNormal;
  readonly metresPer100g: LogNormal;
  readonly from: YarnFrom;
  readonly bases: readonly Basis[];
}

/** Fabric to be knit, or ripped. */
export interface YarnPart {
  readonly name: string;
  readonly stitch: Stitch;
  /** 0 or more. */
  readonly stitches: number;
}

/** Everything that takes yarn until the garment is done. */
export interface YarnWork {
  /** In the order in which they are knit. */
  readonly parts: readonly YarnPart[];
  /** Stitches cast on and bound off, as the sum over all edges. */
  readonly castOn: number;
  readonly bindOff: number;
  /** Length of all seams sewn with this yarn, mm. */
  readonly seamsMm: number;
  /** New balls joined on the way, beyond the first. */
  readonly joins: number;
  /** Fabric that is ripped: its yarn comes back, less a loss. */
  readonly ripped: readonly YarnPart[];
}

/** Length and mass of yarn with their 90 % ranges. */
export interface YarnAmount {
  readonly metres: Spread;
  readonly grams: Spread;
}

export interface YarnNeed {
  /** Of all the work, ripped yarn not taken off. */
  readonly needed: YarnAmount;
  /** What ripping gives back; null where nothing is ripped. */
  readonly returned: YarnAmount | null;
  readonly parts: readonly (YarnAmount & { readonly name: string })[];
  /** Cast-on, bind-off, seams, joins and tails together. */
  readonly extras: YarnAmount;
  readonly bases: readonly Basis[];
}

/** Yarn over the draws of a set of columns; index i is one imagined knitter. */
export interface YarnDraws {
  readonly n: number;
  readonly neededM: Float64Array;
  readonly neededG: Float64Array;
  readonly returnedM: Float64Array;
  readonly returnedG: Float64Array;
  /** Metres per 100 g. */
  readonly metresPer100g: Float64Array;
}

/** Skeins of one dye lot; a skein's mass and length as its label has them, null where it is silent. */
export interface YarnLot {
  readonly dyeLot: string;
  readonly skeins: number;
  readonly gramsEach: number | null;
  readonly metresEach: number | null;
}

/** Yarn at hand. What is left by the scale, where it was weighed, stands for all lots. */
export interface YarnStock {
  readonly lots: readonly YarnLot[];
  /** g on a kitchen scale; null where not weighed. */
  readonly leftG: number | null;
}

export interface YarnHeld extends YarnAmount {
  readonly lots: readonly (YarnAmount & { readonly dyeLot: string })[];
  readonly bases: readonly Basis[];
}

/** Whether the yarn lasts, and what to buy. */
export interface SkeinAdvice {
  /** What the work that is left takes, ripped yarn not taken off. */
  readonly needed: YarnAmount;
  /** At hand for it: by the scale, or what was bought less what is used up. */
  readonly held: YarnAmount;
  /** Chance of running out, 0 to 1. */
  readonly chanceShort: number;
  /** Yarn at hand over yarn needed, of the whole work; below 1 it runs out. */
  readonly heldOverNeeded: LogNormal;
  /** Left over when done, ripped yarn counted; negative is missing. */
  readonly leftoverG: Spread;
  readonly leftoverM: Spread;
  /** Skeins to buy so that the chance falls below `MOST_SHORT`; null where the size of a skein is not known. */
  readonly buy: number | null;
  /** Chance of running out with them. */
  readonly chanceWithBuy: number | null;
  readonly lots: LotAdvice;
  readonly sentence: string;
  readonly bases: readonly Basis[];
}

export interface LotAdvice {
  /** Lots that suffice by themselves, the likeliest first, with their chance of running out. */
  readonly alone: readonly { readonly dyeLot: string; readonly chanceShort: number }[];
  /**
   * `one`: a single lot suffices. `by-part`: each part from one lot. `mixed`: some part needs two. `short`: the only
   * lot may run out, or even all together are likelier to run out than not. `untold`: what is left was weighed
   * together, so that nobody knows how much of which.
   */
  readonly kind: 'no-lots' | 'untold' | 'one' | 'by-part' | 'mixed' | 'short';
  /** Which lot each part is knit from, for `one` and `by-part`. */
  readonly parts: readonly { readonly part: string; readonly dyeLot: string }[];
  /** For `mixed`: knit in order, the largest lot first; the lot lasts up to this share of the part in 95 % of draws. */
  readonly changes: readonly LotChange[];
  readonly sentence: string;
}

export interface LotChange {
  readonly from: string;
  readonly to: string;
  readonly part: string;
  /** 0 to 1. */
  readonly share: number;
}
