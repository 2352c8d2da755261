import type { Point } from '../garment/index.ts';
import type { Constraints, Equilibrium, GaveWay } from '../membrane/index.ts';
import { EVER_PULLED } from './hand-pull.ts';
import { type HeldThing, placesHeld } from './held-on-mat.ts';
import { solveWith } from './lie.ts';
import { type PieceSheet, placeIn } from './piece-sheet.ts';
import { between, distance } from './plane.ts';
import type { Run } from './run.ts';

/** A pin this close to its place is there, mm: finer than any hand. */
const STILL = 0.01;

/** A constraint that was stopped short of its place, and by what. */
export interface Shortfall {
  readonly ring: number;
  readonly short: number;
  readonly by: GaveWay['by'];
}

/** Which nodes are constrained by what, in the order in which the solver gives reactions. */
export interface Fixing {
  readonly constraints: Constraints;
  /** Ring index of each pin, then of each slide. */
  readonly of: readonly number[];
}

/** Constraints of pins, by their ring indices with what each bears, N, and of runs. */
export const fixingOf = (
  { ring }: PieceSheet,
  targets: readonly Point[],
  pins: ReadonlyMap<number, number>,
  runs: readonly Run[],
): Fixing => {
  const pinned = new Map(pins);
  const slides = new Map<
    number,
    { readonly line: readonly [Point, Point]; readonly most: number }
  >();
  const pin = (k: number, most: number) => pinned.set(k, Math.max(most, pinned.get(k) ?? 0));
  for (const { kind, nodes, pins: holding, most } of runs) {
    const ends = [nodes[0]!, nodes.at(-1)!] as const;
    // What a comb or a wire bears is shared by all that it holds; a wire's ends are at pins.
    const own = kind === 'wire' ? nodes.slice(1, -1) : nodes;
    const each = most / Math.max(1, own.length);
    const line = [targets[ends[0]]!, targets[ends[1]]!] as const;
    if (kind === 'comb') for (const k of own) pin(k, each);
    else {
      for (const k of own) slides.set(k, { line, most: each });
      for (const k of ends) pin(k, most / holding);
    }
  }
  for (const k of pinned.keys()) slides.delete(k);
  const pinOrder = [...pinned.keys()].sort((a, b) => a - b);
  const slideOrder = [...slides.keys()].sort((a, b) => a - b);
  return {
    constraints: {
      held: [],
      pins: pinOrder.map((k) => ({ node: ring[k]!.node, ...targets[k]!, most: pinned.get(k)! })),
      slides: slideOrder.map((k) => {
        const { line, most } = slides.get(k)!;
        const [a, b] = line;
        return { node: ring[k]!.node, ax: a.x, ay: a.y, bx: b.x, by: b.y, most };
      }),
    },
    of: [...pinOrder, ...slideOrder],
  };
};

/**
 * Pins in a piece and how it lies with them. A pin that the fabric does not let reach its place is put
 * where the fabric ends; the wanted edge between two pins moves with them. One that would have to bear more
 * than it can stands short of its place, and comes nearer when others help; it is put where it stands once
 * all are chosen.
 */
export class PinState {
  readonly sheet: PieceSheet;
  readonly pins = new Set<number>();
  runs: Run[] = [];
  readonly targets: Point[];
  /** The targets as they were before any gave way. */
  readonly startTargets: readonly Point[];
  readonly shortfalls = new Map<number, Shortfall>();
  /** What one pin that is planned bears, N. */
  readonly mostPull: number;
  /** How far pins that bear all they can stand short of their places now, mm, by ring index. */
  private slips: ReadonlyMap<number, number> = new Map();
  /** What is in the mat already and stays. */
  private given: readonly HeldThing[] = [];
  iterations = 0;
  private lying: { eq: Equilibrium; fixing: Fixing } | null = null;

  /** `share`: of the way from rest to the wanted places, 0 to 1; an asked pin goes all of it. */
  constructor(sheet: PieceSheet, mostPull: number, share = 1) {
    this.sheet = sheet;
    this.mostPull = mostPull;
    this.startTargets = sheet.ring.map(({ wanted, rest, role }) =>
      share === 1 || role === 'asked' ? wanted : between(rest, wanted, share),
    );
    this.targets = [...this.startTargets];
  }

  /** Holds what is in the mat already, for good. */
  putIn(given: readonly HeldThing[]): void {
    this.given = given;
    for (const [k, at] of placesHeld(given)) this.targets[k] = at;
    for (const { run, nodes } of given)
      if (run === null) this.pins.add(nodes[0]!);
      else this.runs.push(run);
  }

