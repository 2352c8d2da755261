import type { ForecastState } from '@dryflat/engine/fabric';
import { type Forecast, keyMeasurements, type MeasurementForecast } from '@dryflat/engine/garment';
import type { ReactNode } from 'react';
import { Icon, useLengths } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment } from '../../store/index.ts';
import { ChanceBar } from '../result/chance-bar.tsx';
import { chancePercent, chanceWords } from '../result/chance-words.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { sizeTitle } from '../result/size-title.ts';
import { spannedName } from '../result/span-words.ts';
import { STATE_NAMES } from '../result/state-names.ts';

/** The answer first: one sentence, and the numbers that count most, readable at arm's length. */
export const Answer = ({ forecast, state }: { forecast: Forecast; state: ForecastState }) => {
  const { own } = useSentences();
  return (
    <section className="df-answer" aria-label="The answer">
      <h2 className="df-unseen">The answer</h2>
      <div className="df-figures">
        <AllFit forecast={forecast} />
        {keyMeasurements(forecast).map((measurement) => (
          <Length key={measurement.id} measurement={measurement} state={state} />
        ))}
      </div>
      <p className="df-lead">{own(forecast.advice.sentence)}</p>
    </section>
  );
};

const Figure = ({ name, big, children }: { name: string; big: ReactNode; children: ReactNode }) => (
  <div className="df-figure">
    <p className="df-figure-name">{name}</p>
    <p className="df-figure-big">{big}</p>
    <div className="df-figure-more">{children}</div>
  </div>
);

const Length = ({
  measurement,
  state,
}: {
  measurement: MeasurementForecast;
  state: ForecastState;
}) => {
  const { length, range } = useLengths();
  const { p05Mm, p50Mm, p95Mm } = measurement.states[state];
  return (
    <Figure name={spannedName(measurement)} big={length(p50Mm)}>
      {STATE_NAMES[state].label.toLowerCase()}, likely {range(p05Mm, p95Mm)}
    </Figure>
  );
};

const AllFit = ({ forecast }: { forecast: Forecast }) => {
  const { record } = useGarment();
  const chance = forecast.chanceAllFit;
  if (chance === null)
    return (
      <Figure name="Will it fit?" big="Not asked yet">
        <a className="df-button" href={garmentHash(record.id, 'wearer')}>
          <Icon name="wearer" />
          Say what is wanted, under Wearer
        </a>
      </Figure>
    );
  const only = record.pattern.sizes.length === 1 || forecast.chosenSize === null;
  const size = only ? '' : `${sizeTitle(forecast.chosenSize ?? '')}: `;
  return (
    <Figure name={`${size}${only ? 'All' : 'all'} that is wanted fits`} big={chanceWords(chance)}>
      <ChanceBar fits={chance} />
      {chancePercent(chance)}, judged {STATE_NAMES[forecast.judgedAt].label.toLowerCase()}
    </Figure>
  );
};
