import type { Forecast } from '@dryflat/engine/garment';
import type { KeptForecast } from '@dryflat/record';
import { Button, Card, Icon, toast, useLengths } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { newId, useGarment } from '../../store/index.ts';
import { compareKept, scoreOf } from '../result/kept-score.ts';
import { printDay, today } from '../result/today.ts';
import { keptOf } from './kept-of.ts';

/** Keeps the forecast as it stands, so that it can be held against what comes. */
export const KeepForecast = ({ forecast }: { forecast: Forecast }) => {
  const { record, change, readOnly, undo } = useGarment();
  const keep = (): void => {
    change((draft) => {
      draft.forecasts.push(keptOf(forecast, newId(), today()));
    });
    toast('The forecast of today is kept.', undo);
  };
  return (
    <Card title="Keep it, and see whether it was right">
      <p>
        A forecast counts when it was written down beforehand. Keep this one, measure the garment
        when it is dry, and see what fell inside the ranges.
      </p>
      <div>
        <Button icon="done" onPress={keep} isDisabled={readOnly}>
          Keep this forecast
        </Button>
      </div>
      {record.forecasts.length > 0 && (
        <ul className="df-list">
          {[...record.forecasts].reverse().map((kept) => (
            <Kept key={kept.id} kept={kept} />
          ))}
        </ul>
      )}
      {record.forecasts.length > 0 && (
        <div>
          <a className="df-button" href={garmentHash(record.id, 'after')}>
            <Icon name="after" />
            Hold them against the outcome, under After
          </a>
        </div>
      )}
    </Card>
  );
};

const Kept = ({ kept }: { kept: KeptForecast }) => {
  const { record, change, readOnly, undo } = useGarment();
  const { range } = useLengths();
  const { inside, of } = scoreOf(compareKept(record, kept));
  const first = kept.measurements.find((each) => each.state === record.plan.judgeAt);
  const name = record.pattern.measurements.find((each) => each.id === first?.measurement)?.name;
  const remove = (): void => {
    change((draft) => {
      draft.forecasts = draft.forecasts.filter((each) => each.id !== kept.id);
    });
    toast('The kept forecast is removed.', undo);
  };
  return (
    <li className="df-mend">
      <p>
        <strong>{printDay(kept.on)}</strong>
        {first && name && (
          <>
            : {name.toLowerCase()} {range(first.p05Mm, first.p95Mm)}
          </>
        )}
        . {of === 0 ? 'Nothing to hold it against yet.' : `${inside} of ${of} came out inside.`}
      </p>
      <Button look="quiet" icon="bin" onPress={remove} isDisabled={readOnly}>
        Remove<span className="df-unseen"> the forecast of {printDay(kept.on)}</span>
      </Button>
    </li>
  );
};