  /** The same sheet with nothing planned: what is in the mat already, and the places wanted. */
  bare(): PinState {
    const other = new PinState(this.sheet, this.mostPull);
    other.targets.splice(0, other.targets.length, ...this.startTargets);
    other.putIn(this.given);
    return other;
  }

  isIn(ring: number): boolean {
    return this.given.some(({ run, nodes }) => run === null && nodes[0] === ring);
  }

  /** Pins that are planned, rising. */
  planned(): number[] {
    return [...this.pins].filter((k) => !this.isIn(k)).sort((a, b) => a - b);
  }

  /** How it lies; solved when first asked for. */
  get eq(): Equilibrium {
    return (this.lying ?? this.solve()).eq;
  }

  get fixing(): Fixing {
    return (this.lying ?? this.solve()).fixing;
  }

  /** Ring indices that are held, rising. */
  fixed(): number[] {
    const all = new Set(this.pins);
    for (const { nodes } of this.runs) for (const k of nodes) all.add(k);
    return [...all].sort((a, b) => a - b);
  }

  place(ring: number): Point {
    return placeIn(this.eq.points, this.sheet.ring[ring]!.node);
  }

  private fixingNow(): Fixing {
    return fixingOf(this.sheet, this.targets, this.bearing(), this.runs);
  }

  /** What the pin at each ring index bears, N: one that is in the mat already is held there by more than a hand. */
  bearing(): Map<number, number> {
    return new Map([...this.pins].map((k) => [k, this.isIn(k) ? EVER_PULLED : this.mostPull]));
  }

  solve(): { eq: Equilibrium; fixing: Fixing } {
    const fixing = this.fixingNow();
    const eq = solveWith(this.sheet, fixing.constraints);
    this.iterations += eq.iterations;
    this.lying = { eq, fixing };
    const slipped = eq.gaveWay.filter(({ by }) => by.kind === 'pull');
    this.slips = new Map(slipped.map((each) => [this.ringOf(each), each.short]));
    for (const each of eq.gaveWay) if (each.by.kind !== 'pull') this.giveWay(each);
    return this.lying;
  }

  /** How far the pin at a ring index stands short of its place because it bears all it can, mm. */
  slip(ring: number): number {
    return this.slips.get(ring) ?? 0;
  }

  /** Where what holds a ring index stands: its place, or short of it. */
  stands(ring: number): Point {
    return this.slips.has(ring) ? this.place(ring) : this.targets[ring]!;
  }

  private ringOf({ kind, index }: GaveWay): number {
    const { constraints, of } = this.fixing;
    return of[kind === 'slide' ? constraints.pins.length + index : index]!;
  }

  private giveWay(each: GaveWay): void {
    const { kind, short, by } = each;
    const ring = this.ringOf(each);
    const before = this.shortfalls.get(ring)?.short ?? 0;
    this.shortfalls.set(ring, { ring, short: before + short, by });
    if (kind !== 'slide') this.targets[ring] = this.place(ring);
  }

  /** Puts pins that bear all they can where they stand, once no more are chosen. */
  putDown(): void {
    const { eq } = this;
    for (const each of eq.gaveWay) if (each.by.kind === 'pull') this.giveWay(each);
    this.slips = new Map();
    this.lying = { eq, fixing: this.fixingNow() };
  }

  /** Ends a solve that was cut short: what is not at its place stays where it has come to. */
  standStill(): void {
    this.putDown();
    for (const k of this.fixed()) {
      const [to, at] = [this.targets[k]!, this.place(k)];
      const short = distance(to, at);
      if (short <= STILL) continue;
      const before = this.shortfalls.get(k)?.short ?? 0;
      this.shortfalls.set(k, { ring: k, short: before + short, by: { kind: 'no-equilibrium' } });
      this.targets[k] = at;
    }
    this.solve();
    this.putDown();
  }

  /** Force on the ring index's constraint, N. */
  pull(ring: number): number {
    const at = this.fixing.of.indexOf(ring);
    if (at < 0) return 0;
    const { reactions } = this.eq;
    return Math.hypot(reactions[2 * at]!, reactions[2 * at + 1]!);
  }

  /** Pins that the fabric does not pull at: it is larger there than wanted. */
  released(): number[] {
    return this.eq.released.map((index) => this.fixing.of[index]!);
  }
}
