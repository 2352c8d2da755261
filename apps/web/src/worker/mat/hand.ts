import {
  type MeanStretch,
  MOST_PULL,
  measured,
  openSheet,
  type PiecePlan,
  type PieceSheet,
  type PieceToBlock,
  type PinPlaced,
  pinsForWire,
  rulersOf,
  stretchReader,
} from '@dryflat/engine/blocking';
import type { Point } from '@dryflat/engine/garment';
import type { Constraints, Equilibrium } from '@dryflat/engine/membrane';
import { ok, type Result } from '@dryflat/engine/units';
import { type Frame, frameOf, inPiece, nearestIndex, onMat, onSegment } from './on-mat.ts';
import type { Cloth, Lying, Places } from './protocol.ts';

/** Nodes of the mesh that is dragged: as many as the plan has, so that they are the same nodes. */
export const HAND_NODES = 800;

/** What one thing on the mat does to nodes of the edge: their places seen from its own. */
interface Grip {
  readonly holds: readonly { readonly node: number; readonly dx: number; readonly dy: number }[];
  /** Nodes of a wire, in order: those between its ends slide along the line through them. */
  readonly wire: readonly number[];
  /** Pins that bear what pulls at it: of a wire those along it, else 1. */
  readonly heldBy: number;
  readonly ring: number;
}

/** A piece under the hand: put its pins anywhere, and it says how it lies. */
export interface Hand {
  readonly cloth: Cloth;
  /**
   * `places` on the mat, one for each of `plan.pins`. `goOn` is asked whenever it has come to rest on the way:
   * false tells how it lies so far, and asking for the same places again goes on from there.
   */
  readonly lie: (places: Places, goOn?: () => boolean) => Lying;
}

/**
 * Opens a planned piece with its pins where the plan has them. The first `lie` solves from rest, each
 * later one from where the piece lies. Faults as `openSheet` has them.
 */
export const openHand = (piece: PieceToBlock, plan: PiecePlan): Result<Hand> => {
  const opened = openSheet(piece, HAND_NODES);
  if (!opened.ok) return opened;
  const sheet = opened.value;
  if (sheet.ring.length !== plan.outlines.rest.length)
    throw new Error('the plan was made on another mesh');
  const frame = frameOf(
    sheet.ring.map(({ rest }) => rest),
    plan.outlines.rest,
  );
  const ringPlaces = plan.outlines.pinned;
  const grips = plan.pins.map((pin) => gripOf(pin, sheet, ringPlaces));
  const rulers = rulersOf(sheet);
  const read = stretchReader(sheet);
  let folded = false;
  return ok({
    cloth: {
      frame,
      triangles: sheet.mesh.triangles,
      ring: Uint32Array.from(sheet.ring, ({ node }) => node),
      ringRest: Float32Array.from(sheet.ring.flatMap(({ rest }) => [rest.x, -rest.y])),
      ringKinds: sheet.ring.map(({ kind }) => kind),
      pinRing: grips.map(({ ring }) => ring),
      wires: grips.map(({ wire }) =>
        wire.length > 0 ? ([wire[0]!, wire.at(-1)!] as const) : null,
      ),
      rulers: rulers.map(({ from, to }) => [sheet.ring[from]!.node, sheet.ring[to]!.node] as const),
    },
    lie: (places, goOn) => {
      const { constraints, owners } = constraintsOf(grips, places, frame);
      const set = sheet.solver.constrain(constraints);
      if (!set.ok) throw new Error(set.faults.map(({ problem }) => problem).join('; '));
      // What has turned over does not turn back by itself.
      if (folded) sheet.solver.reset();
      const eq = sheet.solver.solve(({ rests }) => !rests || goOn === undefined || goOn());
      folded = eq.turned > 0 && !eq.stopped;
      return {
        ...fieldOf(eq, read(eq), frame),
        ...pinsOf(eq, owners, grips, constraints.pins.length),
        reached: rulers.map((ruler) => measured(ruler, sheet.ring, eq.points)),
        converged: eq.converged,
        stopped: eq.stopped,
        iterations: eq.iterations,
      };
    },
  });
};

