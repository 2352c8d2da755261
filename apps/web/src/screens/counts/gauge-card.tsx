import type { GaugeForecast, Range } from '@dryflat/engine/garment';
import { countOfPitch } from '@dryflat/engine/units';
import { Card, ChoiceChips, useWords } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment, useView } from '../../store/index.ts';
import type { GaugeState } from './my-pitch.ts';

const OVER = { cm: { span: '10cm', words: '10 cm' }, in: { span: '4in', words: '4 in' } } as const;

/** `20.3`, to the tenth that a swatch can tell. */
const tenth = (count: number): string => (Math.round(count * 10) / 10).toFixed(1);

/** Which gauge everything here is counted at, how sure it is, and the repeat of the stitch pattern. */
export const GaugeCard = ({
  gauge,
  state,
  onState,
}: {
  gauge: GaugeForecast;
  state: GaugeState;
  onState: (state: GaugeState) => void;
}) => {
  const { record } = useGarment();
  const { units } = useView();
  const word = useWords();
  const { span, words } = OVER[units];
  const likely = ({ p50Mm }: Range) => tenth(countOfPitch(p50Mm, span));
  // A wider stitch is a lower count.
  const range = ({ p05Mm, p95Mm }: Range) =>
    `${tenth(countOfPitch(p95Mm, span))}–${tenth(countOfPitch(p05Mm, span))}`;
  const { repeat } = record.pattern;
  return (
    <Card title={`At my ${word('gauge')}`}>
      <p className="df-lead">
        {likely(gauge.stitch[state])} stitches and {likely(gauge.row[state])} rows over {words},{' '}
        {state === 'dried' ? 'dried' : 'as knit'}
      </p>
      <p className="df-soft">
        By what is known so far, nine times in ten {range(gauge.stitch[state])} stitches and{' '}
        {range(gauge.row[state])} rows. Another {word('swatch')} makes the counts surer.
      </p>
      <div className="co-choices">
        <ChoiceChips
          label="The finished measurements hold"
          value={state}
          onChange={onState}
          choices={[
            { value: 'dried', label: 'When it is dried' },
            { value: 'asKnit', label: 'As knit, never wet' },
          ]}
        />
      </div>
      <p>
        {repeat === undefined
          ? 'No repeat: any count of stitches will do.'
          : `Counts above the ribbing are a multiple of ${repeat.stitches}${repeat.plus > 0 ? ` plus ${repeat.plus}` : ''}.`}{' '}
        <a href={garmentHash(record.id, 'pattern')}>
          {repeat === undefined
            ? 'Give the repeat under Pattern'
            : 'Change the repeat under Pattern'}
        </a>
      </p>
    </Card>
  );
};
