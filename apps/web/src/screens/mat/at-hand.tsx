import type { MatSpec, Stock } from '@dryflat/engine/blocking';
import { Button, CountField, Disclosure, LengthField, useLengths } from '../../kit/index.ts';
import { countOf } from './mat-words.ts';

export interface AtHand {
  readonly stock: Stock;
  readonly mat: MatSpec;
}

type Runs = 'combs' | 'wires';

/** Pins, combs and wires at hand, and the mat. */
export const AtHandForm = ({
  stock,
  mat,
  assumed,
  change,
}: AtHand & { assumed: boolean; change: (next: Partial<AtHand>) => void }) => {
  const inStock = (part: Partial<Stock>) => change({ stock: { ...stock, ...part } });
  const onMat = (part: Partial<MatSpec>) => change({ mat: { ...mat, ...part } });
  return (
    <Disclosure title={<Summary stock={stock} mat={mat} />}>
      {assumed && (
        <p className="df-soft">What is not entered yet is taken as many have it: an assumption.</p>
      )}
      <div className="df-columns">
        <CountField
          whole
          label="Straight pins"
          path="mat/straight"
          value={stock.straight}
          onCommit={(n) => inStock({ straight: n ?? 0 })}
        />
        <CountField
          whole
          label="T-pins"
          path="mat/t-pins"
          value={stock.tPins}
          onCommit={(n) => inStock({ tPins: n ?? 0 })}
        />
      </div>
      <RunFields kind="combs" stock={stock} change={inStock} />
      <RunFields kind="wires" stock={stock} change={inStock} />
      <div className="df-columns">
        <LengthField
          label="Width of the mat"
          path="mat/width"
          valueMm={mat.widthMm}
          onCommit={(mm) => mm && onMat({ widthMm: mm })}
        />
        <LengthField
          label="Height of the mat"
          path="mat/height"
          valueMm={mat.heightMm}
          onCommit={(mm) => mm && onMat({ heightMm: mm })}
        />
        <LengthField
          label="Side of a tile"
          path="mat/tile"
          hint="Empty for a mat without tiles"
          valueMm={mat.tileMm || null}
          onCommit={(mm) => onMat({ tileMm: mm ?? 0 })}
        />
      </div>
    </Disclosure>
  );
};

const Summary = ({ stock, mat }: AtHand) => {
  const { length } = useLengths();
  const sum = (list: Stock['combs']) => list.reduce((all, { count }) => all + count, 0);
  const counts = [
    ['straight', stock.straight],
    ['t-pin', stock.tPins],
    ['comb', sum(stock.combs)],
    ['wire', sum(stock.wires)],
  ] as const;
  const have = counts.filter(([, count]) => count > 0).map(([kind, count]) => countOf(kind, count));
  return (
    <>
      At hand: {have.length > 0 ? have.join(', ') : 'no pins yet'}; mat {length(mat.widthMm)} by{' '}
      {length(mat.heightMm)}
    </>
  );
};

const WORDS = {
  combs: { one: 'comb', another: 'Add combs', first: { lengthMm: 100, count: 8 } },
  wires: { one: 'wire', another: 'Add wires', first: { lengthMm: 900, count: 2 } },
} as const;

const RunFields = ({
  kind,
  stock,
  change,
}: {
  kind: Runs;
  stock: Stock;
  change: (part: Partial<Stock>) => void;
}) => {
  const words = WORDS[kind];
  const put = (at: number, part: Partial<Stock[Runs][number]>) =>
    change({ [kind]: stock[kind].map((each, k) => (k === at ? { ...each, ...part } : each)) });
  return (
    <>
      {stock[kind].map(({ lengthMm, count }, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the list
        <div className="df-columns" key={k}>
          <LengthField
            label={`Length of a ${words.one}`}
            path={`mat/${kind}/${k}/length`}
            valueMm={lengthMm}
            onCommit={(mm) => mm && put(k, { lengthMm: mm })}
          />
          <CountField
            whole
            label={`How many ${words.one}s of it`}
            path={`mat/${kind}/${k}/count`}
            value={count}
            onCommit={(n) => put(k, { count: n ?? 0 })}
          />
          <Button
            look="quiet"
            icon="bin"
            onPress={() => change({ [kind]: stock[kind].filter((_, at) => at !== k) })}
          >
            Take these {words.one}s out
          </Button>
        </div>
      ))}
      <div>
        <Button
          look="quiet"
          icon="add"
          onPress={() => change({ [kind]: [...stock[kind], words.first] })}
        >
          {words.another}
        </Button>
      </div>
    </>
  );
};
