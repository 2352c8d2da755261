import { restCaution } from '@dryflat/engine/routes';
import { useState } from 'react';
import { Button, Card, CountField, IconButton, Notice, SectionFaults } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { assumedOf } from '../result/assumed.ts';
import { DayField } from '../result/day-field.tsx';
import { printDay } from '../result/today.ts';
import { DurationField } from './duration-field.tsx';
import { usePace } from './use-pace.ts';
import { weekdays } from './weekdays.ts';

/** When there is time to knit, and by when it is wanted. */
export const HoursCard = () => {
  const { record } = useGarment();
  const { pace } = usePace();
  const caution = restCaution(pace.hours);
  return (
    <Card title="When you can knit">
      {assumedOf(record, 'pace').map((each) => (
        <p key={each} className="df-soft">
          {each}
        </p>
      ))}
      <Week />
      {caution !== null && <Notice tone="unsure">{caution}</Notice>}
      <Dates />
      <AwayDays />
      <SectionFaults prefix="pace" />
      <SectionFaults prefix="plan.finishBy" />
    </Card>
  );
};

const Week = () => {
  const { pace, edit } = usePace();
  return (
    <div className="pc-week">
      {weekdays().map((name, day) => (
        <DurationField
          key={name}
          label={name}
          path={`pace/hours/${day}`}
          bounds={{ bare: 'hours', least: 0, most: 1440 }}
          minutes={(pace.hours[day] ?? 0) * 60}
          onCommit={(minutes) =>
            edit((each) => {
              each.hours[day] = (minutes ?? 0) / 60;
            })
          }
        />
      ))}
    </div>
  );
};

const Dates = () => {
  const { record, change } = useGarment();
  const { pace, edit } = usePace();
  return (
    <div className="df-three">
      <DayField
        label="Begin on"
        value={pace.from}
        onChange={(from) =>
          edit((each) => {
            if (from === null) delete each.from;
            else each.from = from;
          })
        }
      />
      <DayField
        label="Ready by"
        value={record.plan.finishBy}
        onChange={(by) =>
          change((draft) => {
            if (by === null) delete draft.plan.finishBy;
            else draft.plan.finishBy = by;
          })
        }
      />
      <CountField
        label="Days until another skein is here"
        hint="Empty where none is to be had."
        path="pace/shopDays"
        whole
        value={pace.shopDays ?? null}
        onCommit={(days) =>
          edit((each) => {
            if (days === null) delete each.shopDays;
            else each.shopDays = days;
          })
        }
      />
    </div>
  );
};

const AwayDays = () => {
  const { readOnly } = useGarment();
  const { pace, edit } = usePace();
  const set = (change: (away: readonly string[]) => string[]): void =>
    edit((each) => {
      each.away = change(each.away);
    });
  return (
    <>
      {pace.away.length > 0 && (
        <ul className="pc-away" aria-label="Days without knitting">
          {pace.away.map((day) => (
            <li key={day}>
              {printDay(day)}
              {!readOnly && (
                <IconButton
                  icon="close"
                  label={`${printDay(day)} is for knitting after all`}
                  onPress={() => set((away) => away.filter((each) => each !== day))}
                />
              )}
            </li>
          ))}
        </ul>
      )}
      <AddAway onAdd={(day) => set((away) => [...new Set([...away, day])].sort())} />
    </>
  );
};

const AddAway = ({ onAdd }: { onAdd: (day: string) => void }) => {
  const { readOnly } = useGarment();
  const [day, setDay] = useState<string | null>(null);
  if (readOnly) return null;
  return (
    <form
      className="pc-add-day"
      onSubmit={(event) => {
        event.preventDefault();
        if (day !== null) onAdd(day);
        setDay(null);
      }}
    >
      <DayField label="A day without knitting" value={day ?? undefined} onChange={setDay} />
      <Button type="submit" icon="add" isDisabled={day === null}>
        Leave it out
      </Button>
    </form>
  );
};
