import { type PaceForecast, paceCalendar } from '@dryflat/engine/routes';
import type { Fault } from '@dryflat/engine/units';
import { useState } from 'react';
import { Button, FaultList } from '../../kit/index.ts';
import { saveFile } from '../../shell/save-file.ts';
import { useGarment } from '../../store/index.ts';
import { calendarId } from '../result/calendar-id.ts';
import { fileName } from '../result/file-name.ts';

const MINUTE = 60_000;

/** The likely end of each step, for any calendar. */
export const CalendarFile = ({ forecast, by }: { forecast: PaceForecast; by: string | null }) => {
  const { record } = useGarment();
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const save = (): void => {
    const nowMs = Date.now();
    const file = paceCalendar({
      id: calendarId('pace', record.id),
      garment: record.name || 'the garment',
      nowMs,
      // A later file counts as newer, and minutes since 1970 stay below what a calendar can count.
      revision: Math.floor(nowMs / MINUTE),
      milestones: forecast.milestones,
      yarn: forecast.yarn,
      by,
    });
    setFaults(file.ok ? [] : file.faults);
    if (file.ok) saveFile(fileName(record.name, 'pace.ics'), file.value, 'text/calendar');
  };
  return (
    <>
      <div className="df-row">
        <Button icon="fetch" onPress={save}>
          Calendar file
        </Button>
        <span className="df-soft">
          Opens in any calendar. Taken anew, it moves its own entries.
        </span>
      </div>
      <FaultList faults={faults} />
    </>
  );
};
