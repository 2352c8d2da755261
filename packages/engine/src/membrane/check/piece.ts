import type { OutlineRing, Xy } from '../mesh/mesh.ts';
import { triangulate } from '../mesh/triangulate.ts';
import type { MembraneQuestion, Pin } from '../question.ts';
import { sheetOf } from './sheets.ts';

/** A body piece: 500 mm wide, 600 mm high, drawn in above, with a scooped upper edge. */
const OUTLINE: readonly Xy[] = [
  [0, 0],
  [500, 0],
  [500, 380],
  [480, 400],
  [462, 430],
  [452, 470],
  [450, 575],
  [330, 600],
  [300, 582],
  [250, 575],
  [200, 582],
  [170, 600],
  [50, 575],
  [48, 470],
  [38, 430],
  [20, 400],
  [0, 380],
];

const SPACING = 60;

/** Places along the outline about every SPACING mm, corners among them. */
const pinPlaces = (): Xy[] =>
  OUTLINE.flatMap(([x, y], k) => {
    const [u, v] = OUTLINE[(k + 1) % OUTLINE.length]!;
    const parts = Math.max(1, Math.round(Math.hypot(u - x, v - y) / SPACING));
    return Array.from(
      { length: parts },
      (_, i): Xy => [x + ((u - x) * i) / parts, y + ((v - y) * i) / parts],
    );
  });

/** Area of the piece about 265,000 mm²: so many nodes at a size. */
export const sizeFor = (nodes: number): number =>
  Math.sqrt((2 * 265_000) / Math.sqrt(3) / nodes) * 1.2;

/** The piece in its mesh with pins about every 60 mm, carried 8 % out each way. */
export const pinnedPiece = (size: number): MembraneQuestion => {
  const places = pinPlaces();
  const ring: OutlineRing = { points: OUTLINE, tags: OUTLINE.map((_, k) => k) };
  const meshed = triangulate({
    outer: ring,
    holes: [],
    lines: [],
    nodes: places,
    size,
    minAngle: 25,
    maxPoints: 50_000,
  });
  if (!meshed.ok) throw new Error(JSON.stringify(meshed.faults));
  const { mesh, nodeOf } = meshed.value;
  const pins = places.map(([x, y], k): Pin => ({ node: nodeOf[k]!, x: 1.08 * x, y: 1.08 * y }));
  return { ...sheetOf(mesh), pins };
};
