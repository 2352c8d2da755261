import { shareShyOfFold, turnedOver } from './folds.ts';
import { freezeAll, freezeWorst } from './freeze.ts';
import { type Goal, moves, waysLeft } from './goals.ts';
import { shareBeforeLimit, worstAfter, worstUse } from './limits.ts';
import { answer, factorStiffness, type NewtonEnd, newton } from './newton.ts';
import { slipPins } from './pins.ts';
import type { MembraneQuestion, OnStep } from './question.ts';
import { EASIER_SHARES, relaxation } from './relaxation.ts';
import type { System } from './system.ts';

export interface CarryOptions {
  readonly tolerance: number;
  /** A residual that will do after so many iterations. */
  readonly enough: MembraneQuestion['enough'];
  /** Force (N) that strains a triangle by 1. */
  readonly unit: number;
  /** Stiffness (N/mm) that holds a piece that could move freely. */
  readonly loose: number;
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
}

/** All that a step changes, as it was where it began. */
interface Begun {
  readonly points: Float64Array;
  readonly wrinkles: Float64Array;
  readonly goals: readonly Pick<Goal, 'slipped' | 'frozen'>[];
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
/** Three prescribed unknowns are the least that keep a piece from moving as a whole. */
const HOLDING = 3;

/** Moves the prescribed nodes onto their goals exactly; steps leave rounding behind. */
const arrive = (goals: readonly Goal[], points: Float64Array): void => {
  for (const goal of goals) {
    if (!moves(goal) || goal.kind === 'slide') continue;
    points[2 * goal.node] = goal.x;
    points[2 * goal.node + 1] = goal.y;
  }
};

/**
 * Carries the sheet to its goals in as few steps as its limits let it: each step foretells where all nodes
 * go, shortened before any limit, and Newton's method settles it; constraints that then bear more than they
 * can slip. Where the sheet is stretched out, the goals that stretch it at that place give way and stay; the
 * others go on. `points` move along. A step that is abandoned or stopped leaves nothing behind.
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
    if (this.last === undefined || this.rough) this.rest(this.options.tolerance);
    const { system, points, iterations, stopped } = this;
    if (stopped || this.last === undefined) {
      system.evaluate(points, 'forces');
      return { iterations, residual: system.residual(), converged: false, stopped };
    }
    const { residual, converged } = this.last;
    return { iterations, residual, converged, stopped };
  }

  private extent(): number {
    return this.points.reduce((most, x) => Math.max(most, Math.abs(x)), 1);
  }

  private use(): number {
    const { sheet, cords } = this.system.parts;
    return worstUse(sheet, cords, this.system.state, this.points).use;
  }

  private begun(): Begun {
    const goals = this.goals.map(({ slipped, frozen }) => ({ slipped, frozen }));
    return { points: this.points.slice(), wrinkles: this.system.state.wrinkles.slice(), goals };
  }

  /** As if the step had not been tried. */
  private undo({ points, wrinkles, goals }: Begun): void {
    this.points.set(points);
    this.system.state.wrinkles.set(wrinkles);
    this.goals.forEach((goal, k) => {
      Object.assign(goal, goals[k]);
    });
    this.system.prescribe(this.goals);
  }

  /** Settles the sheet where it is; where it is stopped meanwhile, it stays as it was. */
  private rest(tolerance: number): void {
    if (this.stopped) return;
    const begun = this.begun();
    const end = this.balance(tolerance);
    if (this.stopped) this.undo(begun);
    else this.last = end;
  }

  /** Equilibrium in which no constraint bears more than it can. */
  private balance(tolerance: number): NewtonEnd {
    for (;;) {
      const end = this.settle(tolerance);
      if (!end.converged || !slipPins(this.system, this.goals, this.points)) return end;
    }
  }

