interface Point {
  readonly x: number;
  readonly y: number;
}

/** How a piece's own places (y up) become the mat's (y down). Lengths are the same in both. */
export interface Frame {
  /** A quarter turned, or else upright. */
  readonly turned: boolean;
  readonly dx: number;
  readonly dy: number;
}

/** Both turns undo themselves. */
const turn = ({ turned }: Pick<Frame, 'turned'>, { x, y }: Point): Point =>
  turned ? { x: y, y: x } : { x, y: -y };

export const onMat = (frame: Frame, p: Point): Point => {
  const { x, y } = turn(frame, p);
  return { x: x + frame.dx, y: y + frame.dy };
};

export const inPiece = (frame: Frame, { x, y }: Point): Point =>
  turn(frame, { x: x - frame.dx, y: y - frame.dy });

/** The frame in which places of a piece lie where they were laid on the mat, place by place. */
export const frameOf = (own: readonly Point[], laid: readonly Point[]): Frame => {
  const frames = [false, true].map((turned): Frame => {
    const from = turn({ turned }, own[0]!);
    return { turned, dx: laid[0]!.x - from.x, dy: laid[0]!.y - from.y };
  });
  const offBy = (frame: Frame): number =>
    own.reduce((sum, each, k) => {
      const { x, y } = onMat(frame, each);
      return sum + Math.hypot(x - laid[k]!.x, y - laid[k]!.y);
    }, 0);
  const [upright, turned] = frames as [Frame, Frame];
  return offBy(turned) < offBy(upright) ? turned : upright;
};

/** Index of the place nearest to another; 0 of none. */
export const nearestIndex = (places: readonly Point[], { x, y }: Point): number => {
  let [best, off] = [0, Number.POSITIVE_INFINITY];
  places.forEach((place, k) => {
    const d = Math.hypot(place.x - x, place.y - y);
    if (d < off) [best, off] = [k, d];
  });
  return best;
};

/** Indices of the places within `reach` of a segment through its middle, in order along it. */
export const onSegment = (
  places: readonly Point[],
  middle: Point,
  { lengthMm, dx, dy }: { readonly lengthMm: number; readonly dx: number; readonly dy: number },
  reach: number,
): number[] => {
  const size = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [dx / size, dy / size];
  return places
    .map((place, k) => {
      const [px, py] = [place.x - middle.x, place.y - middle.y];
      return { k, along: px * ux + py * uy, off: Math.abs(py * ux - px * uy) };
    })
    .filter(({ along, off }) => off <= reach && Math.abs(along) <= lengthMm / 2 + 1e-6)
    .sort((a, b) => a.along - b.along)
    .map(({ k }) => k);
};
