import { carryingLaw, type PlaneConstants, sheetOf } from '../fabric/index.ts';
import type { Point } from '../garment/index.ts';
import {
  type Constraints,
  type Cord,
  type MembraneQuestion,
  MembraneSolver,
  type Mesh,
  type TensionLaw,
} from '../membrane/index.ts';
import { ok, type Result } from '../units/index.ts';
import { lawOfEdge } from './edge-laws.ts';
import { Effort } from './effort.ts';
import { AT_REST, type Lying } from './lie.ts';
import { type EdgeNode, meshOf } from './piece-mesh.ts';
import { between, inside } from './plane.ts';
import { type OutlinePoint, type Pinning, refinedOutline } from './refined-outline.ts';
import { axisOf, twinsOf } from './symmetry.ts';
import type { EdgeKind, FabricOnMat, PieceToBlock } from './types.ts';

/** A node of the edge of a piece as the plan sees it; y up. */
export interface RingNode {
  readonly node: number;
  readonly kind: EdgeKind;
  readonly pinning: Pinning;
  readonly role: OutlinePoint['role'];
  readonly rest: Point;
  /** Where it is to go. */
  readonly wanted: Point;
  /** Distance around the rest outline, mm. */
  readonly around: number;
  /** Strain at which the line that holds the edge from here to the next ends; Infinity where none does. */
  readonly limit: number;
}

/** A piece on the mat: its mesh, its fabric, and a solver that remembers where it lies. */
export interface PieceSheet {
  readonly piece: PieceToBlock;
  readonly mesh: Mesh;
  readonly ring: readonly RingNode[];
  /** The outline that was meshed; tags of the mesh are its edges. */
  readonly refined: readonly OutlinePoint[];
  /** Length around the rest outline, mm. */
  readonly around: number;
  readonly spacing: number;
  readonly solver: MembraneSolver;
  readonly effort: Effort;
  /** Of a symmetric piece the ring index of each one's mirror image; null for any other piece. */
  readonly twins: readonly number[] | null;
  /** Kind of edge under each cord. */
  readonly cordKinds: readonly EdgeKind[];
  /** Strain at which the fabric ends across and lengthwise, two a triangle. */
  readonly limits: Float64Array;
}

/** Factors of one fabric out of those that the doubt allows. */
export interface Draw {
  readonly restWidth: number;
  readonly restLength: number;
  readonly give: number;
}

const layered = (constants: PlaneConstants, layers: 1 | 2): PlaneConstants => ({
  ...constants,
  width: { ...constants.width, ...carryingLaw(constants.width, layers) },
  length: { ...constants.length, ...carryingLaw(constants.length, layers) },
});

const materials = (piece: PieceToBlock, give: number) => {
  const fabrics = [piece.fabric, ...piece.zones.map(({ fabric }) => fabric ?? piece.fabric)];
  const gives = (law: PlaneConstants['width']) => ({
    ...law,
    slope: law.slope / give,
    limit: law.limit * give,
  });
  return fabrics.map(({ constants }) =>
    sheetOf(
      layered(
        { ...constants, width: gives(constants.width), length: gives(constants.length) },
        piece.layers,
      ),
    ),
  );
};

const materialOf = (piece: PieceToBlock, { points, triangles }: Mesh): Uint16Array =>
  Uint16Array.from({ length: triangles.length / 3 }, (_, t) => {
    let [x, y] = [0, 0];
    for (let k = 0; k < 3; k++) {
      x += points[2 * triangles[3 * t + k]!]! / 3;
      y -= points[2 * triangles[3 * t + k]! + 1]! / 3;
    }
    return 1 + piece.zones.findIndex(({ polygon }) => inside(polygon, { x, y }));
  });

const limitsOf = (piece: PieceToBlock, mesh: Mesh): Float64Array => {
  const fabrics = materials(piece, 1);
  return Float64Array.from(
    [...materialOf(piece, mesh)].flatMap((of) => [
      fabrics[of]!.along1.limit,
      fabrics[of]!.along2.limit,
    ]),
  );
};

const ringNodes = (
  ring: readonly EdgeNode[],
  outline: readonly OutlinePoint[],
  laws: readonly (TensionLaw | null)[],
): { ring: RingNode[]; around: number } => {
  let around = 0;
  const nodes = ring.map(({ node, edge, share, rest }, k): RingNode => {
    const [a, b] = [outline[edge]!, outline[(edge + 1) % outline.length]!];
    const before = ring[(k + ring.length - 1) % ring.length]!;
    if (k > 0) around += Math.hypot(rest.x - before.rest.x, rest.y - before.rest.y);
    return {
      node,
      kind: a.kind,
      pinning: share === 0 ? freer(a.pinning, outline.at(edge - 1)!.pinning) : a.pinning,
      role: share === 0 ? a.role : 'plain',
      rest,
      wanted: between(a.wanted, b.wanted, share),
      around,
      limit: laws[edge]?.limit ?? Number.POSITIVE_INFINITY,
    };
  });
  const [first, last] = [ring[0]!.rest, ring.at(-1)!.rest];
  return { ring: nodes, around: around + Math.hypot(first.x - last.x, first.y - last.y) };
};

