import type { Basis } from '@dryflat/engine/fabric';
import type { Route } from '@dryflat/engine/routes';
import { forecastSizes, wantedSizes } from '@dryflat/paper/schematic';
import { useMemo, useState } from 'react';
import { Button, Dialog, toast, useLandmarkName, useLengths } from '../../kit/index.ts';
import { RangeBar, Schematic } from '../../schematic/index.ts';
import { useGarment, useView } from '../../store/index.ts';
import { useForecast } from '../../worker/index.ts';
import { BasisList } from '../result/basis-list.tsx';
import { chancePercent, chanceWords } from '../result/chance-words.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { hoursRange } from '../result/hours-words.ts';
import { STATE_NAMES } from '../result/state-names.ts';
import { printDay } from '../result/today.ts';
import { planOfRoute } from './plan-of-route.ts';

interface RouteSheetProps {
  readonly route: Route;
  readonly routes: readonly Route[];
  readonly bases: readonly Basis[];
  readonly judgedAt: 'dried' | 'worn' | 'rewashed';
  readonly onClose: () => void;
}

/** One route: its forecast drawn on the schematic, what it costs, and why. */
export const RouteSheet = ({ route, routes, bases, judgedAt, onClose }: RouteSheetProps) => {
  const { plain } = useSentences();
  const better = routes.find(({ id }) => id === route.dominatedBy);
  return (
    <Dialog
      title={plain(route.name)}
      onClose={onClose}
      foot={<Take route={route} onTaken={onClose} />}
    >
      <p className="df-lead">{leadOf(route)}</p>
      {better && <p>Worse in every way than this: {plain(better.name)}.</p>}
      <ul>
        {route.reasons.map((reason) => (
          <li key={reason}>{plain(reason)}</li>
        ))}
      </ul>
      {route.measurements.length > 0 && <Drawn route={route} judgedAt={judgedAt} />}
      <Fits route={route} />
      <Costs route={route} />
      {route.dependsOn.length > 0 && (
        <>
          <h3>What it stands on</h3>
          <BasisList bases={bases} ids={route.dependsOn} />
        </>
      )}
    </Dialog>
  );
};

const leadOf = ({ chanceAllFit, worst }: Route): string => {
  if (chanceAllFit === null) return 'Nothing that is wanted is judged here.';
  const all = `All of it fits: ${chanceWords(chanceAllFit)}`;
  return worst && worst.chance < 0.95 ? `${all}. What fits least is named below.` : `${all}.`;
};

const Drawn = ({ route, judgedAt }: Pick<RouteSheetProps, 'route' | 'judgedAt'>) => {
  const { record } = useGarment();
  const { words } = useView();
  const { length } = useLengths();
  const { forecast } = useForecast();
  const [picked, setPicked] = useState<string | null>(null);
  const sizes = useMemo(() => forecastSizes(route, judgedAt), [route, judgedAt]);
  const wanted = useMemo(() => (forecast ? wantedSizes(forecast) : sizes.p50), [forecast, sizes]);
  return (
    <section aria-label={`As it would be, ${STATE_NAMES[judgedAt].label.toLowerCase()}`}>
      <h3>As it would be, {STATE_NAMES[judgedAt].label.toLowerCase()}</h3>
      <Schematic
        kind={record.kind}
        wanted={wanted}
        forecast={sizes}
        print={length}
        words={words}
        picked={picked}
        onPick={setPicked}
      />
    </section>
  );
};

const Fits = ({ route }: { route: Route }) => {
  const { length } = useLengths();
  const nameOf = useLandmarkName();
  if (route.fit.length === 0) return null;
  return (
    <>
      <h3>How it fits</h3>
      <ul className="df-list">
        {route.fit.map((fit) => (
          <li key={fit.landmark}>
            <p>
              <strong>
                {nameOf(fit.landmark)}: {chancePercent(fit.chance)}
              </strong>
              {fit.landmark === route.worst?.landmark && ', what fits least'}
              {fit.chance < 0.95 &&
                (fit.tooSmall > fit.tooLarge ? ', else too small' : ', else too large')}
            </p>
            <RangeBar
              label={nameOf(fit.landmark)}
              range={fit.finishedMm}
              wanted={fit.wantedMm}
              print={length}
            />
          </li>
        ))}
      </ul>
    </>
  );
};

const Costs = ({ route }: { route: Route }) => {
  const { hours, yarnM, doneDay, counts, chanceByDate, chanceOfYarn } = route;
  const metres = ({ p5, p95 }: { p5: number; p95: number }): string =>
    `${Math.round(p5)}–${Math.round(p95)} m`;
  const rows: readonly (readonly [string, string])[] = [
    ...counts.map(({ what, count }) => [what, `${count}`] as const),
    ['Knitting', hoursRange(hours.knit)],
    ['Ripping', hoursRange(hours.rip)],
    ['Sewing', hoursRange(hours.sew)],
    ['On the mat', hoursRange(hours.block)],
    ['Drying, by the clock', hoursRange(hours.dry)],
    ...(doneDay.p50 === null
      ? []
      : ([
          [
            'Ready',
            `${printDay(doneDay.p50)}${doneDay.p95 ? `, at the latest ${printDay(doneDay.p95)}` : ''}`,
          ],
        ] as const)),
    ...(chanceByDate === null ? [] : ([['In time', chancePercent(chanceByDate)]] as const)),
    ['Yarn still needed', metres(yarnM.needed)],
    ...(yarnM.returned.p95 > 0 ? ([['Back from ripping', metres(yarnM.returned)]] as const) : []),
    ...(yarnM.left === null ? [] : ([['Yarn at hand', metres(yarnM.left)]] as const)),
    ...(chanceOfYarn === null ? [] : ([['The yarn lasts', chancePercent(chanceOfYarn)]] as const)),
  ];
  return (
    <>
      <h3>What it takes</h3>
      <dl className="ro-costs">
        {rows
          .filter(([, value]) => value !== 'none')
          .map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
      </dl>
    </>
  );
};

/** Makes it the plan, where the record can say so. */
const Take = ({ route, onTaken }: { route: Route; onTaken: () => void }) => {
  const { change, readOnly, undo } = useGarment();
  const recipe = planOfRoute(route);
  if (recipe === null || route.planned) return null;
  return (
    <Button
      look="main"
      isDisabled={readOnly}
      onPress={() => {
        change(recipe);
        onTaken();
        toast('That is the plan now.', undo);
      }}
    >
      Make it the plan
    </Button>
  );
};
