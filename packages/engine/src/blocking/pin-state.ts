import type { Point } from '../garment/index.ts';
import type { Constraints, Equilibrium, GaveWay } from '../membrane/index.ts';
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

/** Constraints of pins at ring indices and of runs. */
export const fixingOf = (
  { ring }: PieceSheet,
  targets: readonly Point[],
  pins: ReadonlySet<number>,
  runs: readonly Run[],
): Fixing => {
  const pinned = new Set(pins);
  const slides = new Map<number, readonly [number, number]>();
  for (const { kind, nodes } of runs) {
    const ends = [nodes[0]!, nodes.at(-1)!] as const;
    for (const k of nodes)
      if (kind === 'comb' || ends.includes(k)) pinned.add(k);
      else slides.set(k, ends);
  }
  for (const k of pinned) slides.delete(k);
  const pinOrder = [...pinned].sort((a, b) => a - b);
  const slideOrder = [...slides.keys()].sort((a, b) => a - b);
  return {
    constraints: {
      held: [],
      pins: pinOrder.map((k) => ({ node: ring[k]!.node, ...targets[k]! })),
      slides: slideOrder.map((k) => {
        const [a, b] = slides.get(k)!.map((end) => targets[end]!) as [Point, Point];
        return { node: ring[k]!.node, ax: a.x, ay: a.y, bx: b.x, by: b.y };
      }),
    },
    of: [...pinOrder, ...slideOrder],
  };
};

/**
 * Pins in a piece and how it lies with them. A pin that the fabric does not let reach its place is put
 * where the fabric ends; the wanted edge between two pins moves with them.
 */
export class PinState {
  readonly sheet: PieceSheet;
  readonly pins = new Set<number>();
  runs: Run[] = [];
  readonly targets: Point[];
  /** The targets as they were before any gave way. */
  readonly startTargets: readonly Point[];
  readonly shortfalls = new Map<number, Shortfall>();
  /** What is in the mat already and stays. */
  private given: readonly HeldThing[] = [];
  iterations = 0;
  private lying: { eq: Equilibrium; fixing: Fixing } | null = null;

  /** `share`: of the way from rest to the wanted places, 0 to 1; an asked pin goes all of it. */
  constructor(sheet: PieceSheet, share = 1) {
    this.sheet = sheet;
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
    const other = new PinState(this.sheet);
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

  solve(): { eq: Equilibrium; fixing: Fixing } {
    const fixing = fixingOf(this.sheet, this.targets, this.pins, this.runs);
    const eq = solveWith(this.sheet, fixing.constraints);
    this.iterations += eq.iterations;
    this.lying = { eq, fixing };
    const pins = fixing.constraints.pins.length;
    for (const { kind, index, short, by } of eq.gaveWay) {
      const ring = fixing.of[kind === 'slide' ? pins + index : index]!;
      const before = this.shortfalls.get(ring)?.short ?? 0;
      this.shortfalls.set(ring, { ring, short: before + short, by });
      if (kind !== 'slide') this.targets[ring] = this.place(ring);
    }
    return this.lying;
  }

  /** Ends a solve that was cut short: what is not at its place stays where it has come to. */
  standStill(): void {
    for (const k of this.fixed()) {
      const [to, at] = [this.targets[k]!, this.place(k)];
      const short = distance(to, at);
      if (short <= STILL) continue;
      const before = this.shortfalls.get(k)?.short ?? 0;
      this.shortfalls.set(k, { ring: k, short: before + short, by: { kind: 'no-equilibrium' } });
      this.targets[k] = at;
    }
    this.solve();
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
