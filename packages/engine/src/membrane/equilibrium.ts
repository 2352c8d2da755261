import { ok, type Result } from '../units/index.ts';
import { Carry, type CarryEnd } from './carry.ts';
import { Frames } from './frames.ts';
import { type Goal, goalsOf, outwardNormals, setFrames } from './goals.ts';
import { limitUse } from './limits.ts';
import { partsOf, unitForce } from './parts.ts';
import { changePins, reactionOf } from './pins.ts';
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
    const { frames } = this.system;
    const was = frames.fixed.slice();
    for (const goal of this.goals) {
      const old = before.get(goal.node);
      goal.released = goal.kind === 'pin' && old?.kind === 'pin' && old.released;
    }
    for (const node of before.keys()) frames.free(node);
    setFrames(frames, this.goals);
    const turns = frames.turned.some((turned) => turned === 1);
    if (turns || was.some((fixed, k) => fixed !== frames.fixed[k])) this.system.factor = undefined;
  }

  /** Carries the sheet from where it is to its constraints. */
  solve(onStep: OnStep = always): Equilibrium {
    const { system, goals, points } = this;
    let iterations = 0;
    const gaveWay = [];
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
      gaveWay.push(...end.gaveWay);
      if (end.stopped || pass === MOST_PASSES) break;
      settled = !changePins(system, goals, points, PUSHES * this.unit);
      if (settled) break;
    }
    return this.result({ ...end, iterations, gaveWay, converged: end.converged && settled });
  }

  private carryOptions() {
    const prescribed = this.system.frames.fixed.reduce((sum, fixed) => sum + fixed, 0);
    return {
      tolerance: TOLERANCE * this.unit,
      unit: this.unit,
      // Three prescribed unknowns are the least that keep a piece from moving as a whole.
      shift: prescribed < 3 ? (LOOSE * this.unit) / this.typicalEdge() : 0,
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
    return {
      ...end,
      points: points.slice(),
      reactions: Float64Array.from(goals.flatMap((goal) => reactionOf(system, goal))),
      stretch: readStretch(sheet, points),
      stress: readStress(sheet, system.state, points),
      use: limitUse(sheet, system.state, points),
      branch: system.state.branch.slice(),
      released: goals.filter((goal) => goal.released).map((goal) => goal.index),
      energy: system.totals.energy,
    };
  }
}

/** Equilibrium of a question, from its start. */
export const solveMembrane = (question: MembraneQuestion, onStep?: OnStep): Result<Equilibrium> => {
  const solver = MembraneSolver.of(question);
  return solver.ok ? ok(solver.value.solve(onStep)) : solver;
};
