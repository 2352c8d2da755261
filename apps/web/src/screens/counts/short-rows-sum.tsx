import { type Pitch, shortRows, writeShortRows } from '@dryflat/engine/counts';
import { ChoiceChips, useLengths } from '../../kit/index.ts';
import { AsideCount, AsideLength } from './aside-field.tsx';
import { SumAnswer } from './sum-answer.tsx';
import { useAsideChoice, useAsideNumber } from './use-aside.ts';

/** Short rows that slope a shoulder, or make room. */
export const ShortRowsSum = ({ pitch }: { pitch: Pitch }) => {
  const { length, signed } = useLengths();
  const [ends, setEnds] = useAsideChoice('short/ends', ['one', 'both'], 'one');
  const [stitches] = useAsideNumber('short/stitches');
  const [depthMm] = useAsideNumber('short/depth');
  const result =
    stitches === null || depthMm === null
      ? null
      : shortRows({ stitches, depthMm, rowMm: pitch.row, ends });
  return (
    <div className="df-stack">
      <div className="df-columns">
        <ChoiceChips
          label="The rows grow shorter"
          value={ends}
          onChange={setEnds}
          choices={[
            { value: 'one', label: 'At one end, as on a shoulder' },
            { value: 'both', label: 'At both, as on a heel' },
          ]}
        />
        <AsideCount name="short/stitches" label="Stitches that the slope goes over" />
        <AsideLength name="short/depth" label="How much taller at the tall end" />
      </div>
      <SumAnswer result={result}>
        {(found) => (
          <>
            <p className="df-lead">{writeShortRows(found)}</p>
            <p>
              {found.turns.length} turns{ends === 'both' && ' at each end'}, {found.rows.count} rows
              more at the tall place: {length(found.rows.mm)}
              {Math.abs(found.rows.errorMm) < 0.5 ? '.' : `, off by ${signed(found.rows.errorMm)}.`}
            </p>
          </>
        )}
      </SumAnswer>
    </div>
  );
};
