import { addCords, type CordLines } from './cords.ts';
import type { Frames } from './frames.ts';
import { addFriction, type Friction } from './friction.ts';
import { type Goal, setFrames } from './goals.ts';
import { type Sheet, SheetAssembly, type SheetState, type Wanted } from './sheet.ts';
import type { Factor, Symbolic } from './sparse/index.ts';
import { addTethers } from './tethers.ts';
import { emptyTotals, type Totals } from './totals.ts';

/** All that stores energy, and the analysis of its stiffness. */
export interface Parts {
  readonly sheet: Sheet;
  readonly cords: CordLines;
  readonly friction: Friction | undefined;
  /** 3 positions a node in the values of the stiffness: (x, x), (x, y), (y, y). */
  readonly nodes: Int32Array;
  readonly symbolic: Symbolic;
}

/** Energy, forces and stiffness of the whole at given places of its nodes. */
export class System {
  readonly parts: Parts;
  readonly frames: Frames;
  readonly state: SheetState;
  readonly totals: Totals;
  /** Of the stiffness last factorised, as long as nothing else has become prescribed or free. */
  factor: Factor | undefined;
  /** How often all of it was evaluated. */
  evaluations = 0;
  /** Constraints that gave way to their pull. */
  private tethers: readonly Goal[] = [];
  private readonly assembly: SheetAssembly;

  constructor(parts: Parts, frames: Frames) {
    const { sheet, symbolic } = parts;
    this.parts = parts;
    this.frames = frames;
    this.state = {
      wrinkles: new Float64Array(2 * sheet.rest.count),
      branch: new Uint8Array(sheet.rest.count),
    };
    this.totals = emptyTotals(symbolic.pattern.n, symbolic.slot.length);
    this.assembly = new SheetAssembly(sheet);
  }

  /** Prescribes what the goals prescribe now; the others pull by what they bear, or not at all. */
  prescribe(goals: readonly Goal[]): void {
    setFrames(this.frames, goals);
    this.tethers = goals.filter(({ slipped, released }) => slipped && !released);
    this.factor = undefined;
  }

  /** Fills `totals`; forces in the nodes' own axes. Where energy is Infinity the rest is not whole. */
  evaluate(points: Float64Array, wanted: Wanted): void {
    this.evaluations += 1;
    const { parts, frames, state, totals } = this;
    const withStiffness = wanted !== 'forces';
    totals.energy = 0;
    totals.forces.fill(0);
    if (withStiffness) totals.stiffness.fill(0);
    this.assembly.add(points, state, frames, wanted, totals);
    if (totals.energy === Number.POSITIVE_INFINITY) return;
    addCords(parts.cords, points, frames, withStiffness, totals);
    if (parts.friction !== undefined)
      addFriction(parts.friction, parts.nodes, points, frames, withStiffness, totals);
    addTethers(this.tethers, parts.nodes, points, frames, withStiffness, totals);
    frames.intoOwn(totals.forces);
  }

  /** Largest force (N) on an unknown that is not prescribed. */
  residual(): number {
    const { fixed } = this.frames;
    let largest = 0;
    this.totals.forces.forEach((force, k) => {
      if (fixed[k] === 0) largest = Math.max(largest, Math.abs(force));
    });
    return largest;
  }
}
