import { ok, type Result } from '../units/index.ts';
import { Carry, type CarryEnd } from './carry.ts';
import { turnedOver } from './folds.ts';
import { Frames } from './frames.ts';
import { type Goal, goalsOf, outwardNormals } from './goals.ts';
import { limitUse } from './limits.ts';
import { partsOf, unitForce } from './parts.ts';
import { changePins, gaveWayOf, reactionOf } from './pins.ts';
import {
  type Constraints,
  type Equilibrium,
  type MembraneQuestion,
  MOST_USE,
  type OnStep,
} from './question.ts';
import { constraintFaults, questionFaults } from './question-faults.ts';
import { readStress, readStretch } from './readings.ts';
import { System } from './system.ts';

/**
 * Residual that counts as equilibrium, as a share of the force that strains a triangle by 1: a
 * millionth of the residual resistance, so that slack places are settled too.
 */
const TOLERANCE = 1e-10;
/** A pin pushes when it does so by more than this share of the same force: that of the residual resistance. */
const PUSHES = 1e-4;
/** Pins are judged where forces are balanced to this share of that, not where a residual only will do. */
const JUDGED = 0.1;
/** Newton iterations of one `solve`; a hundred is much. What has not arrived then gives way. */
const MOST_ITERATIONS = 500;
/** Passes of letting go and catching pins. */
const MOST_PASSES = 12;
/** Stiffness that holds a piece that could move freely, as a share of its own. */
const LOOSE = 1e-9;

const always: OnStep = () => true;

/**
 * Keeps the analysis of one mesh and the last state of its nodes, so that moving a pin starts from where
 * the sheet is. Not to be used by two callers in turn without `constrain`: it remembers.
 */
export class MembraneSolver {
  private readonly question: MembraneQuestion;
  private readonly system: System;
  private readonly normals: Float64Array;
  private readonly unit: number;
  private readonly points: Float64Array;
  private goals: Goal[] = [];
  private fresh: boolean;

  private constructor(question: MembraneQuestion) {
    const parts = partsOf(question);
    this.question = question;
    this.system = new System(parts, new Frames(question.mesh.points.length / 2));
    this.normals = outwardNormals(question.mesh);
    this.unit = unitForce(parts);
    this.points = (question.start ?? question.mesh.points).slice();
    this.fresh = question.start === undefined;
    this.setGoals(question);
  }

  /** Faults where the question cannot be solved. The mesh and its arrays must not change afterwards. */
  static of(question: MembraneQuestion): Result<MembraneSolver> {
    const faults = questionFaults(question);
    return faults.length > 0 ? { ok: false, faults } : ok(new MembraneSolver(question));
  }

  /** Other constraints on the same sheet, which stays where it is until `solve`. */
  constrain(constraints: Constraints): Result<true> {
    const faults = constraintFaults(constraints, this.points.length / 2);
    if (faults.length > 0) return { ok: false, faults };
    this.setGoals(constraints);
    return ok(true);
  }

  /** Puts all nodes where they started. */
  reset(): void {
    this.points.set(this.question.start ?? this.question.mesh.points);
    this.system.state.wrinkles.fill(0);
    this.system.factor = undefined;
    this.fresh = this.question.start === undefined;
  }

  /** How often the whole sheet was evaluated so far: what its solves cost, line searches with them. */
  get evaluations(): number {
    return this.system.evaluations;
  }

  private setGoals(constraints: Constraints): void {
    const before = new Map(this.goals.map((goal) => [goal.node, goal]));
    this.goals = goalsOf(constraints, this.normals);
    const { frames, factor } = this.system;
    const was = frames.fixed.slice();
    for (const goal of this.goals) {
      const old = before.get(goal.node);
      if (old?.kind !== goal.kind) continue;
      goal.released = old.released;
      goal.slipped = old.slipped && goal.most < Number.POSITIVE_INFINITY;
    }
    for (const node of before.keys()) frames.free(node);
    this.system.prescribe(this.goals);
    const same = was.every((fixed, k) => fixed === frames.fixed[k]);
    const plain = [...before.values(), ...this.goals].every(
      ({ slipped, node }) => !slipped && frames.turned[node] === 0,
    );
    if (same && plain) this.system.factor = factor;
  }

  /** Carries the sheet from where it is to its constraints. */
  solve(onStep: OnStep = always): Equilibrium {
    const { system, goals, points } = this;
    let iterations = 0;
    let end: CarryEnd;
    let settled = false;
    for (let pass = 0; ; pass++) {
      end = new Carry(system, goals, points, {
        ...this.carryOptions(),
        mostIterations: MOST_ITERATIONS - iterations,
        onStep: (progress) => onStep({ ...progress, iterations: iterations + progress.iterations }),
      }).run();
      this.fresh = false;
      iterations += end.iterations;
      if (end.stopped || pass === MOST_PASSES) break;
      const pushes = PUSHES * this.unit;
      settled = end.residual > JUDGED * pushes || !changePins(system, goals, points, pushes);
      if (settled) break;
    }
    return this.result({ ...end, iterations, converged: end.converged && settled });
  }

  private carryOptions() {
    return {
      tolerance: TOLERANCE * this.unit,
      enough: this.question.enough,
      unit: this.unit,
      loose: (LOOSE * this.unit) / this.typicalEdge(),
      mostUse: this.question.mostUse ?? MOST_USE,
      fresh: this.fresh,
    };
  }

  private typicalEdge(): number {
    const { area } = this.system.parts.sheet.rest;
    return Math.sqrt((2 * area.reduce((sum, a) => sum + a, 0)) / area.length);
  }

  private result(end: CarryEnd): Equilibrium {
    const { system, goals, points } = this;
    const { sheet } = system.parts;
    const turned = turnedOver(sheet, points);
    return {
      ...end,
      converged: end.converged && turned === 0,
      turned,
      points: points.slice(),
      reactions: Float64Array.from(goals.flatMap((goal) => reactionOf(system, goal, points))),
      stretch: readStretch(sheet, points),
      stress: readStress(sheet, system.state, points),
      use: limitUse(sheet, system.state, points),
      branch: system.state.branch.slice(),
      released: goals.filter((goal) => goal.released).map((goal) => goal.index),
      energy: system.totals.energy,
      gaveWay: gaveWayOf(goals, points),
    };
  }
}

/** Equilibrium of a question, from its start. */
export const solveMembrane = (question: MembraneQuestion, onStep?: OnStep): Result<Equilibrium> => {
  const solver = MembraneSolver.of(question);
  return solver.ok ? ok(solver.value.solve(onStep)) : solver;
};
