import { type PinStock, pinsToCome, pinWords } from '@dryflat/record';
import { Button, CountField, Dialog, useLengths } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { leftInBox } from './mat-question.ts';
import { useTyped } from './use-typed.tsx';
import type { WorkAtHand } from './use-work.ts';

const RUNS = { combs: 'Combs', wires: 'Wires' } as const;

/** What is left in the box, kind by kind; the rest is planned with that. */
export const RunOutSheet = ({
  work,
  act,
  onClose,
  again,
}: Pick<WorkAtHand, 'work' | 'act'> & { onClose: () => void; again: () => void }) => {
  const { record } = useGarment();
  const { length } = useLengths();
  const left = leftInBox(work, record);
  const put = (part: Partial<PinStock>): void =>
    act((mine) => {
      mine.left = structuredClone({ ...leftInBox(mine, record), ...part });
    });
  const paths = `onMat/${work.id}/left/`;
  const path = (field: string): string => paths + field;
  const typed = useTyped(paths);
  return (
    <Dialog
      title="What is left in the box"
      onClose={onClose}
      foot={
        <>
          <Button onPress={onClose}>Only keep it</Button>
          <Button
            look="main"
            onPress={typed.unlessHalf(() => {
              put({});
              again();
            })}
          >
            Plan with what is left
          </Button>
        </>
      }
    >
      <p className="df-pinning-sheet">The steps to come ask for {pinWords(pinsToCome(work))}.</p>
      <div className="df-columns">
        <CountField
          whole
          orNone
          label="Straight pins left"
          path={path('straight')}
          value={left.straight}
          onCommit={(count) => put({ straight: count ?? 0 })}
        />
        <CountField
          whole
          orNone
          label="T-pins left"
          path={path('t-pins')}
          value={left.tPins}
          onCommit={(count) => put({ tPins: count ?? 0 })}
        />
        {(['combs', 'wires'] as const).flatMap((kind) =>
          left[kind].map(({ lengthMm, count }, k) => (
            <CountField
              // biome-ignore lint/suspicious/noArrayIndexKey: a run is its place in the box
              key={`${kind}-${k}`}
              whole
              orNone
              label={`${RUNS[kind]} of ${length(lengthMm)} left`}
              path={path(`${kind}-${k}`)}
              value={count}
              onCommit={(now) =>
                put({
                  [kind]: left[kind].map((each, i) =>
                    i === k ? { ...each, count: now ?? 0 } : each,
                  ),
                })
              }
            />
          )),
        )}
      </div>
      {typed.told}
    </Dialog>
  );
};
