import { Button, Card } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { go } from '../../shell/route.ts';
import { useGarment } from '../../store/index.ts';
import { type AfterState, afterHash, outcomeFor } from '../after/next-outcome.ts';

const STEPS: readonly { state: AfterState; label: string; when: string }[] = [
  { state: 'dried', label: 'Measure it now', when: 'At rest: pins out, lying free for an hour.' },
  { state: 'worn', label: 'Measure it after wear', when: 'When it has hung on a body for a day.' },
  {
    state: 'rewashed',
    label: 'Measure it after the next wash',
    when: 'Dried without pins: what pinning gave is gone then.',
  },
];

/** What came of it is what the forecast is scored by: three times to take the tape. */
export const ThenCard = () => {
  const { record, change, readOnly } = useGarment();
  const measure = (state: AfterState): void => {
    change((draft) => {
      draft.outcomes = outcomeFor(draft.outcomes, state);
    });
    go(afterHash(record.id, state));
  };
  return (
    <Card title="Then, the tape">
      <ol className="df-then">
        {STEPS.map(({ state, label, when }) => (
          <li key={state}>
            <Button onPress={() => measure(state)} isDisabled={readOnly}>
              {label}
            </Button>
            <span className="df-soft">{when}</span>
          </li>
        ))}
      </ol>
      {record.pieces.length > 0 && (
        <p>
          Pieces that are not sewn yet are measured dry{' '}
          <a href={garmentHash(record.id, 'pieces')}>under Pieces</a>.
        </p>
      )}
      <p>
        <a href={garmentHash(record.id, 'after')}>Forecast and outcome side by side</a>
      </p>
    </Card>
  );
};
