import type { Specimen } from '@dryflat/record';
import { Button, Card, EmptyState, useWords } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import '../result/result.css';
import { newSpecimen } from './change-specimen.ts';
import './evidence.css';
import { useKindNames } from './kind-names.ts';
import { Ladder } from './ladder.tsx';
import { SpecimenCard } from './specimen-card.tsx';

/** What was measured before the garment was done, and how each entry narrows the gauge. */
const Screen = () => {
  const { record } = useGarment();
  const word = useWords();
  return (
    <>
      {record.evidence.length === 0 ? (
        <EmptyState title="Nothing measured yet" action={<AddSpecimen />}>
          Whatever you have will do: a {word('swatch')}, half a back, a sweater from last winter.
          Each narrows the forecast, and one washed as the garment will be narrows it most.
        </EmptyState>
      ) : (
        <div className="df-evidence">
          <div className="df-stack">
            {record.evidence.map(({ id }, at) => (
              <SpecimenCard key={id} id={id} at={at} />
            ))}
            <Card title="Measured something else?">
              <div className="df-row">
                <AddSpecimen />
              </div>
            </Card>
          </div>
          <div className="df-evidence-ladder">
            <Ladder />
          </div>
        </div>
      )}
    </>
  );
};
export default Screen;

const AddSpecimen = () => {
  const { change, readOnly } = useGarment();
  const kinds = useKindNames();
  const add = (kind: Specimen['kind'], name: string): void =>
    change((draft) => {
      draft.evidence.push(newSpecimen(draft, newId(), kind, name));
    });
  return (
    <>
      {kinds.map(({ value, label }, i) => (
        <Button
          key={value}
          look={i === 0 ? 'main' : 'plain'}
          icon="add"
          onPress={() => add(value, label)}
          isDisabled={readOnly}
        >
          {label}
        </Button>
      ))}
    </>
  );
};
