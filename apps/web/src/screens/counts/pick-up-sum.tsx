import { type Pitch, pickUp, writePickUp } from '@dryflat/engine/counts';
import { countOfPitch, mm } from '@dryflat/engine/units';
import { formatCount, useLengths, useWords } from '../../kit/index.ts';
import { useView } from '../../store/index.ts';
import { AsideCount, AsideGauge } from './aside-field.tsx';
import { SumAnswer } from './sum-answer.tsx';
import { useAsideNumber } from './use-aside.ts';

const OVER = { cm: { span: '10cm', words: '10 cm' }, in: { span: '4in', words: '4 in' } } as const;

const percent = (share: number): string => {
  const rounded = Math.round(Math.abs(share) * 1000) / 10;
  if (rounded === 0) return 'exactly as long as the edge';
  return `${rounded} % ${share > 0 ? 'longer' : 'shorter'} than the edge`;
};

/** Stitches to pick up along an edge of rows, from the two gauges. */
export const PickUpSum = ({ pitch }: { pitch: Pitch }) => {
  const { length, signed } = useLengths();
  const { units } = useView();
  const word = useWords();
  const { span, words } = OVER[units];
  const [along] = useAsideNumber('pick/along');
  const [row] = useAsideNumber('pick/row');
  const [stitch] = useAsideNumber('pick/stitch');
  const mine = (pitchMm: number) => formatCount(Math.round(countOfPitch(pitchMm, span) * 10) / 10);
  const result =
    along === null
      ? null
      : pickUp({
          along,
          edgePitchMm: mm(row ?? pitch.row),
          bandPitchMm: mm(stitch ?? pitch.stitch),
        });
  return (
    <div className="df-stack">
      <div className="df-columns">
        <AsideCount name="pick/along" label="Rows along the edge" />
        <AsideGauge
          name="pick/row"
          span={span}
          label={`Rows over ${words}, at the edge`}
          hint={`Left empty: ${mine(pitch.row)}, your ${word('gauge')}`}
        />
        <AsideGauge
          name="pick/stitch"
          span={span}
          label={`Stitches over ${words}, of the band`}
          hint={`Left empty: ${mine(pitch.stitch)}, your ${word('gauge')}`}
        />
      </div>
      <SumAnswer result={result}>
        {({ edge, ratio, count }) => (
          <>
            <p className="df-lead">{writePickUp(ratio)}</p>
            <p>
              {count.count} stitches along this edge of {length(edge)}
              {Math.abs(count.errorMm) < 0.5 ? '.' : `, off by ${signed(count.errorMm)}.`}
            </p>
            <p className="df-soft">By the ratio alone the band is {percent(ratio.error)}.</p>
          </>
        )}
      </SumAnswer>
    </div>
  );
};
