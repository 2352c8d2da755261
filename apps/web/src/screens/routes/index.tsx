import { useMemo, useState } from 'react';
import { Card } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { BrokenForecast } from '../forecast/not-yet.tsx';
import { useSentences } from '../result/craft-sentence.ts';
import { MendList } from '../result/mend-list.tsx';
import { Told } from '../result/told.tsx';
import { Comparison } from './comparison.tsx';
import { LeftOut } from './left-out.tsx';
import { MeasureFirst } from './measure-first.tsx';
import { RouteSheet } from './route-sheet.tsx';
import './routes.css';
import { SizesByNeedle } from './sizes-by-needle.tsx';
import { useRoutes } from './use-routes.ts';
import { WeightsCard } from './weights-card.tsx';

/** What to do now: every way out on the same luck, with what it gives and costs. */
const Screen = () => {
  const now = useRoutes();
  const { record } = useGarment();
  const { plain } = useSentences();
  const [open, setOpen] = useState<string | null>(null);
  const { result, arriving, pending } = now;
  const shown = useMemo(() => result?.routes ?? arriving, [result, arriving]);
  if (now.broken !== null) return <BrokenForecast message={now.broken} />;
  if (now.faults.length > 0)
    return (
      <Card title="No routes yet">
        <MendList id={record.id} faults={now.faults} />
      </Card>
    );
  const route = shown.find(({ id }) => id === open);
  return (
    <>
      <Card title="What to do now">
        {result && <p className="df-lead">{plain(result.sentence)}</p>}
        <p className="df-soft" role="status">
          {pending &&
            (result
              ? 'Working them out again…'
              : `Working the routes out: ${arriving.length} so far…`)}
        </p>
        <Comparison routes={shown} ordered={result !== null} onOpen={setOpen} />
      </Card>
      {result && (
        <>
          <Told label="What to know" notices={result.notices} />
          <MeasureFirst measurings={result.valueOfInformation} />
          <WeightsCard />
          <SizesByNeedle sizes={now.sizes} judgedAt={result.judgedAt} />
          <LeftOut routes={result.leftOut} />
        </>
      )}
      {route && (
        <RouteSheet
          route={route}
          routes={shown}
          bases={result?.bases ?? []}
          judgedAt={result?.judgedAt ?? record.plan.judgeAt}
          onClose={() => setOpen(null)}
        />
      )}
    </>
  );
};
export default Screen;
