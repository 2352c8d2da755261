import type { Forecast } from '@dryflat/engine/garment';
import type { Plan } from '@dryflat/record';
import { Card, ChoiceChips, Disclosure } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { STATE_NAMES } from '../result/state-names.ts';
import { CareNotices } from './notices.tsx';

const WASHED = [
  { value: 'by-hand', label: 'By hand', says: 'Washed by hand' },
  { value: 'machine-wool', label: 'Machine, wool cycle', says: 'Washed on the wool cycle' },
  { value: 'machine-warm', label: 'Machine, warm', says: 'Washed warm in a machine' },
  { value: 'not-said', label: 'Not decided', says: 'Washed in a way not decided yet' },
] as const;
const JUDGED = ['dried', 'worn', 'rewashed'] as const;

/** How it will be washed, dried and judged: the forecast follows each choice at once. */
export const PlanChoices = ({ forecast }: { forecast: Forecast }) => {
  const { record, change, readOnly } = useGarment();
  const set = <K extends 'washing' | 'drying' | 'judgeAt'>(key: K, value: Plan[K]): void =>
    change((draft) => {
      draft.plan[key] = value;
    });
  const { washing, drying, judgeAt } = record.plan;
  return (
    <Card title="Washing and drying">
      <p>
        {WASHED.find(({ value }) => value === washing)?.says}, then{' '}
        {drying === 'pin' ? 'pinned to the pattern' : 'laid flat without pins'}. The fit that counts
        is when it is {STATE_NAMES[judgeAt].label.toLowerCase()}
        {forecast.judgedAt !== judgeAt &&
          `; it was measured ${STATE_NAMES[forecast.judgedAt].label.toLowerCase()} since, and is judged so`}
        .
      </p>
      <CareNotices forecast={forecast} />
      <Disclosure title="Do it otherwise, and see what that does">
        <div className="df-stack">
          <ChoiceChips
            label="The fit that counts is when it is"
            value={judgeAt}
            onChange={(value) => set('judgeAt', value)}
            readOnly={readOnly}
            choices={JUDGED.map((value) => ({
              value,
              label: STATE_NAMES[value].label,
              note: STATE_NAMES[value].means,
            }))}
          />
          <ChoiceChips
            label="How it is dried"
            value={drying}
            onChange={(value) => set('drying', value)}
            readOnly={readOnly}
            choices={[
              { value: 'lay', label: 'Laid flat, no pins' },
              { value: 'pin', label: 'Pinned to the pattern' },
            ]}
          />
          <ChoiceChips
            label="How it is washed"
            value={washing}
            onChange={(value) => set('washing', value)}
            readOnly={readOnly}
            choices={WASHED}
          />
        </div>
      </Disclosure>
    </Card>
  );
};
