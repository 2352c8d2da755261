import type { Outcome } from '@dryflat/record';
import { Button, Card, EmptyState } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { today } from '../result/today.ts';
import { Cautions } from './cautions.tsx';
import { Compare } from './compare.tsx';
import { Notes } from './notes.tsx';
import { OutcomeCard } from './outcome-card.tsx';

/** What the garment did, beside what was forecast. */
const Screen = () => {
  const { record } = useGarment();
  return (
    <>
      <Cautions />
      {record.outcomes.length === 0 ? (
        <EmptyState title="Nothing measured afterwards yet" action={<AddOutcome />}>
          Measure it again when it is dry, after a day of wear, and after a later wash: that is what
          the forecast is scored by, and what the next one learns from.
        </EmptyState>
      ) : (
        <>
          <Compare />
          <Card title="Measured it again?">
            <div className="df-row">
              <AddOutcome />
            </div>
          </Card>
          {record.outcomes
            .map((outcome, at) => <OutcomeCard key={outcome.id} outcome={outcome} at={at} />)
            .reverse()}
        </>
      )}
      <Notes />
    </>
  );
};
export default Screen;

/** Today, with one wash unless it had more before. */
const nextOutcome = (outcomes: readonly Outcome[]): Outcome => ({
  id: newId(),
  on: today(),
  washes: Math.max(1, ...outcomes.map(({ washes }) => washes)),
  remark: '',
  measured: [],
});

const AddOutcome = () => {
  const { change, readOnly } = useGarment();
  const add = (): void =>
    change((draft) => {
      draft.outcomes.push(nextOutcome(draft.outcomes));
    });
  return (
    <Button look="main" icon="add" onPress={add} isDisabled={readOnly}>
      Write down what it measures now
    </Button>
  );
};
