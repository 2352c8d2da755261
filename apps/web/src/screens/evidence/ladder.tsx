import type { ForecastState } from '@dryflat/engine/fabric';
import type { CountSpan } from '@dryflat/engine/units';
import { useState } from 'react';
import { Button, Card, ChoiceChips, useWords } from '../../kit/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import { useForecast } from '../../worker/index.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { MendList } from '../result/mend-list.tsx';
import { percentOn } from '../result/scale.ts';
import { stateChoices } from '../result/state-names.ts';
import { type Along, type Rung, rungScale, rungsOf, shortLadder } from './ladder-rungs.ts';

const CHOICES = stateChoices(['asKnit', 'wet', 'dried', 'rewashed']);
const SPANS = { cm: '10cm', in: '4in' } as const satisfies Record<string, CountSpan>;
const SPAN_WORDS = { cm: '10 cm', in: '4 in' } as const;

/** How each entry narrows the gauge, stitches and rows, as bars that shrink. */
export const Ladder = () => {
  const { faults, sizes } = useForecast();
  const { record } = useGarment();
  const word = useWords();
  const [state, setState] = useState<ForecastState>('dried');
  return (
    <Card title={`What this says of the ${word('gauge')}`}>
      {faults.length > 0 && sizes === null ? (
        <>
          <p>This follows once the rest of the garment can be worked out:</p>
          <MendList id={record.id} faults={faults} />
        </>
      ) : (
        <>
          <ChoiceChips
            label={`${word('Gauge')} when it is`}
            value={state}
            onChange={setState}
            choices={CHOICES}
          />
          <div className="df-ladders">
            <Rungs along="stitch" state={state} />
            <Rungs along="row" state={state} />
          </div>
          <p className="df-soft">
            Each bar is where the {word('gauge')} lies nine times in ten, after one reading more.
          </p>
        </>
      )}
    </Card>
  );
};

const Rungs = ({ along, state }: { along: Along; state: ForecastState }) => {
  const { forecast, sizes, steps } = useForecast();
  // The fabric is the same whatever the size.
  const gauge = (forecast ?? sizes?.sizes[0])?.gauge;
  const { record } = useGarment();
  const { units } = useView();
  const [all, setAll] = useState(false);
  const what = along === 'stitch' ? 'Stitches' : 'Rows';
  if (gauge === undefined) return <p role="status">Working it out…</p>;
  const rungs = rungsOf({ record, steps, now: gauge, along, state, span: SPANS[units] });
  const scale = rungScale(rungs);
  const newest = rungs.length > 2 ? rungs.at(-2) : undefined;
  const shown = all ? rungs : shortLadder(rungs);
  return (
    <section aria-label={`${what} over ${SPAN_WORDS[units]}`}>
      <h3>
        {what} over {SPAN_WORDS[units]}
      </h3>
      <ol className="df-rungs">
        {shown.map((rung) => (
          <RungRow key={rung.id} rung={rung} scale={scale} newest={rung === newest} />
        ))}
      </ol>
      {rungs.length > shortLadder(rungs).length && (
        <Button look="quiet" onPress={() => setAll(!all)}>
          {all ? 'Show fewer' : `Show all ${rungs.length - 2} readings`}
          <span className="df-unseen"> of {what.toLowerCase()}</span>
        </Button>
      )}
    </section>
  );
};

const oneDecimal = (value: number): string => value.toFixed(1);

const RungRow = ({
  rung,
  scale,
  newest,
}: {
  rung: Rung;
  scale: { low: number; high: number };
  newest: boolean;
}) => {
  const { plain } = useSentences();
  const now = rung.id === 'now';
  const left = percentOn(scale, rung.fewest);
  return (
    <li data-newest={newest || undefined} data-now={now || undefined}>
      <span className="df-rung-label">
        {plain(rung.label)}
        {newest && <b> (newest)</b>}
      </span>
      <span className="df-rung-numbers">
        {oneDecimal(rung.fewest)}–{oneDecimal(rung.most)}
      </span>
      <span className="df-rung-bar" aria-hidden="true">
        <i style={{ left: `${left}%`, width: `${percentOn(scale, rung.most) - left}%` }} />
        <b style={{ left: `${percentOn(scale, rung.likely)}%` }} />
      </span>
    </li>
  );
};
