import type { SkeinPlan } from '@dryflat/engine/routes';
import { useEffect, useRef } from 'react';
import { announce, Card, Disclosure, Notice, SectionFaults } from '../../kit/index.ts';
import { useView } from '../../store/index.ts';
import { BrokenForecast } from '../forecast/not-yet.tsx';
import { useSizeAsked } from '../forecast/size-asked.tsx';
import { BasisList } from '../result/basis-list.tsx';
import { ChanceBar } from '../result/chance-bar.tsx';
import { chancePercent, chanceWords } from '../result/chance-words.ts';
import { MendList } from '../result/mend-list.tsx';
import { ProgressFields } from '../result/progress-field.tsx';
import { printDay } from '../result/today.ts';
import { leftoverLength, leftoverMass, yarnLength, yarnMass } from './leftover-words.ts';
import { useYarnLasts, type YarnNow } from './use-yarn-lasts.ts';

/** Whether the yarn lasts, what will be over, and what to buy. */
export const LastsCard = () => {
  const { record, question } = useSizeAsked();
  const at = useYarnLasts(record);
  const { advice, pending, faults, broken } = at;
  return (
    <>
      {question}
      <Card title="Will it last?">
        {broken !== null && <BrokenForecast message={broken} />}
        <MendList id={record.id} faults={faults} />
        <SectionFaults prefix="left" />
        {advice && <Advice at={at} advice={advice} />}
        {advice === null && pending && <p role="status">Working it out…</p>}
        {advice === null && !pending && faults.length === 0 && broken === null && (
          <p>Put in the skeins that you have, or weigh what is left, and this tells.</p>
        )}
      </Card>
    </>
  );
};

const Advice = ({ at, advice }: { at: YarnNow; advice: SkeinPlan }) => {
  const { units } = useView();
  const { chanceShort, leftoverM, leftoverG, bases, lots } = advice;
  const lasts = `It lasts: ${chanceWords(1 - chanceShort)}`;
  useTold(at.pending ? null : lasts);
  return (
    <>
      <p className="ya-lasts" data-pending={at.pending || undefined}>
        {lasts}
      </p>
      <ChanceBar fits={1 - chanceShort} small={chanceShort} />
      <dl className="ya-over">
        <Amount name="Knit already" amount={advice.knit} />
        <Amount name="Left to knit takes" amount={advice.needed} />
        <Amount name="At hand for it" amount={advice.held} />
        <div>
          <dt>Runs out</dt>
          <dd>{chancePercent(chanceShort)}</dd>
        </div>
        <div>
          <dt>When all is knit, 9 times in 10</dt>
          <dd>
            {leftoverLength(leftoverM, units)}
            <br />
            {leftoverMass(leftoverG, units)}
          </dd>
        </div>
      </dl>
      <Buy at={at} advice={advice} />
      {lots.kind !== 'no-lots' && <p>{lots.sentence}</p>}
      <KnitSoFar asks={advice.asksProgress} />
      <Disclosure title="What it stands on">
        <BasisList bases={bases} ids={[...new Set(bases.map(({ id }) => id))]} />
      </Disclosure>
    </>
  );
};

/** Length and mass, 9 times in 10; nothing where there is none of it. */
const Amount = ({ name, amount }: { name: string; amount: SkeinPlan['knit'] }) => {
  const { units } = useView();
  if (amount === null) return null;
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        {yarnLength(amount.metres, units)}
        <br />
        {yarnMass(amount.grams, units)}
      </dd>
    </div>
  );
};

/** What is knit comes off what is needed, so it is asked here too. */
const KnitSoFar = ({ asks }: { asks: boolean }) => (
  <>
    <h3>How much is knit</h3>
    {asks && (
      <Notice tone="unsure">
        Say how much is knit, and what is left by the scale counts. Until then it is judged as if
        nothing were knit yet.
      </Notice>
    )}
    <ProgressFields />
  </>
);

const Buy = ({ at: { orderBy }, advice }: { at: YarnNow; advice: SkeinPlan }) => {
  const { buy, chanceWithBuy } = advice;
  if (buy === 0) return <p>No more has to be bought.</p>;
  return (
    <>
      <p>
        {buy === null ? (
          'How much a skein holds is not known, so that nobody can say how many more.'
        ) : (
          <>
            Buy{' '}
            <strong>
              {buy} more skein{buy === 1 ? '' : 's'}
            </strong>
            {chanceWithBuy !== null && `, and it runs out with ${chancePercent(chanceWithBuy)}`}.
          </>
        )}{' '}
        {orderBy &&
          !orderBy.tooLate &&
          `Ask for them by ${printDay(orderBy.day)}, so that you hardly have to wait.`}
      </p>
      {orderBy?.tooLate && (
        <Notice tone="wrong">
          It may run out before another skein can be here. Ask for it now.
        </Notice>
      )}
    </>
  );
};

/** Speaks a chance that differs from the one before; the first is not news. */
const useTold = (line: string | null): void => {
  const told = useRef<string | null>(null);
  useEffect(() => {
    if (line === null) return;
    if (told.current !== null && told.current !== line) announce(line);
    told.current = line;
  }, [line]);
};
