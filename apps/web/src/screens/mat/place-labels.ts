export interface Label {
  /** Where the thing is, px. */
  readonly x: number;
  readonly y: number;
  /** Which way is out of the piece, a unit vector. */
  readonly outX: number;
  readonly outY: number;
  readonly width: number;
  readonly height: number;
}

export interface PlacedLabel {
  /** Its middle, px. */
  readonly x: number;
  readonly y: number;
  /** False where it would lie on one that came before. */
  readonly shown: boolean;
}

/** How far labels stand off, and how far further they may go to be seen, px. */
const OFF = 8;
const FURTHER = [0, 10, 20] as const;

const overlap = (a: Label & PlacedLabel, b: Label & PlacedLabel): boolean =>
  Math.abs(a.x - b.x) < (a.width + b.width) / 2 && Math.abs(a.y - b.y) < (a.height + b.height) / 2;

/** Puts each label outside the piece, first come first served; what finds no room is not shown. */
export const placeLabels = (labels: readonly Label[]): PlacedLabel[] => {
  const taken: (Label & PlacedLabel)[] = [];
  return labels.map((label) => {
    const at = (further: number) => {
      const reach =
        OFF +
        further +
        (Math.abs(label.outX) * label.width + Math.abs(label.outY) * label.height) / 2;
      return {
        ...label,
        x: label.x + reach * label.outX,
        y: label.y + reach * label.outY,
        shown: true,
      };
    };
    const free = FURTHER.map(at).find((each) => !taken.some((other) => overlap(each, other)));
    if (free) taken.push(free);
    const { x, y } = free ?? at(0);
    return { x, y, shown: free !== undefined };
  });
};
