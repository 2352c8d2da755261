export type { Cord } from './cords.ts';
export { MembraneSolver, solveMembrane } from './equilibrium.ts';
export { linearLaw, type Stiffening, stiffeningLaw, type TensionLaw } from './law.ts';
export { type Material, materialFaults } from './material.ts';
export * from './mesh/index.ts';
export * from './nested.ts';
export {
  type Constraints,
  type Equilibrium,
  type GaveWay,
  type Held,
  type MembraneQuestion,
  MOST_USE,
  type OnStep,
  type Pin,
  type Progress,
  type Slide,
} from './question.ts';
export { RELAXED, RESIDUAL_SHARE } from './relaxation.ts';
