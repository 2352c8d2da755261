import { freezeAll, freezeWorst } from './freeze.ts';
import { type Goal, waysLeft } from './goals.ts';
import { shareBeforeLimit, worstAfter, worstUse } from './limits.ts';
import { answer, factorStiffness, type NewtonEnd, newton } from './newton.ts';
import type { GaveWay, OnStep } from './question.ts';
import { EASIER_SHARES, relaxation } from './relaxation.ts';
import type { System } from './system.ts';

export interface CarryOptions {
  readonly tolerance: number;
  /** Force (N) that strains a triangle by 1. */
  readonly unit: number;
  readonly shift: number;
  readonly mostUse: number;
  /** Newton iterations after which goals that have not arrived give way. */
  readonly mostIterations: number;
  readonly onStep: OnStep;
  /** Begin with the stiffness of a taut sheet: from a start at rest. */
  readonly fresh: boolean;
}

export interface CarryEnd {
  readonly iterations: number;
  readonly residual: number;
  readonly converged: boolean;
  readonly stopped: boolean;
  readonly gaveWay: readonly GaveWay[];
}

/** A step that a limit cuts goes this share of the way to it. */
const SHY_OF_LIMIT = 0.8;
/** Stretched out: this share of the most that is allowed. */
const NEAR = 0.98;
/** Shorter steps than this share of the way do not help any more. */
const LEAST_STEP = 1 / 512;
const MOST_ITERATIONS = 40;
/** Steps in one pass, after which goals give way one group after another. */
const MOST_STEPS = 100;
/** A step that leaves so little of the residual has hardly changed the stiffness. */
const CHORD_BELOW = 1e-3;
/** Cut steps before easier resistances are tried. */
const PATIENCE = 2;
/** Residual that will do short of the goals, as a share of the force that strains a triangle by 1. */
const ON_THE_WAY = 1e-6;
/** An easier resistance need only be balanced to this share of it. */
const SETTLED = 0.01;
/** mm: ways shorter than this share of the extent are rounding. */
const ARRIVED = 1e-13;

/** Moves the prescribed nodes onto their goals exactly; steps leave rounding behind. */
const arrive = (goals: readonly Goal[], points: Float64Array): void => {
  for (const { kind, node, x, y, released, frozen } of goals) {
    if (released || frozen || kind === 'slide') continue;
    points[2 * node] = x;
    points[2 * node + 1] = y;
  }
};

/**
 * Carries the sheet to its goals in as few steps as its limits let it: each step foretells where all nodes
 * go, shortened before any limit, and Newton's method settles it. Where the sheet is stretched out, the
 * goals that stretch it at that place give way and stay; the others go on. `points` move along.
 */
export class Carry {
  private readonly system: System;
  private readonly goals: readonly Goal[];
  private readonly points: Float64Array;
  private readonly options: CarryOptions;
  private iterations = 0;
  private reached = 0;
  private stopped = false;
  /** Last settled only as well as a place on the way needs. */
  private rough = false;
  private last: NewtonEnd | undefined;
  private readonly gaveWay: GaveWay[] = [];

  constructor(system: System, goals: readonly Goal[], points: Float64Array, options: CarryOptions) {
    this.system = system;
    this.goals = goals;
    this.points = points;
    this.options = options;
  }

  run(): CarryEnd {
    let fresh = this.options.fresh;
    let steps = 0;
    while (!this.stopped) {
      const { moved, longest } = waysLeft(this.goals, this.points);
      if (longest <= ARRIVED * this.extent()) break;
      if (this.iterations >= this.options.mostIterations) this.giveUp();
      else if (steps++ >= MOST_STEPS || !this.step(moved, fresh)) this.giveWay(moved);
      fresh = false;
    }
    if (this.last === undefined || (this.rough && !this.stopped)) this.last = this.settle();
    const { residual, converged } = this.last;
    const { iterations, stopped, gaveWay } = this;
    return { iterations, residual, converged: converged && !stopped, stopped, gaveWay };
  }

  private extent(): number {
    return this.points.reduce((most, x) => Math.max(most, Math.abs(x)), 1);
  }

  private use(): number {
    const { sheet, cords } = this.system.parts;
    return worstUse(sheet, cords, this.system.state, this.points).use;
  }

