import type { MatWork, PinCounts } from '@dryflat/record';
import { Button, CountField, Dialog, FieldGroup } from '../../kit/index.ts';
import { passBy, takeBack } from './progress.ts';
import type { WorkAtHand } from './use-work.ts';

const NONE: PinCounts = { straight: 0, tPins: 0, combs: 0, wires: 0 };

const EXTRA = [
  ['straight', 'Straight pins beside the plan'],
  ['tPins', 'T-pins beside the plan'],
] as const;

/** What is seldom needed at a step. */
export const MoreSheet = ({
  work,
  act,
  onClose,
  runOut,
}: Pick<WorkAtHand, 'work' | 'act'> & { onClose: () => void; runOut: () => void }) => {
  const step = work.steps[work.at]!;
  const then = (recipe: (mine: MatWork, now: string) => void) => () => {
    act(recipe);
    onClose();
  };
  return (
    <Dialog title={`More at step ${work.at + 1}`} onClose={onClose}>
      <div className="df-pinning-list">
        <Button onPress={runOut}>I have run out</Button>
        {step.done !== 'passed' && <Button onPress={then(passBy)}>Skip this one</Button>}
        {step.done !== undefined && (
          <Button onPress={then(takeBack)}>
            {step.done === 'in' ? 'It is not in after all' : 'It is still to come'}
          </Button>
        )}
      </div>
      <FieldGroup legend="Pins that went in beside the plan">
        <p className="df-soft">They have to come out again too, so they are counted.</p>
        <div className="df-columns">
          {EXTRA.map(([kind, label]) => (
            <CountField
              key={kind}
              whole
              label={label}
              path={`onMat/${work.id}/extra/${kind}`}
              value={work.extra?.[kind] || null}
              onCommit={(count) =>
                act((mine) => {
                  mine.extra = { ...(mine.extra ?? NONE), [kind]: count ?? 0 };
                })
              }
            />
          ))}
        </div>
      </FieldGroup>
    </Dialog>
  );
};
