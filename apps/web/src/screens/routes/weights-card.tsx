import type { Weights } from '@dryflat/record';
import { USUAL_WEIGHTS } from '@dryflat/record/routes';
import { Card, ChoiceChips, SectionFaults } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { assumedOf } from '../result/assumed.ts';
import { LEVELS, levelOf, withLevel } from './weight-levels.ts';

const NAMES: Readonly<Record<keyof Weights, string>> = {
  fit: 'That it fits',
  time: 'That it is soon done',
  yarn: 'That the yarn lasts',
};

/** The knitter's own weights, which put the routes in order. */
export const WeightsCard = () => {
  const { record, change, readOnly } = useGarment();
  const weights = record.plan.weights ?? USUAL_WEIGHTS;
  return (
    <Card title="What counts for you">
      {assumedOf(record, 'plan').map((each) => (
        <p key={each} className="df-soft">
          {each}
        </p>
      ))}
      <div className="df-columns">
        {(['fit', 'time', 'yarn'] as const).map((what) => (
          <ChoiceChips
            key={what}
            label={NAMES[what]}
            value={levelOf(weights[what])}
            readOnly={readOnly}
            choices={LEVELS}
            onChange={(level) =>
              change((draft) => {
                draft.plan.weights = withLevel(draft.plan.weights ?? USUAL_WEIGHTS, what, level);
              })
            }
          />
        ))}
      </div>
      <SectionFaults prefix="plan.weights" />
    </Card>
  );
};
