import { Card, CountField, IconButton, Notice, SectionFaults } from '../../kit/index.ts';
import { useGarment } from '../../store/index.ts';
import { DayField } from '../result/day-field.tsx';
import { printDay } from '../result/today.ts';
import { DurationField } from './duration-field.tsx';
import { usePace } from './use-pace.ts';
import { weekdays } from './weekdays.ts';

/** Beyond this in a day the rest for hands is brought up. Assumption. */
const LONG_DAY = 3;

/** When there is time to knit, and by when it is wanted. */
export const HoursCard = () => {
  const { record, change } = useGarment();
  const { pace, assumed, edit } = usePace();
  return (
    <Card title="When you can knit">
      {assumed && <p className="df-soft">An hour each day is assumed until you say otherwise.</p>}
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
      {Math.max(...pace.hours) > LONG_DAY && (
        <Notice>
          Rest hands and wrists in between. Pain that stays is a matter for somebody qualified, not
          for a plan.
        </Notice>
      )}
      <div className="df-three">
        <DayField
          label="From"
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
      <AwayDays />
      <SectionFaults prefix="pace" />
    </Card>
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
      <DayField
        key={pace.away.length}
        label="A day without knitting"
        value={undefined}
        onChange={(day) => day !== null && set((away) => [...new Set([...away, day])].sort())}
      />
    </>
  );
};
