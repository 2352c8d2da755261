import { Card, ChoiceChips } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';

/** What is taken until the knitter says otherwise. Assumption. */
export const USUAL_WEIGHTS = { fit: 1, time: 0.5, yarn: 0.5 } as const;

const LEVELS = [
  { value: 'not', label: 'Not', weight: 0 },
  { value: 'some', label: 'Some', weight: 0.5 },
  { value: 'much', label: 'Much', weight: 1 },
] as const;

const NAMES = { fit: 'That it fits', time: 'That it is ready soon', yarn: 'That the yarn lasts' };

const levelOf = (weight: number): (typeof LEVELS)[number]['value'] =>
  LEVELS.reduce((a, b) => (Math.abs(b.weight - weight) < Math.abs(a.weight - weight) ? b : a))
    .value;

/** The knitter's own weights, which put the routes in order. */
export const WeightsCard = () => {
  const { record, change, readOnly } = useGarment();
  const weights = record.plan.weights ?? USUAL_WEIGHTS;
  return (
    <Card title="What counts for you">
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
                draft.plan.weights = {
                  ...USUAL_WEIGHTS,
                  ...draft.plan.weights,
                  [what]: LEVELS.find(({ value }) => value === level)?.weight ?? 0.5,
                };
              })
            }
          />
        ))}
      </div>
    </Card>
  );
};
