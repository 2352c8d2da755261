import type { Plan } from '@dryflat/record';
import { ChoiceChips, Disclosure } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { STATE_NAMES } from '../result/state-names.ts';

const JUDGED = ['dried', 'worn', 'rewashed'] as const;

/** How it will be washed, dried and judged: the forecast follows each choice at once. */
export const PlanChoices = () => {
  const { record, change, readOnly } = useGarment();
  const set = <K extends 'washing' | 'drying' | 'judgeAt'>(key: K, value: Plan[K]): void =>
    change((draft) => {
      draft.plan[key] = value;
    });
  return (
    <Disclosure level={2} title="Wash, dry and judge it otherwise">
      <div className="df-stack">
        <ChoiceChips
          label="The fit that counts is when it is"
          value={record.plan.judgeAt}
          onChange={(value) => set('judgeAt', value)}
          readOnly={readOnly}
          choices={JUDGED.map((value) => ({
            value,
            label: STATE_NAMES[value].label,
            note: STATE_NAMES[value].means,
          }))}
        />
        <ChoiceChips
          label="Dried"
          value={record.plan.drying}
          onChange={(value) => set('drying', value)}
          readOnly={readOnly}
          choices={[
            { value: 'lay', label: 'Laid flat, no pins' },
            { value: 'pin', label: 'Pinned to the pattern' },
          ]}
        />
        <ChoiceChips
          label="Washed"
          value={record.plan.washing}
          onChange={(value) => set('washing', value)}
          readOnly={readOnly}
          choices={[
            { value: 'by-hand', label: 'By hand' },
            { value: 'machine-wool', label: 'Machine, wool cycle' },
            { value: 'machine-warm', label: 'Machine, warm' },
            { value: 'not-said', label: 'Not decided' },
          ]}
        />
      </div>
    </Disclosure>
  );
};
