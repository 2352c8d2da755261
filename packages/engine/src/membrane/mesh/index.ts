export * from './boundary-loops.ts';
export * from './edge-nodes.ts';
export * from './graded-size.ts';
export * from './mesh.ts';
export * from './mesh-quality.ts';
export * from './point-location.ts';
export * from './structured-rectangle.ts';
export { triangulate } from './triangulate.ts';
