import { Button, EmptyState } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { GarmentCard } from './garment-card.tsx';
import { LastsCard } from './lasts-card.tsx';
import { PlanCard } from './plan-card.tsx';
import { YarnCard } from './yarn-card.tsx';
import './yarn.css';

/** The yarns, what the garment weighs and is knit on, and what happens to it after. */
const YarnScreen = () => {
  const { record, change, readOnly } = useGarment();
  const { yarns } = record;
  const add = (): void =>
    change((draft) => {
      draft.yarns.push({
        id: newId(),
        name: '',
        fibres: [{ fibre: 'wool', percent: 100 }],
        treatment: 'unknown',
        lots: [],
      });
    });
  const button = !readOnly && (
    <Button icon="add" look={yarns.length === 0 ? 'main' : 'plain'} onPress={add}>
      {yarns.length === 0 ? 'Add the yarn' : 'Add another yarn'}
    </Button>
  );
  return (
    <>
      {yarns.length === 0 ? (
        <EmptyState title="Which yarn?" action={button}>
          What it is made of decides how it grows in the wash and how it hangs.
        </EmptyState>
      ) : (
        <>
          {yarns.map((yarn, at) => (
            <YarnCard
              key={yarn.id}
              yarn={yarn}
              title={yarns.length === 1 ? 'The yarn' : `Yarn ${at + 1}`}
            />
          ))}
          {button && <div className="df-row">{button}</div>}
          <LastsCard />
        </>
      )}
      <GarmentCard />
      <PlanCard />
    </>
  );
};
export default YarnScreen;
