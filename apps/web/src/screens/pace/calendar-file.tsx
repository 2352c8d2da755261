import { type PaceForecast, paceCalendar } from '@dryflat/engine/routes';
import type { Fault } from '@dryflat/engine/units';
import { goingOut } from '@dryflat/record';
import { useState } from 'react';
import { Button, FaultList } from '../../kit/index.ts';
import { useSaveFile } from '../../shell/save-file.ts';
import { useGarment } from '../../store/index.ts';
import { calendarId } from '../result/calendar-id.ts';

const MINUTE = 60_000;

/** The likely end of each step, for any calendar. */
export const CalendarFile = ({ forecast, by }: { forecast: PaceForecast; by: string | null }) => {
  const { record } = useGarment();
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const saveFile = useSaveFile();
  const out = goingOut(record);
  const save = (): void => {
    const nowMs = Date.now();
    const file = paceCalendar({
      id: calendarId('pace', record.id),
      garment: out.name,
      nowMs,
      // A later file counts as newer, and minutes since 1970 stay below what a calendar can count.
      revision: Math.floor(nowMs / MINUTE),
      milestones: forecast.milestones,
      yarn: forecast.yarn,
      by,
    });
    setFaults(file.ok ? [] : file.faults);
    if (file.ok) saveFile(`${out.fileName}-pace.ics`, file.value, 'text/calendar');
  };
  return (
    <>
      <div className="df-row">
        <Button icon="fetch" onPress={save}>
          Calendar file
        </Button>
        <span className="df-soft">
          Opens in any calendar. Taken anew, it moves its own entries. There the garment is called “
          {out.name}”.
        </span>
      </div>
      <FaultList faults={faults} />
    </>
  );
};
