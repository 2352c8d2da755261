import { addCords, type CordLines } from './cords.ts';
import type { Frames } from './frames.ts';
import { addFriction, type Friction } from './friction.ts';
import { type Sheet, SheetAssembly, type SheetState, type Wanted } from './sheet.ts';
import type { Factor, Symbolic } from './sparse/index.ts';
import { emptyTotals, type Totals } from './totals.ts';

/** All that stores energy, and the analysis of its stiffness. */
export interface Parts {
  readonly sheet: Sheet;
  readonly cords: CordLines;
  readonly friction: Friction | undefined;
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
      addFriction(parts.friction, points, frames, withStiffness, totals);
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
