import { settled } from './whole.ts';

/**
 * An edge to be worked: where it should lie and what may be done to it. Places are in steps of shaping
 * (stitches; eight of them where eight places of a round are shaped at once), greater outwards.
 */
export interface EdgeAsked {
  /** Where it should lie at a height in rows, `from` to `to`. */
  readonly wanted: (height: number) => number;
  readonly from: number;
  readonly to: number;
  /** Places where it may begin. */
  readonly starts: readonly number[];
  /** Least place after a row: what keeps it clear of the other edge. */
  readonly least: (row: number) => number;
  /** Rows on which it may be bound off: 1 for odd ones, 0 for even ones. */
  readonly boundOn: 0 | 1;
  /** How much may go at once in one row; Infinity where stitches are bound off. */
  readonly most: (place: number) => number;
  /** Rows whose width is measured: there it counts more to be right. The last row always is one. */
  readonly measured: readonly number[];
}

export interface EdgeEvent {
  readonly row: number;
  /** Outwards (+) or inwards (−), in steps. */
  readonly by: number;
}

export interface EdgeFit {
  readonly start: number;
  readonly events: readonly EdgeEvent[];
  /** Farthest that it lies from the wanted edge, in steps, looking one row up and down. */
  readonly worst: number;
  /** Root of the mean square of the same over all rows. */
  readonly rms: number;
}

/** A line of instructions is worth this much error, in steps² × rows: common practice, no source. */
const LINE = 4;
/** A row whose width is measured counts as much as so many others. */
const MEASURED = 12;
/** Shaping wrong-side rows too is a nuisance. */
const EVERY_ROW = 1;
/** Shaping less often than this is written as rows without shaping. */
const RAREST = 40;
/** How far from the wanted edge it may lie, in steps; widened only where no shaping keeps within it. */
const BOUND = 1;
/** Or this share of its whole travel, so that a wide shawl is not pages of small corrections. */
const SHARE = 0.02;
/** Times the bound. */
const WIDEST = 40;
/** Steeper than this, in steps a row, it is bound off and not decreased. */
const STEEP = 2;

interface Node {
  readonly cost: number;
  readonly back: Node | null;
  readonly row: number;
  readonly place: number;
  readonly events: readonly EdgeEvent[];
}

/** The places that are near enough at each row: the wanted edge within a row up or down, and the bound. */
class Tube {
  private readonly low: number[] = [];
  private readonly high: number[] = [];
  private readonly middle: number[] = [];
  private readonly measured: ReadonlySet<number>;

  constructor(
    private readonly asked: EdgeAsked,
    readonly bound: number,
  ) {
    const { from, to, wanted } = asked;
    this.measured = new Set([...asked.measured, to]);
    const clip = (height: number) => Math.min(Math.max(height, from), to);
    for (let row = from + 1; row <= to; row++) {
      const around = Array.from({ length: 13 }, (_, i) => wanted(clip(row - 2 + i / 4)));
      this.low.push(settled(Math.min(...around)));
      this.high.push(settled(Math.max(...around)));
      this.middle.push(wanted(row - 0.5));
    }
  }

  private index(row: number): number {
    return row - this.asked.from - 1;
  }

  /** How far a place is from the wanted edge near a row. */
  off(row: number, place: number): number {
    const i = this.index(row);
    return Math.max(0, this.low[i]! - place, place - this.high[i]!);
  }

  holds(row: number, place: number): boolean {
    return (
      row <= this.asked.to && this.off(row, place) <= this.bound && place >= this.asked.least(row)
    );
  }

  /** Square of the error at the middle of a row, by its weight. */
  error(row: number, place: number): number {
    const weight = this.measured.has(row) ? MEASURED : 1;
    return weight * (place - this.middle[this.index(row)]!) ** 2;
  }

  /** Nearest and farthest place inwards or outwards that a row still holds. */
  range(row: number): readonly [number, number] {
    const i = this.index(row);
    return [this.low[i]! - this.bound, this.high[i]! + this.bound];
  }
}

class Search {
  private readonly best = new Map<number, Map<number, Node>>();

  constructor(
    private readonly asked: EdgeAsked,
    private readonly tube: Tube,
    private readonly line: number,
  ) {}

  private offer(node: Node): void {
    const row = this.best.get(node.row) ?? new Map<number, Node>();
    this.best.set(node.row, row);
    const known = row.get(node.place);
    if (known === undefined || node.cost < known.cost) row.set(node.place, node);
  }

  /** Cost of rows `from + 1` to `to` at one place; null where it leaves the tube. */
  private along(from: number, to: number, place: number): number | null {
    let cost = 0;
    for (let row = from + 1; row <= to; row++) {
      if (!this.tube.holds(row, place)) return null;
      cost += this.tube.error(row, place);
    }
    return cost;
  }

