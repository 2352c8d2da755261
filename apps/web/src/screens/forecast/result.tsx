import type { ForecastState } from '@dryflat/engine/fabric';
import type { Forecast } from '@dryflat/engine/garment';
import { forecastSizes, wantedSizes } from '@dryflat/paper/schematic';
import { useMemo, useState } from 'react';
import { Card, ChoiceChips, useLengths } from '../../kit/index.ts';
import { Schematic } from '../../schematic/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import { STATE_NAMES, STATES_FORECAST, stateChoices } from '../result/state-names.ts';
import { Answer } from './answer.tsx';
import { DimensionSheet } from './dimension-sheet.tsx';
import { FitList } from './fit-list.tsx';
import { KeepForecast } from './keep-forecast.tsx';
import { MeasurementList } from './measurement-list.tsx';
import { Notices } from './notices.tsx';
import { PlanChoices } from './plan-choices.tsx';
import { SizeList } from './size-list.tsx';
import { Standing } from './standing.tsx';

const CHOICES = stateChoices(STATES_FORECAST);

export const Result = ({ forecast }: { forecast: Forecast }) => {
  const [chosen, setChosen] = useState<ForecastState | null>(null);
  const [picked, setPicked] = useState<string | null>(null);
  const state = chosen ?? forecast.judgedAt;
  return (
    <>
      <Answer forecast={forecast} state={state} />
      <Notices forecast={forecast} />
      <Card title="What it will measure">
        <ChoiceChips
          label="When it is"
          value={state}
          onChange={setChosen}
          choices={CHOICES}
          hint={STATE_NAMES[state].means}
        />
        <div className="df-drawing-and-list">
          <Drawing forecast={forecast} state={state} picked={picked} onPick={setPicked} />
          <MeasurementList forecast={forecast} state={state} onPick={setPicked} />
        </div>
      </Card>
      <FitList forecast={forecast} />
      <SizeList forecast={forecast} />
      <PlanChoices forecast={forecast} />
      <KeepForecast forecast={forecast} />
      <Standing forecast={forecast} />
      {picked !== null && (
        <DimensionSheet
          forecast={forecast}
          picked={picked}
          state={state}
          onClose={() => setPicked(null)}
        />
      )}
    </>
  );
};

const Drawing = ({
  forecast,
  state,
  picked,
  onPick,
}: {
  forecast: Forecast;
  state: ForecastState;
  picked: string | null;
  onPick: (picked: string) => void;
}) => {
  const { record } = useGarment();
  const { words } = useView();
  const { length } = useLengths();
  const wanted = useMemo(() => wantedSizes(forecast), [forecast]);
  const sizes = useMemo(() => forecastSizes(forecast, state), [forecast, state]);
  return (
    <Schematic
      kind={record.kind}
      wanted={wanted}
      forecast={sizes}
      print={length}
      words={words}
      picked={picked}
      onPick={onPick}
    />
  );
};