  /**
   * Equilibrium with the prescribed nodes where they are. Where steps are cut again and again, places
   * change between slack and taut; then by way of larger residual resistances.
   */
  private settle(tolerance: number): NewtonEnd {
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

  /** Keeps a piece that nothing holds. */
  private shift(): number {
    const { fixed } = this.system.frames;
    return fixed.reduce((sum, each) => sum + each, 0) < HOLDING ? this.options.loose : 0;
  }

  private newton(tolerance: number, mostCuts: number): NewtonEnd {
    const { enough } = this.options;
    const before = this.iterations;
    let count = 0;
    const end = newton(this.system, this.points, {
      tolerance: (iterations) =>
        enough !== undefined && before + iterations >= enough.after
          ? Math.max(tolerance, enough.residual)
          : tolerance,
      shift: this.shift(),
      mostCuts,
      chordBelow: CHORD_BELOW,
      mostIterations: MOST_ITERATIONS,
      onIteration: (residual) => this.goOn(before + ++count, residual, false),
    });
    this.iterations += end.iterations;
    this.stopped ||= end.stopped;
    return end;
  }

  private goOn(iterations: number, residual: number, rests: boolean): boolean {
    return this.options.onStep({ reached: this.reached, iterations, residual, rests });
  }

  /** One step towards the goals; false where no step worth taking stays within the limits. */
  private step(moved: Float64Array, fresh: boolean): boolean {
    const { points } = this;
    const { sheet, cords } = this.system.parts;
    const begun = this.begun();
    const step = this.foretell(moved, fresh);
    const useBefore = this.use();
    const [turnedBefore, faceUp] = [turnedOver(sheet, points), shareShyOfFold(sheet, points, step)];
    let share = Math.min(1, SHY_OF_LIMIT * shareBeforeLimit(sheet, cords, points, step));
    while (share >= LEAST_STEP && this.iterations < this.options.mostIterations) {
      for (let k = 0; k < points.length; k++) points[k] = begun.points[k]! + share * step[k]!;
      if (share === 1) arrive(this.goals, points);
      const end = this.balance(share === 1 ? this.options.tolerance : this.onTheWay());
      const use = this.use();
      if (end.converged && share > faceUp && turnedOver(sheet, points) > turnedBefore) {
        this.undo(begun);
        share = faceUp;
        continue;
      }
      if (end.converged && (use <= this.options.mostUse || use <= useBefore)) {
        this.last = end;
        this.reached += share * (1 - this.reached);
        this.stopped ||= !this.goOn(this.iterations, end.residual, true);
        return share === 1 || use <= useBefore || use < NEAR * this.options.mostUse;
      }
      this.undo(begun);
      if (this.stopped) return true;
      const even = ((1 + NEAR) / 2) * this.options.mostUse - useBefore;
      share *= end.converged ? Math.min(0.9, Math.max(0.1, even / (use - useBefore))) : 0.25;
    }
    return false;
  }

  /** Where everything goes when the goals are reached, as far as the stiffness here tells. */
  private foretell(moved: Float64Array, fresh: boolean): Float64Array {
    const { system, points } = this;
    if (fresh) {
      system.evaluate(points, 'taut-stiffness');
      return answer(system, factorStiffness(system, points, this.shift()), moved);
    }
    if (system.factor === undefined) {
      system.evaluate(points, 'stiffness');
      factorStiffness(system, points, this.shift());
    }
    return answer(system, system.factor!, moved);
  }

  /** No more iterations: what has not arrived stays where it is. */
  private giveUp(): void {
    freezeAll(this.goals, this.points, { use: 0, triangle: -1, line: 1, cord: -1 });
  }

  /** Freezes the goals that bring the next place to its limit. */
  private giveWay(moved: Float64Array): void {
    const { system, goals, points } = this;
    this.rest(this.onTheWay());
    if (this.stopped) return;
    const { sheet, cords } = system.parts;
    const step = this.foretell(moved, false).map((x) => LEAST_STEP * x);
    const worst = worstAfter(sheet, cords, system.state, points, step);
    freezeWorst(system, goals, points, worst, this.shift());
  }
}
