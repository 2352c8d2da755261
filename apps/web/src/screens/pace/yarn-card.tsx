import type { YarnAdvice } from '@dryflat/engine/routes';
import { Card, Icon, Notice } from '../../kit/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useGarment } from '../../store/index.ts';
import { chanceWords } from '../result/chance-words.ts';
import { printDay } from '../result/today.ts';
import { daysWords } from './days-words.ts';

/** Whether the yarn holds the work up, and until when more has to be asked for. */
export const YarnCard = ({ yarn }: { yarn: YarnAdvice | null }) => {
  const { record } = useGarment();
  if (yarn === null) return null;
  return (
    <Card title="If the yarn runs out">
      <p>
        The chance that it runs out on the way is {chanceWords(yarn.chanceShort)}
        {yarn.waitDays.p95 >= 0.5 &&
          `; waiting for more then takes up to ${daysWords(yarn.waitDays.p95)}`}
        .
      </p>
      {yarn.lastOrderDay !== null && !yarn.tooLate && (
        <p>
          Ask for another skein by <strong>{printDay(yarn.lastOrderDay)}</strong>, and you hardly
          have to wait for it.
        </p>
      )}
      {yarn.tooLate && (
        <Notice tone="wrong">
          It may run out before another skein can be here. Ask for one now.
        </Notice>
      )}
      <p>
        <a className="df-button" href={garmentHash(record.id, 'yarn')}>
          <Icon name="yarn" />
          How much is left
        </a>
      </p>
    </Card>
  );
};
