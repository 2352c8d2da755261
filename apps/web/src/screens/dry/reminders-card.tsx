import { type ClockMark, type DryingForecast, dryingCalendar } from '@dryflat/engine/drying';
import { type Drying, goingOut } from '@dryflat/record';
import { useEffect, useState } from 'react';
import { Button, Card, FaultList, Notice } from '../../kit/index.ts';
import {
  askLeave,
  type Leave,
  leaveNow,
  REMINDERS,
  type Reminder,
  readReminders,
  withReminders,
} from '../../reminders/index.ts';
import { garmentHash } from '../../shell/hash.ts';
import { useSaveFile } from '../../shell/save-file.ts';
import { useDeviceNote, useGarment } from '../../store/index.ts';
import { calendarId } from '../result/calendar-id.ts';

const HOUR = 3_600_000;

const TITLES: Readonly<Record<ClockMark['id'], (name: string) => string>> = {
  'first-look': (name) => `Weigh ${name}`,
  turn: (name) => `Turn ${name}`,
  'may-be-dry': (name) => `${name} may be dry`,
  'look-again': (name) => `Look at ${name} again`,
  dry: (name) => `${name} is likely dry`,
};

interface RemindersProps {
  readonly drying: Drying;
  readonly forecast: DryingForecast;
}

/** Reminders on this device, and a file for any calendar. */
export const RemindersCard = (props: RemindersProps) => (
  <Card title="Be reminded">
    <OnDevice {...props} />
    <Calendar {...props} />
  </Card>
);

const useReminders = ({ drying, forecast }: RemindersProps) => {
  const { record } = useGarment();
  const [note, setNote] = useDeviceNote(REMINDERS);
  const [on, setOn] = useDeviceNote(`remind/${drying.id}`);
  const begun = Date.parse(drying.begun);
  const name = record.name || 'the garment';
  const wanted: Reminder[] = forecast.marks
    .map(({ id, hours, text }) => ({
      of: drying.id,
      atMs: Math.round(begun + hours * HOUR),
      title: TITLES[id](name),
      body: text,
      hash: garmentHash(record.id, 'dry'),
    }))
    .filter(({ atMs }) => atMs > Date.now());
  const next = JSON.stringify(
    withReminders(readReminders(note), drying.id, on === 'on' ? wanted : []),
  );
  // A new forecast moves the reminders along.
  useEffect(() => {
    if (next !== (note ?? '[]')) setNote(next);
  }, [next, note, setNote]);
  return { on: on === 'on', set: (to: boolean) => setOn(to ? 'on' : 'off') };
};

const OnDevice = (props: RemindersProps) => {
  const { on, set } = useReminders(props);
  const [leave, setLeave] = useState<Leave>(leaveNow);
  const press = async (): Promise<void> => {
    if (on) return set(false);
    setLeave(await askLeave());
    set(true);
  };
  return (
    <>
      <p>
        This device reminds you as long as the app stays open, in front or behind other things. A
        browser wakes no page that was closed: for that, take the calendar file.
      </p>
      <div className="df-row">
        <Button onPress={() => void press()}>
          {on ? 'Stop reminding me here' : 'Remind me here'}
        </Button>
        <span role="status">{on && 'Reminders are on.'}</span>
      </div>
      {on && leave !== 'granted' && (
        <Notice tone="unsure">
          This browser does not let the app show notes outside its page, so that reminders are seen
          in the app only.
        </Notice>
      )}
    </>
  );
};

const Calendar = ({ drying, forecast }: RemindersProps) => {
  const { record } = useGarment();
  const saveFile = useSaveFile();
  const out = goingOut(record);
  const file = dryingCalendar({
    id: calendarId('drying', drying.id),
    garment: out.name,
    startMs: Date.parse(drying.begun),
    nowMs: Date.now(),
    revision: drying.weighings.length,
    marks: forecast.marks,
  });
  return (
    <>
      <div className="df-row">
        <Button
          icon="fetch"
          isDisabled={!file.ok}
          onPress={() =>
            file.ok && saveFile(`${out.fileName}-drying.ics`, file.value, 'text/calendar')
          }
        >
          Calendar file
        </Button>
        <span className="df-soft">
          Opens in any calendar. Taken anew after a weighing, it moves its own entries. There the
          garment is called “{out.name}”.
        </span>
      </div>
      {!file.ok && forecast.marks.length > 0 && <FaultList faults={file.faults} />}
    </>
  );
};
