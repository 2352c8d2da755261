import type { KeptForecast } from '@dryflat/record';
import { useState } from 'react';
import { Card, Icon, Select, useLengths } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment } from '../../store/index.ts';
import { type Compared, compareKept, scoreOf } from '../result/kept-score.ts';
import { Key } from '../result/key.tsx';
import { RangeLine } from '../result/range-line.tsx';
import { scaleFor } from '../result/scale.ts';
import { STATE_NAMES } from '../result/state-names.ts';
import { printDay } from '../result/today.ts';

/** A kept forecast and what came of it, side by side. */
export const Compare = () => {
  const { record } = useGarment();
  const [chosen, setChosen] = useState<string | null>(null);
  const kept = record.forecasts.find(({ id }) => id === chosen) ?? record.forecasts[0];
  if (kept === undefined) return <NothingKept id={record.id} />;
  return (
    <Card title="Was it right?">
      {record.forecasts.length > 1 && (
        <Select
          label="The forecast of"
          value={kept.id}
          onChange={setChosen}
          options={record.forecasts.map(({ id, on }) => ({ value: id, label: printDay(on) }))}
        />
      )}
      <Scored kept={kept} />
    </Card>
  );
};

const NothingKept = ({ id }: { id: string }) => (
  <Card title="Was it right?">
    <p>No forecast was kept beforehand, so there is nothing to hold these numbers against.</p>
    <div>
      <a className="df-button" href={garmentHash(id)}>
        <Icon name="forecast" />
        Keep one now, for the next wash
      </a>
    </div>
  </Card>
);

const Scored = ({ kept }: { kept: KeptForecast }) => {
  const { record } = useGarment();
  const compared = compareKept(record, kept);
  const { inside, of } = scoreOf(compared);
  if (compared.length === 0)
    return (
      <p>Nothing that this forecast spoke of has been measured since, flat or around included.</p>
    );
  return (
    <>
      {of > 0 && (
        <p>
          <span className="df-number">
            {inside} of {of}
          </span>{' '}
          came out inside the range of {printDay(kept.on)}. About 9 in 10 should.
        </p>
      )}
      <ul className="df-comparison">
        {compared.map((each) => (
          <li key={each.measured.id}>
            <ComparedRow compared={each} />
          </li>
        ))}
      </ul>
      <Key of={['range', 'mark']} />
    </>
  );
};

const ComparedRow = ({ compared }: { compared: Compared }) => {
  const { length, range } = useLengths();
  const { name, span, measured, measuredMm, outcome, inside, afterTheFact } = compared;
  const { p05Mm, p95Mm } = compared.range;
  const day = measured.on ?? outcome.on;
  return (
    <div className="df-compared" data-inside={inside || undefined}>
      <h3>
        {name}
        {span === 'around' && ', around'}: {STATE_NAMES[measured.state].label.toLowerCase()}
      </h3>
      <p>
        <strong className="df-compared-big">{length(measuredMm)}</strong>{' '}
        <span className="df-verdict">{verdict(compared, length)}</span>
      </p>
      <RangeLine
        scale={scaleFor([p05Mm, p95Mm, measuredMm])}
        range={compared.range}
        mark={measuredMm}
      />
      <p className="df-soft">
        Forecast {range(p05Mm, p95Mm)}
        {day !== undefined && `; measured ${printDay(day)}`}, {washes(outcome.washes)}
        {afterTheFact && '. This forecast was kept later than that, so it is not scored'}.
      </p>
    </div>
  );
};

const washes = (count: number): string => (count === 1 ? 'after 1 wash' : `after ${count} washes`);

const verdict = (
  { inside, measuredMm, range }: Compared,
  length: (valueMm: number) => string,
): string => {
  if (inside) return 'inside the range';
  const below = range.p05Mm - measuredMm;
  return below > 0
    ? `${length(below)} under the range`
    : `${length(measuredMm - range.p95Mm)} over the range`;
};
