import type { Outcome } from '@dryflat/record';
import { Button, Card, ParsedField, SectionFaults, TextField, toast } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { DayField } from '../result/day-field.tsx';
import { TapeList } from '../result/tape-list.tsx';
import { printDay } from '../result/today.ts';
import './after.css';
import { AFTER_STATES, type AfterState } from './next-outcome.ts';
import { parseWashes } from './parse-washes.ts';

/** What it measured on one day; the fields of the state `ready` stand open. */
export const OutcomeCard = ({
  outcome,
  at,
  ready,
}: {
  outcome: Outcome;
  at: number;
  ready: AfterState | null;
}) => {
  const { change, readOnly, undo } = useGarment();
  const edit = (recipe: (outcome: Outcome) => void): void =>
    change((draft) => {
      const found = draft.outcomes.find(({ id }) => id === outcome.id);
      if (found) recipe(found);
    });
  const remove = (): void => {
    change((draft) => {
      draft.outcomes = draft.outcomes.filter(({ id }) => id !== outcome.id);
    });
    toast('The day is removed.', undo);
  };
  const title = outcome.on === undefined ? 'Measured, day not said' : printDay(outcome.on);
  return (
    <Card title={title}>
      <div className="df-when">
        <DayField
          label="Day"
          value={outcome.on}
          onChange={(day) =>
            edit((draft) => {
              if (day === null) delete draft.on;
              else draft.on = day;
            })
          }
        />
        <ParsedField<number>
          label="Washes so far"
          path={`outcomes/${outcome.id}/washes`}
          value={outcome.washes}
          print={String}
          parse={(text) => parseWashes(text, 'Washes so far')}
          onCommit={(washes) => {
            if (washes !== null)
              edit((draft) => {
                draft.washes = washes;
              });
          }}
        />
      </div>
      <TextField
        label="Remark"
        long
        value={outcome.remark}
        readOnly={readOnly}
        onChange={(remark) =>
          edit((draft) => {
            draft.remark = remark;
          })
        }
      />
      <SectionFaults prefix={`outcomes[${at}]`} except={['question-span']} />
      <h3>By the tape</h3>
      <TapeList
        path={`outcomes/${outcome.id}`}
        field={`outcomes[${at}].measured`}
        tapes={outcome.measured}
        states={AFTER_STATES}
        ready={ready}
        edit={(recipe) => edit((draft) => recipe(draft.measured))}
      />
      <div>
        <Button look="quiet" icon="bin" onPress={remove} isDisabled={readOnly}>
          Remove this day<span className="df-unseen">: {title}</span>
        </Button>
      </div>
    </Card>
  );
};
