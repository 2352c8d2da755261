import type { Fault } from '@dryflat/engine/units';
import type { PaperName } from '@dryflat/paper';
import type { GarmentRecord } from '@dryflat/record';

/** Pages for the mat. `mat`: numbers and pins in order. `full-size`: outlines to lie under the piece. `blank`: to fill in. */
export type Printed = 'mat' | 'full-size' | 'blank';

export interface PaperQuestion {
  readonly record: GarmentRecord;
  readonly what: Printed | 'report';
  readonly paper: PaperName;
  readonly units: 'cm' | 'in';
  readonly words: 'us' | 'uk';
  /** How the mat pulls. */
  readonly gentle: boolean;
  /** The one piece that is wanted full size; all where it is null. */
  readonly piece: string | null;
}

export interface PaperAsk {
  readonly turn: number;
  readonly question: PaperQuestion;
  /** Moment to write into a PDF, ISO 8601; null where pages are only looked at. */
  readonly pdf: string | null;
}

/** One page as a picture of its own. */
export interface PaperPage {
  readonly title: string;
  readonly svg: string;
}

/** A report as texts, and its title, which names nobody unless that was ticked. */
export interface ReportTexts {
  readonly title: string;
  readonly html: string;
  readonly markdown: string;
}

export type PaperAnswer =
  | { readonly kind: 'progress'; readonly turn: number; readonly done: number }
  | {
      readonly kind: 'pages';
      readonly turn: number;
      readonly pages: readonly PaperPage[];
      /** Null for all but a report. */
      readonly report: ReportTexts | null;
    }
  | { readonly kind: 'pdf'; readonly turn: number; readonly bytes: Uint8Array }
  | { readonly kind: 'faults'; readonly turn: number; readonly faults: readonly Fault[] }
  | { readonly kind: 'broken'; readonly turn: number; readonly message: string };
