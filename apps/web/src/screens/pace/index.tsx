import { planFrom } from '@dryflat/record/routes';
import { useSizeAsked } from '../forecast/size-asked.tsx';
import { today } from '../result/today.ts';
import { AnswerCard } from './answer-card.tsx';
import { DateCard } from './date-card.tsx';
import { HoursCard } from './hours-card.tsx';
import { isDone } from './is-done.ts';
import { LogCard } from './log-card.tsx';
import './pace.css';
import { ProgressCard } from './progress-card.tsx';
import { StepsCard } from './steps-card.tsx';
import { usePaceForecast } from './use-pace-forecast.ts';
import { YarnCard } from './yarn-card.tsx';

/** When it is done: the days that are left, the hours in them, and the hand that fills these. */
const Screen = () => {
  const { record, question } = useSizeAsked();
  const at = usePaceForecast(record);
  const from = planFrom(record, today());
  const { forecast } = at;
  const open = forecast !== null && !isDone(forecast);
  return (
    <>
      {question}
      <AnswerCard at={at} />
      {open && <DateCard date={forecast.date} from={from} />}
      <HoursCard />
      <ProgressCard />
      <LogCard pace={forecast?.pace ?? null} />
      {open && <YarnCard yarn={forecast.yarn} />}
      {open && <StepsCard forecast={forecast} />}
    </>
  );
};
export default Screen;
