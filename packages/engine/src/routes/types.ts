import type { Basis, ForecastState, WeighedFabric, YarnStock } from '../fabric/index.ts';
import type { ForecastQuestion, Miss, Range } from '../garment/index.ts';
import type { Spread } from '../stats/index.ts';
import type { Millimetres } from '../units/index.ts';
import type { PaceEntry } from './pace/index.ts';

/** Somebody else whom the garment might fit. */
export interface PersonToFit {
  readonly id: string;
  readonly name: string;
  readonly body: readonly {
    /** Body measurement: the `body` of a landmark, or a landmark of the knitter's own. */
    readonly body: string;
    readonly mm: Millimetres;
    readonly from: 'measured' | 'table';
  }[];
}

/** How much of a piece is knit: a share of all its copies, 0 to 1. Pieces by their names in the outline. */
export interface PieceProgress {
  readonly piece: string;
  readonly share: number;
}

export interface RouteWeights {
  readonly fit: number;
  readonly time: number;
  readonly yarn: number;
}

/** What is asked about one garment at the stage that it is in. Days are ISO days. */
export interface RoutesQuestion {
  readonly forecast: ForecastQuestion;
  /** Name of the wearer; empty where none was given. */
  readonly wearer: string;
  readonly people: readonly PersonToFit[];
  /** Whether it is offered to the sizes of the published tables too. */
  readonly tables: boolean;
  /** Pieces that are begun; those left out are not. */
  readonly progress: readonly PieceProgress[];
  /** False where nobody said how much is knit, and nothing that was measured tells: then none is taken to be. */
  readonly progressSaid: boolean;
  /** It was washed and dried already. */
  readonly dried: boolean;
  /** Stitch repeat of the main pattern; null: any count. */
  readonly repeat: { readonly stitches: number; readonly plus: number } | null;
  /** Pieces or swatches that were weighed. */
  readonly weighed: readonly WeighedFabric[];
  /** Yarn bought, and what is left of it by the scale; null where nothing is known. */
  readonly stock: YarnStock | null;
  readonly pace: {
    readonly log: readonly PaceEntry[];
    /** Hours for knitting on each day of the week, Monday first. */
    readonly hours: readonly number[];
    readonly away: readonly string[];
    /** Days until another skein is here; null where none is to be had. */
    readonly shopDays: number | null;
  };
  /** Hours by the clock from wet to dry; null: a usual range is assumed. */
  readonly dryingHours: Spread | null;
  readonly from: string;
  readonly by: string | null;
  readonly weights: RouteWeights;
}

export type RouteKind =
  | 'lay'
  | 'gentle'
  | 'schematic'
  | 'harder'
  | 'needle'
  | 'size'
  | 'blend'
  | 'rip-length'
  | 'rip-width'
  | 're-knit'
  | 'add'
  | 'take-away'
  | 'give'
  | 'leave';

/** One measurement of the garment as the route gives it. */
export interface RouteMeasurement {
  readonly id: string;
  readonly name: string;
  readonly landmark: string;
  readonly span: 'flat' | 'around';
  readonly pinnedMm: number | null;
  readonly states: Readonly<Record<Exclude<ForecastState, 'wet'>, Range>>;
}

export interface RouteFit {
  readonly landmark: string;
  readonly measurement: string;
  readonly wantedMm: { readonly min: number; readonly max: number };
  readonly finishedMm: Range;
  /** Chance of lying in the wanted range in the judged state, 0 to 1. */
  readonly chance: number;
  readonly tooSmall: number;
  readonly tooLarge: number;
  readonly miss: Miss;
}

/** A count that the route names: `150 stitches` at a place. */
export interface RouteCount {
  readonly what: string;
  readonly count: number;
}

/** What is begun, or ends, at a height of a piece. */
export type RowMark =
  | 'cast-on'
  | 'ribbing'
  | 'underarm'
  | 'shoulder'
  | 'crown'
  | 'heel'
  | 'toe'
  | 'tip'
  | 'end';

/** Rows that are knit one after the other, up to a mark. */
export interface RowStretch {
  readonly to: RowMark;
  /** All rows from the mark before it, the cast-on for the first; null where no length of the pattern tells. */
  readonly rows: number | null;
  /** Rows more than planned; negative is fewer. */
  readonly by: number;
}

/** How far down a piece is ripped: `below` rows under the place of a mark as it is knit now. */
export interface RipTo {
  readonly mark: RowMark;
  readonly below: number;
  /** The last row that stays, counted from the cast-on; null where no length of the pattern tells. */
  readonly row: number | null;
}

/** One piece as a route has it knit; its copies are alike. */
export interface PieceRows {
  /** By its name in the outline. */
  readonly piece: string;
  readonly copies: 1 | 2;
  /** Whether it is knit farther now than what stays of it. */
  readonly stands: 'not-begun' | 'below' | 'beyond';
  /** Null where nothing of it is ripped. */
  readonly ripTo: RipTo | null;
  /** In the order of knitting. */
  readonly stretches: readonly RowStretch[];
  /** Stitches wider than planned up to the underarm, all copies together; negative is narrower. */
  readonly wider: number;
}

/**
 * What a route does, in numbers that can be carried out with needles: rows piece by piece, stitches at a place.
 * Carried out on the garment as it is planned, they give what the route promises as knit.
 */
