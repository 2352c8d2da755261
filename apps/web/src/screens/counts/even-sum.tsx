import { spaceEvenly, writeSpacing } from '@dryflat/engine/counts';
import { ChoiceChips } from '../../kit/index.ts';
import { AsideCount } from './aside-field.tsx';
import { SumAnswer } from './sum-answer.tsx';
import { useAsideChoice, useAsideNumber } from './use-aside.ts';

/** Stitches that each change uses up: two are worked together, one is made between two. */
const USES = { decrease: 2, increase: 0 } as const;

/** Increases or decreases spread over a row or round. */
export const EvenSum = () => {
  const [change, setChange] = useAsideChoice('even/change', ['increase', 'decrease'], 'increase');
  const [layout, setLayout] = useAsideChoice('even/layout', ['flat', 'round'], 'flat');
  const [total] = useAsideNumber('even/total');
  const [places] = useAsideNumber('even/places');
  const result =
    total === null || places === null
      ? null
      : spaceEvenly({ total, places, uses: USES[change], layout });
  return (
    <div className="df-stack">
      <div className="df-columns">
        <ChoiceChips
          label="Change"
          value={change}
          onChange={setChange}
          choices={[
            { value: 'increase', label: 'Increase' },
            { value: 'decrease', label: 'Decrease' },
          ]}
        />
        <ChoiceChips
          label="Worked"
          value={layout}
          onChange={setLayout}
          choices={[
            { value: 'flat', label: 'In rows' },
            { value: 'round', label: 'In the round' },
          ]}
        />
        <AsideCount name="even/total" label="Stitches on the needle" />
        <AsideCount name="even/places" label={`Stitches to ${change}`} />
      </div>
      <SumAnswer result={result}>
        {(spacing) => (
          <>
            <p className="df-lead">{writeSpacing(spacing, change, layout)}</p>
            <p className="df-soft">
              {total! + (change === 'increase' ? places! : -places!)} stitches then.
              {change === 'decrease' && ' Each decrease works two stitches together.'}
            </p>
          </>
        )}
      </SumAnswer>
    </div>
  );
};
