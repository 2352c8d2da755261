import type { RoutesResult } from '@dryflat/engine/routes';
import { useState } from 'react';
import { Card } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment, useView } from '../../store/index.ts';
import { BrokenForecast } from '../forecast/not-yet.tsx';
import { useSizeAsked } from '../forecast/size-asked.tsx';
import { assumedOf } from '../result/assumed.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { MendList } from '../result/mend-list.tsx';
import { PLACE_LABELS } from '../result/mend-place.ts';
import { Told } from '../result/told.tsx';
import { Comparison } from './comparison.tsx';
import { LeftOut } from './left-out.tsx';
import { MeasureFirst } from './measure-first.tsx';
import { RouteSheet } from './route-sheet.tsx';
import './routes.css';
import { SizesByNeedle } from './sizes-by-needle.tsx';
import { type RoutesNow, useRoutes } from './use-routes.ts';
import { WeightsCard } from './weights-card.tsx';
import { whyWords } from './why-words.ts';
import { inYarnUnit } from './yarn-words.ts';

/** What to do now: every way out on the same luck, with what it gives and costs. */
const Screen = () => {
  const { record, question } = useSizeAsked();
  const now = useRoutes(record);
  const { result, faults } = now;
  if (now.broken !== null) return <BrokenForecast message={now.broken} />;
  if (faults.length > 0)
    return (
      <>
        {question}
        <Card title="No routes yet">
          <MendList id={record.id} faults={faults} />
        </Card>
        <WeightsCard />
      </>
    );
  return (
    <>
      {question}
      <Routes now={now} />
      <WeightsCard />
      {result && <Around now={now} result={result} />}
    </>
  );
};
export default Screen;

const Routes = ({ now }: { now: RoutesNow }) => {
  const { result, arriving, pending } = now;
  const { record } = useGarment();
  const [open, setOpen] = useState<string | null>(null);
  const shown = result?.routes ?? arriving;
  const why = useWhy(result);
  const route = shown.find(({ id }) => id === open);
  return (
    <Card title="What to do now">
      <p className="df-soft" role="status">
        {pending &&
          (result
            ? 'Working them out again…'
            : `Working the routes out: ${arriving.length} so far…`)}
      </p>
      {assumedOf(record, 'progress').map((each) => (
        <p key={each} className="df-soft">
          {each} <a href={garmentHash(record.id, 'pace')}>Say it under {PLACE_LABELS.pace}</a>
        </p>
      ))}
      <Comparison routes={shown} ordered={result !== null} why={why} onOpen={setOpen} />
      {route && (
        <RouteSheet
          route={route}
          routes={shown}
          measurings={result?.valueOfInformation ?? []}
          bases={result?.bases ?? []}
          judgedAt={result?.judgedAt ?? record.plan.judgeAt}
          onClose={() => setOpen(null)}
        />
      )}
    </Card>
  );
};

/** Why the first is first, in the reader's units. */
const useWhy = (result: RoutesResult | null): string | null => {
  const { own } = useSentences();
  const { units } = useView();
  return result && own(inYarnUnit(whyWords(result), units));
};

const Around = ({ now, result }: { now: RoutesNow; result: RoutesResult }) => (
  <>
    <MeasureFirst measurings={result.valueOfInformation} />
    <SizesByNeedle sizes={now.sizes} judgedAt={result.judgedAt} />
    <Told label="What to know of the routes" notices={result.notices} />
    <LeftOut routes={result.leftOut} />
  </>
);
