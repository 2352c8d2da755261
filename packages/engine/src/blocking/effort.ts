/** Parts of a plan, in the order in which they are worked out. */
export type PlanPart =
  | 'pins'
  | 'rest'
  | 'order'
  | 'ranges'
  | 'less-stretch'
  | 'before-sewing'
  | 'more-pins';

export const PART_WORDS: Readonly<Record<PlanPart, string>> = {
  pins: 'the choice of its pins',
  rest: 'how it comes to rest',
  order: 'trying the order of its pins',
  ranges: 'its ranges, which are too narrow',
  'less-stretch': 'what less stretch would bring',
  'before-sewing': 'what it would reach before sewing',
  'more-pins': 'what more pins would bring',
};

/**
 * What the plan of one piece may cost: evaluations of its whole sheet, that is the forces and the
 * stiffness of every triangle worked out once. A sweater back takes some 300; one takes a millisecond on the
 * mesh that is usual, and nobody waits for longer than a few seconds.
 */
export const MOST_EVALUATIONS = 3000;

/** Share of it that may be spent when a part ends. What is left after the last ends what has begun. */
const UNTIL: Readonly<Record<PlanPart, number>> = {
  pins: 0.4,
  rest: 0.5,
  order: 0.65,
  ranges: 0.72,
  'less-stretch': 0.78,
  'before-sewing': 0.84,
  'more-pins': 0.9,
};

/** Counts what the plan of one piece costs, and hears when a part has had its share. */
export class Effort {
  readonly most: number;
  spent = 0;
  /** Nodes of the whole sheet; one with fewer counts by as much less. 0: any sheet counts as whole. */
  whole = 0;
  /** Parts that had to end before they were done. */
  readonly cutShort = new Set<PlanPart>();
  private part: PlanPart = 'pins';

  constructor(most = MOST_EVALUATIONS) {
    this.most = most;
  }

  begin(part: PlanPart): void {
    this.part = part;
  }

  private costOf(evaluations: number, nodes: number): number {
    return this.whole > 0 ? (evaluations * nodes) / this.whole : evaluations;
  }

  spend(evaluations: number, nodes: number): void {
    this.spent += this.costOf(evaluations, nodes);
  }

  /** Whether the part may go on once more evaluations are spent; where it may not, that is kept. */
  goOn(evaluations = 0, nodes = 0): boolean {
    const may = this.spent + this.costOf(evaluations, nodes) < UNTIL[this.part] * this.most;
    if (!may) this.cutShort.add(this.part);
    return may;
  }
}
