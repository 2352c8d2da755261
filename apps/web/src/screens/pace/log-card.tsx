import type { PaceEntry } from '@dryflat/record';
import { useState } from 'react';
import { Button, Card, ChoiceChips, CountField, IconButton, toast } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { printDay, today } from '../result/today.ts';
import { DurationField } from './duration-field.tsx';
import { printDuration } from './parse-duration.ts';
import { usePace } from './use-pace.ts';

const FABRICS = [
  { value: 'plain', label: 'Plain fabric' },
  { value: 'worked', label: 'Crossed, turned or in colors' },
] as const;

/** Rows that were timed: how fast this knitter is. */
export const LogCard = () => {
  const { readOnly } = useGarment();
  const { pace } = usePace();
  return (
    <Card title="How fast you knit">
      <p className="df-soft">
        Time some rows and count their stitches. Until then 15 to 40 stitches a minute are taken,
        half of that where stitches are crossed: common practice, no source.
      </p>
      {pace.log.length > 0 && (
        <ul className="df-list">
          {pace.log.map((entry) => (
            <Entry key={entry.id} entry={entry} />
          ))}
        </ul>
      )}
      {!readOnly && <AddEntry />}
    </Card>
  );
};

const Entry = ({ entry }: { entry: PaceEntry }) => {
  const { readOnly, undo } = useGarment();
  const { edit } = usePace();
  const a = Math.round((10 * entry.stitches) / entry.minutes) / 10;
  const what = `${entry.stitches} stitches in ${printDuration(entry.minutes)}`;
  const remove = (): void => {
    edit((pace) => {
      pace.log = pace.log.filter(({ id }) => id !== entry.id);
    });
    toast(`${what} removed.`, undo);
  };
  return (
    <li className="pc-entry">
      <span>
        <strong>{a} a minute</strong>
        {entry.fabric === 'worked' && ', crossed or in colors'}
        <br />
        <span className="df-soft">
          {what}
          {entry.on && `, ${printDay(entry.on)}`}
        </span>
      </span>
      {!readOnly && <IconButton icon="bin" label={`Remove ${what}`} onPress={remove} />}
    </li>
  );
};

const AddEntry = () => {
  const { edit } = usePace();
  const [turn, setTurn] = useState(0);
  const [stitches, setStitches] = useState<number | null>(null);
  const [minutes, setMinutes] = useState<number | null>(null);
  const [fabric, setFabric] = useState<PaceEntry['fabric']>('plain');
  const add = (): void => {
    if (stitches === null || minutes === null) return;
    edit((pace) => {
      pace.log.push({ id: newId(), on: today(), minutes, stitches, fabric });
    });
    setStitches(null);
    setMinutes(null);
    setTurn(turn + 1);
  };
  return (
    <div className="df-stack" key={turn}>
      <div className="df-three">
        <CountField
          label="Stitches knit"
          path="pace/log/new/stitches"
          value={stitches}
          onCommit={setStitches}
        />
        <DurationField
          label="In so many minutes"
          path="pace/log/new/minutes"
          bounds={{ bare: 'minutes', least: 0.5, most: 10_000 }}
          minutes={minutes}
          onCommit={setMinutes}
        />
      </div>
      <ChoiceChips label="It was" value={fabric} onChange={setFabric} choices={FABRICS} />
      <div className="df-row">
        <Button icon="add" onPress={add} isDisabled={stitches === null || minutes === null}>
          Note it down
        </Button>
      </div>
    </div>
  );
};