const freer = (a: Pinning, b: Pinning): Pinning =>
  a === 'free' || b === 'free' ? 'free' : a === 'length' || b === 'length' ? 'length' : 'none';

/** Tension of each edge of the outline; null where none limits the fabric. */
const lawsOf = (
  piece: PieceToBlock,
  outline: readonly OutlinePoint[],
): readonly (TensionLaw | null)[] =>
  outline.map(({ kind, rest, pinning }, i) => {
    const to = outline[(i + 1) % outline.length]!.rest;
    const zone: FabricOnMat | undefined =
      pinning === 'free' ? undefined : piece.zones.find(({ fabric }) => fabric)?.fabric;
    return lawOfEdge(kind, rest, to, zone ?? piece.fabric, piece.layers);
  });

const cordsOf = (piece: PieceToBlock, outline: readonly OutlinePoint[], mesh: Mesh) => {
  const cords: Cord[] = [];
  const kinds: EdgeKind[] = [];
  const laws = lawsOf(piece, outline);
  mesh.edgeTags.forEach((tag, edge) => {
    const law = laws[tag];
    if (law === null || law === undefined) return;
    cords.push({ edge, law });
    kinds.push(outline[tag]!.kind);
  });
  return { cords, kinds };
};

export const NO_CONSTRAINTS: Constraints = { held: [], pins: [], slides: [] };

/** How a sheet lies. */
interface OnTheMat {
  /** What the mat bears per area before the piece slides, N/mm². */
  readonly friction?: number;
  /** What counts as at rest. */
  readonly enough?: MembraneQuestion['enough'];
}

/**
 * Meshes a piece and makes its solver, lying at rest. `nodes`: about how many the mesh has. `effort`: that of
 * the plan it belongs to. `through`: places on the outline (edge and share) that are nodes, or have one right
 * beside them.
 */
export const openSheet = (
  piece: PieceToBlock,
  nodes: number,
  effort = new Effort(),
  lies: OnTheMat = {},
  through: readonly number[] = [],
): Result<PieceSheet> => {
  const outline = refinedOutline(piece, through);
  const axis = through.length > 0 ? null : axisOf(piece);
  const made = meshOf(
    outline.map((p) => p.rest),
    nodes,
    axis,
  );
  if (!made.ok) return made;
  const { mesh, spacing } = made.value;
  const { cords, kinds } = cordsOf(piece, outline, mesh);
  const solver = solverOf(piece, mesh, cords, 1, lies);
  if (!solver.ok) return solver;
  const { ring, around } = ringNodes(made.value.ring, outline, lawsOf(piece, outline));
  return ok({
    piece,
    mesh,
    ring,
    refined: outline,
    around,
    spacing,
    solver: solver.value,
    effort,
    twins:
      axis === null
        ? null
        : twinsOf(
            ring.map(({ rest }) => rest),
            axis,
          ),
    cordKinds: kinds,
    limits: limitsOf(piece, mesh),
  });
};

const solverOf = (
  piece: PieceToBlock,
  mesh: Mesh,
  cords: readonly Cord[],
  give: number,
  { friction = 0, enough = AT_REST }: OnTheMat = {},
) =>
  MembraneSolver.of({
    ...NO_CONSTRAINTS,
    enough,
    friction,
    mesh,
    directions: new Float64Array(mesh.triangles.length / 3),
    materialOf: materialOf(piece, mesh),
    materials: materials(piece, give),
    cords,
  });

/** The same mesh as another fabric of the knitter's doubt: wider or longer at rest, giving more or less. */
export const drawnSheet = (sheet: PieceSheet, draw: Draw): Result<Lying> => {
  const points = sheet.mesh.points.map(
    (v, k) => v * (k % 2 === 0 ? draw.restWidth : draw.restLength),
  );
  const { cords } = cordsOf(sheet.piece, sheet.refined, sheet.mesh);
  const mesh = { ...sheet.mesh, points };
  const solver = solverOf(sheet.piece, mesh, cords, draw.give);
  return solver.ok ? ok({ mesh, solver: solver.value, effort: sheet.effort }) : solver;
};

/** The same mesh moved by `place` (y up), as `piece`: its fabrics and edges. */
export const otherSheet = (
  sheet: PieceSheet,
  piece: PieceToBlock,
  place: (p: Point) => Point,
  friction: number,
): Result<Lying> => {
  const points = sheet.mesh.points.slice();
  for (let k = 0; k < points.length; k += 2) {
    const { x, y } = place({ x: points[k]!, y: points[k + 1]! });
    points.set([x, y], k);
  }
  const mesh = { ...sheet.mesh, points };
  const outline = sheet.refined.map((p) => ({ ...p, rest: place(p.rest) }));
  const { cords } = cordsOf(piece, outline, mesh);
  const solver = solverOf(piece, mesh, cords, 1, { friction });
  return solver.ok ? ok({ mesh, solver: solver.value, effort: sheet.effort }) : solver;
};

export const placeIn = (points: Float64Array, node: number): Point => ({
  x: points[2 * node]!,
  y: points[2 * node + 1]!,
});
