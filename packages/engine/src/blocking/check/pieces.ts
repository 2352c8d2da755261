import { fabricMaterial, safeStretchOf } from '../../fabric/index.ts';
import { flattenPath, type OutlinePiece, outlineOf, type Point } from '../../garment/index.ts';
import type {
  DimensionToReach,
  EdgeKind,
  FabricOnMat,
  MatSpec,
  PieceToBlock,
  Stock,
} from '../types.ts';

/** Invented numbers of an invented pullover, flat mm. */
const BACK = {
  chest: 500,
  hem: 500,
  'neck-width': 180,
  'cross-back': 380,
  'body-length': 580,
  'underarm-length': 360,
  'armhole-depth': 200,
  'back-neck-depth': 25,
};

export const wool = (stitch: 'stockinette' | 'rib-1x1' | 'garter' = 'stockinette'): FabricOnMat => {
  const { constants, doubt } = fabricMaterial(
    {
      stitch,
      fibres: [{ fibre: 'wool', share: 1 }],
      treatment: 'untreated',
      washing: 'by-hand',
      specimens: [],
    },
    'wet',
  );
  return {
    constants,
    doubt,
    pitch: { stitch: 5, row: 3.6 },
    safe: safeStretchOf({ stitch, fibres: [{ fibre: 'wool', share: 1 }] }),
  };
};

export const AFTER: PieceToBlock['after'] = {
  kept: { mean: 0.6, sd: 0.2 },
  driedOverWet: { width: { mean: -0.02, sd: 0.025 }, length: { mean: -0.02, sd: 0.025 } },
  rewashedOverWet: { width: { mean: -0.025, sd: 0.03 }, length: { mean: -0.025, sd: 0.03 } },
};

const EDGE: Readonly<Record<string, EdgeKind>> = {
  'cast-on': 'cast-on',
  'bound-off': 'bound-off',
  selvedge: 'selvedge',
  seam: 'selvedge',
  neckline: 'bound-off',
  fold: 'fold',
};

const flattened = ({ path }: OutlinePiece) => ({
  outline: path.flatMap((s): Point[] => {
    const corners = flattenPath([s], 1);
    return corners.slice(0, -1);
  }),
  edges: path.flatMap((s): EdgeKind[] => {
    const n = flattenPath([s], 1).length - 1;
    return Array.from({ length: n }, () => EDGE[s.edge] ?? 'open');
  }),
});

/** A back of a set-in pullover that lies wet at the given share of what is wanted, in width and length. */
export const sweaterBack = (width = 0.95, length = 0.96): PieceToBlock => {
  const back = outlineOf('pullover-set-in', BACK as never).pieces.find(
    ({ name }) => name === 'back',
  )!;
  const { outline, edges } = flattened(back);
  const shrunk = ({ x, y }: Point): Point => ({ x: x * width, y: y * length });
  return {
    name: 'back',
    outline: outline.map(shrunk),
    edges,
    layers: 1,
    wanted: outline,
    dimensions: back.dimensions.map(
      (each): DimensionToReach => ({
        name: each.landmark,
        landmark: each.landmark,
        direction: each.direction,
        from: shrunk(each.from),
        to: shrunk(each.to),
        targetMm: each.mm,
      }),
    ),
    zones: [],
    fabric: wool(),
    restLogSd: { width: 0.02, length: 0.02 },
    after: AFTER,
  };
};

/** A rectangle at rest and as wanted, mm. */
export const rectangle = (
  [w, h]: readonly [number, number],
  [W, H]: readonly [number, number],
): PieceToBlock => {
  const box = (x: number, y: number): Point[] => [
    { x: 0, y: 0 },
    { x, y: 0 },
    { x, y },
    { x: 0, y },
  ];
  return {
    name: 'piece',
    outline: box(w, h),
    edges: ['bound-off', 'selvedge', 'cast-on', 'selvedge'],
    layers: 1,
    wanted: box(W, H),
    dimensions: [
      { name: 'width', landmark: 'width', direction: 'width', from: 3, to: 2, targetMm: W },
      { name: 'length', landmark: 'length', direction: 'length', from: 1, to: 2, targetMm: H },
    ],
    zones: [],
    fabric: wool(),
    restLogSd: { width: 0.02, length: 0.02 },
    after: AFTER,
  };
};

export const MAT: MatSpec = { widthMm: 900, heightMm: 900, tileMm: 300 };
export const PINS_ONLY: Stock = { straight: 100, tPins: 30, combs: [], wires: [] };
