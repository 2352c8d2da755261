/** The package publishes its TypeScript source, which our stricter compiler refuses to read. */
interface Triangulation {
  readonly coords: ArrayLike<number>;
  readonly triangles: Uint32Array;
  readonly halfedges: Int32Array;
}

export default class Constrainautor {
  constructor(triangulation: Triangulation);
  /** Makes p–q an edge by flips; throws when it meets a third point or another constraint. */
  constrainOne(p: number, q: number): number;
}
