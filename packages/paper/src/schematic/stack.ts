/** Something with a height that would like its middle at `want`. */
export interface Stacked {
  readonly want: number;
  readonly height: number;
}

interface Block {
  members: number;
  height: number;
  /** Sum over members of where the block's top would have to be for each to sit where it wants. */
  tops: number;
}

const topOf = (block: Block): number => block.tops / block.members;

const joined = (above: Block, below: Block): Block => ({
  members: above.members + below.members,
  height: above.height + below.height,
  tops: above.tops + below.tops - below.members * above.height,
});

/**
 * Middles for items in a column, in the order given, so that none overlap and the squared shifts
 * from what they want are least (pooling of adjacent violators). Give items sorted by `want`.
 */
export const stack = (items: readonly Stacked[], gap: number): number[] => {
  const blocks: Block[] = [];
  for (const item of items) {
    const height = item.height + gap;
    let block: Block = { members: 1, height, tops: item.want - height / 2 };
    let above = blocks.at(-1);
    while (above !== undefined && topOf(above) + above.height > topOf(block)) {
      block = joined(blocks.pop()!, block);
      above = blocks.at(-1);
    }
    blocks.push(block);
  }
  const tops = blocks.flatMap((block) => {
    const from =
      items.length - blocks.slice(blocks.indexOf(block)).reduce((n, b) => n + b.members, 0);
    let top = topOf(block);
    return items.slice(from, from + block.members).map((item) => {
      const here = top;
      top += item.height + gap;
      return here;
    });
  });
  return tops.map((top, i) => top + (items[i]!.height + gap) / 2);
};

/** Middles for items in a column, in the order given: each where it wants, or below those before. */
export const stackDown = (items: readonly Stacked[], gap: number): number[] => {
  let free = Number.NEGATIVE_INFINITY;
  return items.map(({ want, height }) => {
    const at = Math.max(want, free + height / 2);
    free = at + height / 2 + gap;
    return at;
  });
};
