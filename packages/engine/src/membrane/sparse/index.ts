export { type Backend, type BackendName, sparseBackend, sparseBackendLater } from './backend.ts';
export { type Determinant, determinant } from './determinant.ts';
export { type Block, elementMap, packedLength, scatterAdd } from './element-map.ts';
export { type Factor, type FactorOptions, factorise, type Pivots } from './factor.ts';
export { entryPosition, type SparsePattern } from './pattern.ts';
export { type Refined, solve, solveMany, solveRefined } from './solve.ts';
export { analyse, type Ordering, type Symbolic } from './symbolic.ts';
export { patternFromTriangles, type TrianglePattern } from './triangle-pattern.ts';
