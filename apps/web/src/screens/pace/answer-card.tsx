import type { PaceForecast } from '@dryflat/engine/routes';
import { planFrom } from '@dryflat/record/routes';
import { useEffect, useRef } from 'react';
import { announce, Card, Notice } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { BrokenForecast } from '../forecast/not-yet.tsx';
import { chancePercent, chanceWords } from '../result/chance-words.ts';
import { hoursRange } from '../result/hours-words.ts';
import { MendList } from '../result/mend-list.tsx';
import { printDay, today } from '../result/today.ts';
import { Told } from '../result/told.tsx';
import { CalendarFile } from './calendar-file.tsx';
import { CurveKey, DoneCurve } from './done-curve.tsx';
import { isDone } from './is-done.ts';
import type { PaceNow } from './use-pace-forecast.ts';

/** When it can be done, drawn and in words. */
export const AnswerCard = ({ at }: { at: PaceNow }) => {
  const { record } = useGarment();
  const { forecast, pending, faults, broken } = at;
  return (
    <Card title="When it can be done">
      {broken !== null && <BrokenForecast message={broken} />}
      <MendList id={record.id} faults={faults} />
      {forecast && isDone(forecast) && <p className="pc-when">Nothing is left to do</p>}
      {forecast && !isDone(forecast) && <Answer forecast={forecast} pending={pending} />}
      {forecast === null && pending && <p role="status">Working it out…</p>}
    </Card>
  );
};

const headline = ({ done }: PaceForecast): string =>
  done.p50 === null ? 'Not within three years' : printDay(done.p50);

const rangeWords = ({ done: { p05, p50, p95 } }: PaceForecast): string => {
  if (p05 === null)
    return 'With these hours it is more likely than not that it takes over three years.';
  const late = p95 === null ? 'later than in three years' : printDay(p95);
  const ends =
    p05 === p95
      ? '9 times in 10 on that very day'
      : `9 times in 10 between ${printDay(p05)} and ${late}`;
  return p50 === null ? `${ends}.` : `Done by then as likely as not, and ${ends}.`;
};

const workWords = ({ hours }: PaceForecast): string =>
  `Work that is left: ${hoursRange(hours)} at your hands, drying not counted.`;

/** Notices that are shown beside what they are about. */
const ELSEWHERE = /^(rest|past-date|order-|yarn-)/;

const Answer = ({ forecast, pending }: { forecast: PaceForecast; pending: boolean }) => {
  const { record } = useGarment();
  const by = record.plan.finishBy ?? null;
  const from = planFrom(record, today());
  const main = headline(forecast);
  useToldDay(pending ? null : main);
  return (
    <>
      <p className="pc-when" data-pending={pending || undefined}>
        {main}
      </p>
      <p>{rangeWords(forecast)}</p>
      <InTime forecast={forecast} from={from} />
      <DoneCurve
        forecast={forecast}
        from={from}
        by={by}
        label={`Chance of being done, day by day. ${main}: ${rangeWords(forecast)}`}
      />
      <CurveKey wanted={by !== null && by >= from} />
      <p>{workWords(forecast)}</p>
      <Told
        label="What to know of it"
        notices={forecast.notices.filter(({ code }) => !ELSEWHERE.test(code))}
      />
      <CalendarFile forecast={forecast} by={by} />
    </>
  );
};

const InTime = ({ forecast: { date }, from }: { forecast: PaceForecast; from: string }) => {
  if (date === null) return null;
  if (date.by < from)
    return (
      <Notice tone="wrong">
        {printDay(date.by)}, when it was wanted, has gone by. Say another day below.
      </Notice>
    );
  return (
    <p className="pc-in-time" data-likely={date.chance >= 0.5 || undefined}>
      Done by {printDay(date.by)}: <strong>{chanceWords(date.chance)}</strong> (
      {chancePercent(date.chance)})
    </p>
  );
};

/** Speaks a day that differs from the one before; the first is not news. */
const useToldDay = (main: string | null): void => {
  const told = useRef<string | null>(null);
  useEffect(() => {
    if (main === null) return;
    if (told.current !== null && told.current !== main) announce(`Done: ${main}`);
    told.current = main;
  }, [main]);
};
