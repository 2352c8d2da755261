import type { Drying } from '@dryflat/record';
import { Button, Card, Disclosure, IconButton, toast } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { isoDay, printDay } from '../result/today.ts';
import { lastWords, momentWords } from './clock-words.ts';

const HOUR = 3_600_000;

const dayOf = (moment: string): string => printDay(isoDay(new Date(moment)));

const took = ({ begun, dried }: Drying): string =>
  dried === undefined
    ? 'never called dry'
    : `dry after ${lastWords((Date.parse(dried) - Date.parse(begun)) / HOUR)}`;

/** Dryings before this one. */
export const PastCard = ({ past }: { past: readonly Drying[] }) => {
  const { change, readOnly, undo } = useGarment();
  if (past.length === 0) return null;
  const remove = (id: string): void => {
    change((draft) => {
      draft.dryings = draft.dryings?.filter((each) => each.id !== id) ?? [];
    });
    toast('The drying is removed.', undo);
  };
  return (
    <Disclosure level={2} title={past.length === 1 ? 'The drying before' : 'Dryings before'}>
      <ul className="df-dry-log">
        {[...past].reverse().map((each) => (
          <li key={each.id}>
            <span>
              {dayOf(each.begun)}: {took(each)}, {each.weighings.length}{' '}
              {each.weighings.length === 1 ? 'weighing' : 'weighings'}
            </span>
            <IconButton
              icon="bin"
              label={`Remove the drying of ${dayOf(each.begun)}`}
              isDisabled={readOnly}
              onPress={() => remove(each.id)}
            />
          </li>
        ))}
      </ul>
    </Disclosure>
  );
};

/** The drying is over: how long it took, and the way back. */
export const DriedCard = ({ drying, now }: { drying: Drying; now: number }) => {
  const { change, readOnly } = useGarment();
  const wetAfterAll = (): void =>
    change((draft) => {
      const found = draft.dryings?.find(({ id }) => id === drying.id);
      if (found) delete found.dried;
    });
  return (
    <Card title="Dry">
      <p>
        Called dry {momentWords(Date.parse(drying.dried!), now)}; {took(drying)}.
      </p>
      <div>
        <Button look="quiet" icon="undo" onPress={wetAfterAll} isDisabled={readOnly}>
          It is still damp
        </Button>
      </div>
    </Card>
  );
};
