import type { Point } from '../garment/index.ts';
import { EVER_PULLED } from './hand-pull.ts';
import type { InMat } from './mat-types.ts';
import type { OnMat } from './on-mat.ts';
import { placeOn, runsAsRing } from './outline-span.ts';
import type { PieceSheet } from './piece-sheet.ts';
import { between, distance } from './plane.ts';
import type { Run } from './run.ts';
import { pinsForWire } from './supplies.ts';
import type { OutlineSpan } from './types.ts';

/** One thing in the mat as the ring of a sheet has it. */
export interface HeldThing {
  readonly thing: InMat;
  /** Ring indices that it holds, in order; one for a pin. */
  readonly nodes: readonly number[];
  /** Where each of them stands, y up. */
  readonly places: readonly Point[];
  /** Null for a pin. */
  readonly run: Run | null;
}

export const nearestNode = ({ ring }: PieceSheet, at: Point): number =>
  ring.reduce(
    (best, { rest }, k) => (distance(rest, at) < distance(ring[best]!.rest, at) ? k : best),
    0,
  );

const up = ({ x, y }: Point): Point => ({ x, y: -y });

/** Ring indices of the part of the outline, in the order of the ring. */
export const nodesOn = (sheet: PieceSheet, { from, to }: OutlineSpan): number[] => {
  const { outline } = sheet.piece;
  const ends = runsAsRing(outline) ? [from, to] : [to, from];
  const [first, last] = ends.map((on) => nearestNode(sheet, up(placeOn(outline, on))));
  const count = sheet.ring.length;
  const more = (last! - first! + count) % count;
  return Array.from({ length: more + 1 }, (_, i) => (first! + i) % count);
};

/** A pin through a place that no node is at stands in for the nearest one, moved along with it. */
const pinPlace = (sheet: PieceSheet, lay: Pick<OnMat, 'back'>, { on, to }: InMat, node: number) => {
  const [rest, at] = [sheet.ring[node]!.rest, up(placeOn(sheet.piece.outline, on.from))];
  const back = lay.back(to);
  return { x: back.x + rest.x - at.x, y: back.y + rest.y - at.y };
};

/** Nodes of a comb or a wire on the line along it, as far from its middle as the plan would have them. */
const runPlaces = (
  wanted: readonly Point[],
  lay: Pick<OnMat, 'back'>,
  { to, along }: InMat,
  nodes: readonly number[],
): Point[] => {
  const [a, b] = [wanted[nodes[0]!]!, wanted[nodes.at(-1)!]!];
  const [from, toward] = [lay.back(to), lay.back({ x: to.x + along!.dx, y: to.y + along!.dy })];
  const size = distance(from, toward) || 1;
  let [ux, uy] = [(toward.x - from.x) / size, (toward.y - from.y) / size];
  if (ux * (b.x - a.x) + uy * (b.y - a.y) < 0) [ux, uy] = [-ux, -uy];
  const length = distance(a, b);
  const middle = between(a, b, 0.5);
  return nodes.map((k) => {
    const { x, y } = wanted[k]!;
    const off =
      length > 0 ? ((x - middle.x) * (b.x - a.x) + (y - middle.y) * (b.y - a.y)) / length : 0;
    return { x: from.x + off * ux, y: from.y + off * uy };
  });
};

/** What is in the mat, on this sheet; `wanted` are the planned places of its ring, y up. */
export const heldOnMat = (
  sheet: PieceSheet,
  wanted: readonly Point[],
  inMat: readonly InMat[],
  lay: Pick<OnMat, 'back'>,
): HeldThing[] =>
  inMat.map((thing): HeldThing => {
    const nodes = nodesOn(sheet, thing.on);
    if (thing.along === null || nodes.length < 2) {
      const [node] = nodes as [number];
      return { thing, nodes: [node], places: [pinPlace(sheet, lay, thing, node)], run: null };
    }
    const places = runPlaces(wanted, lay, thing, nodes);
    const isWire = thing.kind === 'wire';
    const pins = isWire ? pinsForWire(distance(places[0]!, places.at(-1)!)) : 1;
    return {
      thing,
      nodes,
      places,
      run: {
        kind: isWire ? 'wire' : 'comb',
        nodes,
        lengthMm: thing.along.lengthMm,
        pins,
        most: EVER_PULLED * pins,
      },
    };
  });

/** What a thing tells of how the piece lies: planned places of its middle, y up. */
export const middlesOf = (
  sheet: PieceSheet,
  wanted: readonly Point[],
  inMat: readonly InMat[],
): Point[] =>
  inMat.map(({ on }) => {
    const nodes = nodesOn(sheet, on);
    return between(wanted[nodes[0]!]!, wanted[nodes.at(-1)!]!, 0.5);
  });

/** Places of everything by ring index; pins before combs and wires, which leave their ends to them. */
export const placesHeld = (held: readonly HeldThing[]): Map<number, Point> => {
  const places = new Map<number, Point>();
  const pinsFirst = [...held].sort((a, b) => Number(a.run !== null) - Number(b.run !== null));
  for (const { nodes, places: at } of pinsFirst)
    nodes.forEach((k, i) => {
      if (!places.has(k)) places.set(k, at[i]!);
    });
  return places;
};
