import { useId } from 'react';
import { Card, ChoiceChips } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { WASHING_CHOICES } from './yarn-words.ts';

/** What happens after the last stitch, and which state has to be right. */
export const PlanCard = () => {
  const { record, change, readOnly } = useGarment();
  const { plan } = record;
  return (
    <Card title="After the last stitch">
      <ChoiceChips
        label="It will be washed"
        value={plan.washing}
        onChange={(washing) =>
          change((draft) => {
            draft.plan.washing = washing;
          })
        }
        choices={WASHING_CHOICES}
        readOnly={readOnly}
      />
      <ChoiceChips
        label="And dried"
        value={plan.drying}
        onChange={(drying) =>
          change((draft) => {
            draft.plan.drying = drying;
          })
        }
        choices={[
          { value: 'lay', label: 'Laid flat', note: 'Without pins, as it wants to lie.' },
          { value: 'pin', label: 'Pinned out', note: 'To the measurements of the pattern.' },
        ]}
        readOnly={readOnly}
      />
      <ChoiceChips
        label="It has to fit"
        value={plan.judgeAt}
        onChange={(judgeAt) =>
          change((draft) => {
            draft.plan.judgeAt = judgeAt;
          })
        }
        choices={[
          { value: 'dried', label: 'When it is dry', note: 'Fresh off the mat.' },
          { value: 'worn', label: 'After wearing', note: 'When it has hung from the shoulders.' },
          { value: 'rewashed', label: 'After later washes', note: 'Dried without pins.' },
        ]}
        readOnly={readOnly}
      />
      <FinishBy />
    </Card>
  );
};

const FinishBy = () => {
  const { record, change, readOnly } = useGarment();
  const id = useId();
  return (
    <div className="df-field ya-day">
      <label className="df-label" htmlFor={id}>
        Ready by
      </label>
      <span className="df-box">
        <input
          id={id}
          type="date"
          value={record.plan.finishBy ?? ''}
          readOnly={readOnly}
          onChange={(event) => {
            const day = event.target.value;
            change((draft) => {
              if (day === '') delete draft.plan.finishBy;
              else draft.plan.finishBy = day;
            });
          }}
        />
      </span>
    </div>
  );
};
