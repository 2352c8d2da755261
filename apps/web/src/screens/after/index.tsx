import { Button, Card, EmptyState } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { PhotoSection } from '../photos/index.tsx';
import { Cautions } from './cautions.tsx';
import { Compare } from './compare.tsx';
import { nextOutcome, stateAsked } from './next-outcome.ts';
import { Notes } from './notes.tsx';
import { OnTheMat } from './on-the-mat.tsx';
import { OutcomeCard } from './outcome-card.tsx';

/** What the garment did, beside what was forecast. */
const Screen = () => {
  const { record } = useGarment();
  const ready = stateAsked(location.hash);
  const cards = record.outcomes
    .map((outcome, at) => (
      <OutcomeCard
        key={outcome.id}
        outcome={outcome}
        at={at}
        ready={at === record.outcomes.length - 1 ? ready : null}
      />
    ))
    .reverse();
  return (
    <>
      <Cautions />
      {ready && cards[0]}
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
          {ready ? cards.slice(1) : cards}
        </>
      )}
      <OnTheMat />
      <PhotoSection when="dried" />
      <Notes />
    </>
  );
};
export default Screen;

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