const gripOf = (pin: PinPlaced, { ring, spacing }: PieceSheet, places: readonly Point[]): Grip => {
  const at = { x: pin.xMm, y: pin.yMm };
  const nearest = nearestIndex(places, at);
  const hold = (k: number) => ({
    node: ring[k]!.node,
    dx: places[k]!.x - at.x,
    dy: places[k]!.y - at.y,
  });
  if (pin.along === null)
    return {
      holds: [{ node: ring[nearest]!.node, dx: 0, dy: 0 }],
      wire: [],
      heldBy: 1,
      ring: nearest,
    };
  const under = onSegment(places, at, pin.along, spacing / 2);
  const within = under.length > 0 ? under : [nearest];
  if (pin.kind === 'comb' || within.length < 3)
    return { holds: within.map(hold), wire: [], heldBy: 1, ring: nearest };
  const [first, last] = [within[0]!, within.at(-1)!];
  const span = Math.hypot(places[last]!.x - places[first]!.x, places[last]!.y - places[first]!.y);
  return {
    holds: [hold(first), hold(last)],
    wire: within.map((k) => ring[k]!.node),
    heldBy: pinsForWire(span),
    ring: nearest,
  };
};

/** Constraints of the sheet, whose y runs up, and which pin each belongs to: pins, then slides. */
const constraintsOf = (grips: readonly Grip[], places: Places, frame: Frame) => {
  const taken = new Set<number>();
  const pins: { node: number; x: number; y: number; most: number }[] = [];
  const slides: Constraints['slides'][number][] = [];
  const owners: { pins: number[]; slides: number[] } = { pins: [], slides: [] };
  const free = (node: number): boolean => !taken.has(node) && taken.add(node).size > 0;
  // Wires last: their ends belong to the pins that are there, and the line follows those.
  const order = [...grips.keys()].sort((a, b) => grips[a]!.wire.length - grips[b]!.wire.length);
  for (const k of order) {
    const [x, y] = places[k]!;
    const { holds, wire } = grips[k]!;
    // A comb shares what one hand gives; a wire's ends are at pins of their own.
    const most = wire.length > 0 ? MOST_PULL : MOST_PULL / holds.length;
    for (const { node, dx, dy } of holds)
      if (free(node)) {
        pins.push({ node, ...inPiece(frame, { x: x + dx, y: y + dy }), most });
        owners.pins.push(k);
      }
  }
  const target = new Map(pins.map((pin) => [pin.node, pin]));
  grips.forEach(({ wire, heldBy }, k) => {
    const [a, b] = [target.get(wire[0]!), target.get(wire.at(-1)!)];
    if (a === undefined || b === undefined) return;
    const most = (MOST_PULL * heldBy) / Math.max(1, wire.length - 2);
    for (const node of wire.slice(1, -1))
      if (free(node)) {
        slides.push({ node, ax: a.x, ay: a.y, bx: b.x, by: b.y, most });
        owners.slides.push(k);
      }
  });
  return {
    constraints: { held: [], pins, slides } satisfies Constraints,
    owners: [...owners.pins, ...owners.slides],
  };
};

const fieldOf = (eq: Equilibrium, { overWet, worst }: MeanStretch, frame: Frame) => {
  const points = new Float32Array(eq.points.length);
  for (let k = 0; k < points.length; k += 2) {
    const { x, y } = onMat(frame, { x: eq.points[k]!, y: eq.points[k + 1]! });
    points[k] = x;
    points[k + 1] = y;
  }
  const { node, along, edge } = worst;
  const [x, y] = [points[2 * node]!, points[2 * node + 1]!];
  return {
    points,
    overWet: Float32Array.from(overWet),
    worst: { overWet: overWet[node]!, x, y, along, edge },
  };
};

/** A pull of a tenth of a gram, N: a pin let go has none, one in slack fabric hardly any. */
const HARDLY = 1e-3;

const pinsOf = (
  eq: Equilibrium,
  owners: readonly number[],
  grips: readonly Grip[],
  pins: number,
) => {
  const pulls = new Float64Array(grips.length);
  owners.forEach((k, i) => {
    pulls[k]! += Math.hypot(eq.reactions[2 * i]!, eq.reactions[2 * i + 1]!) / grips[k]!.heldBy;
  });
  const loose = [...pulls.keys()].filter((k) => pulls[k]! < HARDLY);
  const short = eq.gaveWay.map(({ kind, index, short: mm }) => ({
    pin: owners[kind === 'slide' ? pins + index : index]!,
    mm,
  }));
  return { pulls: [...pulls], loose, short };
};
