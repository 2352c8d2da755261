import type { ForecastQuestion, PartName } from '../../garment/index.ts';
import type { Judgement } from '../knit/judge.ts';
import type { Luck, Make } from '../knit/luck.ts';
import type { KnitPiece } from '../knit/pieces.ts';
import type { Judged } from '../knit/targets.ts';
import type { Work } from '../price/work.ts';
import type { Knitting, RouteCount, RouteKind, RouteLeftOut, RoutesQuestion } from '../types.ts';

/** A route that is open, before it is priced. */
export interface Draft {
  readonly id: string;
  readonly kind: RouteKind;
  readonly name: string;
  readonly luck: Luck;
  /** One for each measurement of the luck; null where nothing is made. */
  readonly makes: readonly Make[] | null;
  readonly judged: Judged;
  readonly work: Work;
  readonly recipient?: string;
  readonly planned?: boolean;
  readonly counts?: readonly RouteCount[];
  readonly knitting?: Knitting;
  readonly steps?: readonly string[];
  readonly reasons?: readonly string[];
  /** Ids of bases of this route alone. */
  readonly bases?: readonly string[];
}

/** What every family of routes is enumerated from. */
export interface Bench {
  readonly question: RoutesQuestion;
  readonly forecast: ForecastQuestion;
  readonly luck: Luck;
  readonly own: Judged;
  /** How the plan has it, and how that fits. */
  readonly planned: readonly Make[];
  readonly plannedFit: Judgement;
  /** Chance that all of it fits the wearer, of a garment on this luck. */
  chanceOfSize(makes: readonly Make[]): number;
  /** Pieces as they are now. */
  readonly pieces: readonly KnitPiece[];
  /** Share of the garment that is knit, 0 to 1. */
  readonly begun: number;
}

export interface Opened {
  readonly drafts: readonly Draft[];
  readonly leftOut: readonly RouteLeftOut[];
}

export const nothing = (kind: RouteKind, name: string, why: string): Opened => ({
  drafts: [],
  leftOut: [{ kind, name, why }],
});

export const together = (all: readonly Opened[]): Opened => ({
  drafts: all.flatMap(({ drafts }) => drafts),
  leftOut: all.flatMap(({ leftOut }) => leftOut),
});

/** A landmark in words: ids are words joined by hyphens. */
export const spoken = (landmark: string): string => landmark.replaceAll('-', ' ');

export const mmToken = (value: number): string => `{mm:${value.toFixed(1)}}`;

/** What a part is called: the piece itself where the garment is one piece. */
export const partWord = ({ pieces }: Pick<Bench, 'pieces'>, part: PartName): string => {
  if (part === 'sleeve') return 'sleeves';
  const [first] = pieces;
  return first !== undefined && pieces.length === 1 ? first.name : 'body';
};

/** What its lower edge is called. */
export const edgeWord = ({ pieces }: Pick<Bench, 'pieces'>, part: PartName): string => {
  if (part === 'sleeve') return 'cuffs';
  return pieces.length === 1 ? 'cast-on edge' : 'hem';
};