export interface Knitting {
  readonly pieces: readonly PieceRows[];
  /** Rows added at the lower edge of the body or of the sleeves; negative are taken out there. */
  readonly edge: { readonly at: 'hem' | 'cuff'; readonly rows: number } | null;
  /** Stitches at a landmark, over the whole span of its measurement. */
  readonly stitches: readonly { readonly landmark: string; readonly count: number }[];
  /** Put into each side of the body; negative is taken in there. */
  readonly sides: { readonly stitches: number; readonly mm: number } | null;
}

/** Hours with 90 % ranges. `total` is work, drying by the clock left out. */
export interface RouteHours {
  readonly total: Spread;
  readonly knit: Spread;
  readonly rip: Spread;
  readonly sew: Spread;
  /** Handling on the mat. */
  readonly block: Spread;
  /** By the clock. */
  readonly dry: Spread;
}

/** Metres with 90 % ranges, over the same draws. */
export interface RouteYarn {
  /** What is still to be knit takes. */
  readonly needed: Spread;
  /** What ripping gives back. */
  readonly returned: Spread;
  /** At hand, beyond what is knit; null where the stock is not known. */
  readonly left: Spread | null;
  /** Left over when done; negative is missing. */
  readonly over: Spread | null;
}

export interface Route {
  /** Stable for the same question: `lay`, `size:4`, `needle:4.5`. */
  readonly id: string;
  readonly kind: RouteKind;
  /** What to do, as a short sentence without a full stop. Lengths are `{mm:123.4}` tokens. */
  readonly name: string;
  /** Id of the person who gets it; null for the wearer; `table:…` for a size of a table. */
  readonly recipient: string | null;
  /** It is what the plan says. */
  readonly planned: boolean;
  readonly measurements: readonly RouteMeasurement[];
  readonly fit: readonly RouteFit[];
  /** Chance that every landmark is in range; null where nothing is wanted, or nothing is made. */
  readonly chanceAllFit: number | null;
  /** Landmark with the least chance; null where none is judged. */
  readonly worst: RouteFit | null;
  readonly counts: readonly RouteCount[];
  /** Null where nothing is knit otherwise than the pattern has it. */
  readonly knitting: Knitting | null;
  /** What to do, step by step, as sentences. Lengths are `{mm:123.4}` tokens. */
  readonly steps: readonly string[];
  readonly hours: RouteHours;
  readonly yarnM: RouteYarn;
  readonly chanceOfYarn: number | null;
  /** Chance of being done by the date; null where there is none. */
  readonly chanceByDate: number | null;
  readonly doneDay: {
    readonly p05: string | null;
    readonly p50: string | null;
    readonly p95: string | null;
  };
  /** Ids of bases, those that are measured first. */
  readonly dependsOn: readonly string[];
  readonly reasons: readonly string[];
  /** What each is worth before weighing, 0 to 1. */
  readonly worth: RouteWeights;
  /** Weighted mean of the worths. */
  readonly score: number;
  /** Id of a route that is at least as good in fit, time and yarn, and better in one; null where none is. */
  readonly dominatedBy: string | null;
  /** Id of the measurement that would most reduce the doubt of this route's worth; null where none would. */
  readonly measureFirst: string | null;
}

/** A route that is not open, and why. */
export interface RouteLeftOut {
  readonly kind: RouteKind;
  readonly name: string;
  readonly why: string;
}

/** A cheap measurement that is not taken yet, and what it is worth. */
export interface Measuring {
  readonly id: string;
  /** What to measure, as a short sentence without a full stop. */
  readonly name: string;
  /** Gain in the expected score of the best route, 0 to 1, after measuring. */
  readonly gain: number;
  /** Chance that another route turns out best. */
  readonly chanceOfChange: number;
  /** Share of the variance of the best route's worth that it explains, 0 to 1. */
  readonly explains: number;
}

export interface SizeAtNeedle {
  readonly needleMm: number | null;
  /** `evidence`: measured on this needle. `model`: moved from another needle by the gauge model. */
  readonly gaugeFrom: 'evidence' | 'model';
  readonly stitchMm: number;
  readonly rowMm: number;
  /** Size whose stitches are used. */
  readonly size: string;
  /** Size whose lengths are used; the same but for blends. */
  readonly lengthsOf: string;
  readonly chanceAllFit: number | null;
  readonly landmarks: readonly {
    readonly landmark: string;
    readonly finishedMm: Range;
    readonly wantedMm: { readonly min: number; readonly max: number } | null;
    readonly chance: number | null;
  }[];
}

export interface RoutesResult {
  readonly seed: number;
  readonly draws: number;
  readonly judgedAt: 'dried' | 'worn' | 'rewashed';
  /** Best first. */
  readonly routes: readonly Route[];
  readonly leftOut: readonly RouteLeftOut[];
  /** Why the first is first. */
  readonly sentence: string;
  /** Most worth first. */
  readonly valueOfInformation: readonly Measuring[];
  /** False where `onRoute` stopped it: routes that were not computed are missing. */
  readonly complete: boolean;
  readonly notices: readonly { readonly code: string; readonly text: string }[];
  readonly bases: readonly Basis[];
}

export interface RoutesOptions {
  readonly seed?: number;
  /** 10,000 where left out; 100 at least. */
  readonly draws?: number;
  /** Called as each route is ready, before it is compared; false stops. */
  readonly onRoute?: (route: Route) => boolean;
}