  private straight(node: Node): void {
    let cost = node.cost + this.line;
    for (let row = node.row + 1; this.tube.holds(row, node.place); row++) {
      cost += this.tube.error(row, node.place);
      this.offer({ cost, back: node, row, place: node.place, events: [] });
    }
  }

  /** A run of shaping: `by` steps on row `first` from here and every `every` rows; `rest` rows after each. */
  private run(node: Node, by: number, first: number, every: number, rest: number): void {
    let { place, row, cost } = node;
    cost += this.line + (every === 1 && rest === 0 ? EVERY_ROW : 0);
    const events: EdgeEvent[] = [];
    for (let gap = first; ; gap = every) {
      if (Math.abs(by) > this.asked.most(place)) return;
      const before = this.along(row, row + gap - 1 - (events.length > 0 ? rest : 0), place);
      if (before === null) return;
      const at = row + gap - (events.length > 0 ? rest : 0);
      place += by;
      const after = this.along(at - 1, at + rest, place);
      if (after === null) return;
      cost += before + after;
      events.push({ row: at, by });
      row = at + rest;
      this.offer({ cost, back: node, row, place, events: [...events] });
    }
  }

  private steep(row: number): boolean {
    const { wanted, to, most } = this.asked;
    const slope = wanted(Math.min(row + 1, to)) - wanted(row);
    return most(Infinity) === Infinity && Math.abs(slope) > STEEP;
  }

  private runs(node: Node): void {
    if (this.steep(node.row)) return;
    for (const by of [-1, 1]) {
      this.run(node, by, 1, 1, 0);
      for (let every = 2; every <= RAREST; every += 2)
        for (const first of [1, every])
          if ((node.row + first) % 2 === 1) this.run(node, by, first, every, 0);
    }
  }

  /** Several at once, this row and every second one; what is added in the first row is the cast-on. */
  private jumps(node: Node): void {
    if ((node.row + 1) % 2 !== this.asked.boundOn || node.row + 2 > this.asked.to) return;
    const [low, high] = this.tube.range(node.row + 1);
    for (let by = Math.ceil(low - node.place); by <= high - node.place; by++)
      if (by < -1 || (by > 1 && node.row > 0)) this.run(node, by, 1, 2, 1);
  }

  cheapest(): Node | null {
    const { from, to, starts } = this.asked;
    for (const place of starts)
      this.offer({
        cost: this.tube.error(from + 1, place),
        back: null,
        row: from,
        place,
        events: [],
      });
    for (let row = from; row < to; row++)
      for (const node of this.best.get(row)?.values() ?? []) {
        this.straight(node);
        this.runs(node);
        this.jumps(node);
      }
    const ends = [...(this.best.get(to)?.values() ?? [])];
    return ends.reduce<Node | null>((a, b) => (a === null || b.cost < a.cost ? b : a), null);
  }
}

const eventsOf = (end: Node): EdgeEvent[] => {
  const events: EdgeEvent[] = [];
  for (let node: Node | null = end; node; node = node.back) events.unshift(...node.events);
  return events;
};

const startOf = (end: Node): number => {
  let node = end;
  while (node.back) node = node.back;
  return node.place;
};

const qualityOf = (
  asked: EdgeAsked,
  tube: Tube,
  start: number,
  events: readonly EdgeEvent[],
): Pick<EdgeFit, 'worst' | 'rms'> => {
  let [place, worst, squares, next] = [start, 0, 0, 0];
  for (let row = asked.from + 1; row <= asked.to; row++) {
    while (events[next]?.row === row) place += events[next++]!.by;
    worst = Math.max(worst, tube.off(row, place));
    squares += tube.off(row, place) ** 2;
  }
  return { worst, rms: Math.sqrt(squares / Math.max(1, asked.to - asked.from)) };
};

/** One step, or a fiftieth of all that the edge travels. */
export const boundOf = ({
  wanted,
  from,
  to,
}: Pick<EdgeAsked, 'wanted' | 'from' | 'to'>): number => {
  let travel = 0;
  for (let row = from; row < to; row++) travel += Math.abs(wanted(row + 1) - wanted(row));
  return Math.max(BOUND, SHARE * travel);
};

/**
 * Shaping that follows an edge with few lines of instructions: of all runs of shaping that keep within
 * one step of the wanted edge (one row up or down; a fiftieth of its travel where that is more), those that cost least, a line counting as much as
 * an error of 4 steps² × rows; found by dynamic programming over rows and places.
 *
 * @returns null where even a bound of 40 steps cannot be kept. Where one step cannot, `worst` says so.
 */
export const fitEdge = (asked: EdgeAsked): EdgeFit | null => {
  const least = boundOf(asked);
  for (let bound = least; bound <= WIDEST * least; bound *= 1.5) {
    const tube = new Tube(asked, bound);
    const end = new Search(asked, tube, LINE * least ** 2).cheapest();
    if (end === null) continue;
    const [start, events] = [startOf(end), eventsOf(end)];
    return { start, events, ...qualityOf(asked, tube, start, events) };
  }
  return null;
};
