import type { Forecast, SizeFit } from '@dryflat/engine/garment';
import { Button, Card, toast, useLengths } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { ChanceBar } from '../result/chance-bar.tsx';
import { chancePercent } from '../result/chance-words.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { sizeTitle } from '../result/size-title.ts';
import { NeedleAdvice } from './needle-advice.tsx';

/** Each size of the pattern begun afresh at this gauge, and the way to choose another; of one size none is compared. */
export const SizeList = ({ forecast }: { forecast: Forecast }) => {
  const { own } = useSentences();
  const { record } = useGarment();
  if (forecast.sizes.length === 0 || record.pattern.sizes.length === 1)
    return <NeedleAdvice forecast={forecast} alone />;
  return (
    <Card title="Sizes compared">
      <p className="df-soft">
        {own('Each size as it would come out if it were begun afresh at this gauge.')}
      </p>
      <ul className="df-sizes">
        {forecast.sizes.map((fit) => (
          <SizeRow key={fit.size} fit={fit} forecast={forecast} />
        ))}
      </ul>
      <Gaps forecast={forecast} />
      <NeedleAdvice forecast={forecast} />
    </Card>
  );
};

const SizeRow = ({ fit, forecast }: { fit: SizeFit; forecast: Forecast }) => {
  const { length } = useLengths();
  const chosen = fit.size === forecast.chosenSize;
  const best = fit.size === forecast.advice.bestSize;
  return (
    <li data-chosen={chosen || undefined}>
      <div className="df-size-head">
        <h3>
          {sizeTitle(fit.size)}
          {best && <span className="df-kind"> fits best</span>}
        </h3>
        <span className="df-size-chance">{chancePercent(fit.chanceAll)}</span>
        <span className="df-unseen"> chance that all fits</span>
      </div>
      <ChanceBar fits={fit.chanceAll} />
      <ul className="df-size-lines">
        {leadingOf(fit, forecast).map(({ name, p50Mm, chance }) => (
          <li key={name}>
            {name} <strong>{length(p50Mm)}</strong>{' '}
            <span className="df-soft">({chancePercent(chance)})</span>
          </li>
        ))}
      </ul>
      <ChooseSize size={fit.size} chosen={chosen} />
    </li>
  );
};

/** The way to a size; says so of the one that is chosen. */
export const ChooseSize = ({ size, chosen }: { size: string; chosen: boolean }) => {
  const { change, readOnly, undo } = useGarment();
  if (chosen) return <p className="df-size-chosen">Chosen</p>;
  const choose = (): void => {
    change((draft) => {
      draft.pattern.chosen = size;
    });
    toast(`Size ${size} is chosen.`, undo);
  };
  return (
    <Button onPress={choose} isDisabled={readOnly}>
      Choose size {size}
    </Button>
  );
};

/** The first width and the first length of those that are wanted. */
const leadingOf = (fit: SizeFit, { fit: judged, measurements }: Forecast) => {
  const known = fit.landmarks.flatMap((each) => {
    const id = judged.find(({ landmark }) => landmark === each.landmark)?.measurement;
    const measurement = measurements.find((one) => one.id === id);
    return measurement
      ? [{ ...each, name: measurement.name, direction: measurement.direction }]
      : [];
  });
  return (['width', 'length'] as const).flatMap(
    (direction) => known.find((each) => each.direction === direction) ?? [],
  );
};

const Gaps = ({ forecast }: { forecast: Forecast }) => {
  const { record } = useGarment();
  const missing = record.pattern.sizes.filter(
    (size) => !forecast.sizes.some((each) => each.size === size),
  );
  if (missing.length === 0) return null;
  return (
    <p className="df-soft">
      Not compared, because the size table has gaps there: {missing.join(', ')}.
    </p>
  );
};