  /**
   * Equilibrium with the prescribed nodes where they are. Where steps are cut again and again, places
   * change between slack and taut; then by way of larger residual resistances.
   */
  private settle(tolerance = this.options.tolerance): NewtonEnd {
    this.rough = tolerance > this.options.tolerance;
    const end = this.newton(tolerance, PATIENCE);
    if (end.converged || end.stopped) return end;
    const { sheet } = this.system.parts;
    const own = sheet.relaxations;
    for (const share of EASIER_SHARES) {
      sheet.relaxations = own.map(({ material }) => relaxation(material, share));
      if (!this.stopped) this.newton(share * this.options.unit * SETTLED, MOST_ITERATIONS);
    }
    sheet.relaxations = own;
    return this.newton(tolerance, MOST_ITERATIONS);
  }

  private onTheWay(): number {
    return ON_THE_WAY * this.options.unit;
  }

  private newton(tolerance: number, mostCuts: number): NewtonEnd {
    const { shift, onStep } = this.options;
    const before = this.iterations;
    let count = 0;
    const end = newton(this.system, this.points, {
      tolerance,
      shift,
      mostCuts,
      chordBelow: CHORD_BELOW,
      mostIterations: MOST_ITERATIONS,
      onIteration: (residual) =>
        onStep({ reached: this.reached, iterations: before + ++count, residual }),
    });
    this.iterations += end.iterations;
    this.stopped ||= end.stopped;
    return end;
  }

  /** One step towards the goals; false where no step worth taking stays within the limits. */
  private step(moved: Float64Array, fresh: boolean): boolean {
    const { system, points } = this;
    const { sheet, cords } = system.parts;
    const [from, wrinkles] = [points.slice(), system.state.wrinkles.slice()];
    const step = this.foretell(moved, fresh);
    const useBefore = this.use();
    let share = Math.min(1, SHY_OF_LIMIT * shareBeforeLimit(sheet, cords, points, step));
    while (share >= LEAST_STEP && this.iterations < this.options.mostIterations) {
      for (let k = 0; k < points.length; k++) points[k] = from[k]! + share * step[k]!;
      if (share === 1) arrive(this.goals, points);
      const end = this.settle(share === 1 ? this.options.tolerance : this.onTheWay());
      const use = this.use();
      if (end.converged && (use <= this.options.mostUse || use <= useBefore)) {
        this.last = end;
        this.reached += share * (1 - this.reached);
        return share === 1 || use <= useBefore || use < NEAR * this.options.mostUse;
      }
      if (this.stopped) {
        this.last = end;
        return true;
      }
      points.set(from);
      system.state.wrinkles.set(wrinkles);
      const even = ((1 + NEAR) / 2) * this.options.mostUse - useBefore;
      share *= end.converged ? Math.min(0.9, Math.max(0.1, even / (use - useBefore))) : 0.25;
    }
    return false;
  }

  /** Where everything goes when the goals are reached, as far as the stiffness here tells. */
  private foretell(moved: Float64Array, fresh: boolean): Float64Array {
    const { system, points } = this;
    const { shift } = this.options;
    if (fresh) {
      system.evaluate(points, 'taut-stiffness');
      return answer(system, factorStiffness(system, points, shift), moved);
    }
    if (system.factor === undefined) {
      system.evaluate(points, 'stiffness');
      factorStiffness(system, points, shift);
    }
    return answer(system, system.factor!, moved);
  }

  /** No more iterations: what has not arrived stays where it is. */
  private giveUp(): void {
    const nowhere = { use: 0, triangle: -1, line: 1, cord: -1 } as const;
    this.gaveWay.push(...freezeAll(this.goals, this.points, nowhere));
  }

  /** Freezes the goals that bring the next place to its limit. */
  private giveWay(moved: Float64Array): void {
    const { system, goals, points } = this;
    this.last = this.settle(this.onTheWay());
    if (this.stopped) return;
    const { sheet, cords } = system.parts;
    const step = this.foretell(moved, false).map((x) => LEAST_STEP * x);
    const worst = worstAfter(sheet, cords, system.state, points, step);
    this.gaveWay.push(...freezeWorst(system, goals, points, worst, this.options.shift));
  }
}
