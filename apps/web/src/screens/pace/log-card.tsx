import type { PaceForecast } from '@dryflat/engine/routes';
import type { Spread } from '@dryflat/engine/stats';
import type { PaceEntry } from '@dryflat/record';
import { useState } from 'react';
import { Button, Card, ChoiceChips, IconButton, toast, useWords } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { useTyped, useTypedCount } from '../evidence/typed.ts';
import { TypedField } from '../evidence/typed-field.tsx';
import { printDay, today } from '../result/today.ts';
import { parseDuration, printDuration } from './parse-duration.ts';
import { usePace } from './use-pace.ts';

const useFabrics = (): Readonly<Record<PaceEntry['fabric'], string>> => {
  const say = useWords();
  return { plain: 'Plain fabric', worked: `Crossed, turned or in ${say('color')}s` };
};

/** Stitches that were timed: how fast this knitter is. */
export const LogCard = ({ pace }: { pace: PaceForecast['pace'] | null }) => {
  const { readOnly } = useGarment();
  const { log } = usePace().pace;
  return (
    <Card title="How fast you knit">
      {pace && <Rates pace={pace} timed={log.length > 0} />}
      <p>Time some rows with a watch and count their stitches. One row says much already.</p>
      {!readOnly && <AddEntry />}
      {log.length > 0 && (
        <ul className="pc-log" aria-label="Timed so far">
          {log.map((entry) => (
            <Entry key={entry.id} entry={entry} />
          ))}
        </ul>
      )}
    </Card>
  );
};

const Rates = ({ pace, timed }: { pace: PaceForecast['pace']; timed: boolean }) => {
  const fabrics = useFabrics();
  return (
    <>
      <dl className="pc-rates">
        {(['plain', 'worked'] as const).map((fabric) => (
          <div key={fabric}>
            <dt>{fabrics[fabric]}</dt>
            <dd>{rateOf(pace[fabric])} stitches a minute</dd>
          </div>
        ))}
      </dl>
      {!timed && <p className="df-soft">Common practice, no source, until you time some rows.</p>}
    </>
  );
};

const rateOf = ({ p5, p95 }: Spread): string => `${Math.round(p5)}–${Math.round(p95)}`;

const Entry = ({ entry }: { entry: PaceEntry }) => {
  const { readOnly, undo } = useGarment();
  const { edit } = usePace();
  const fabrics = useFabrics();
  const { stitches, minutes, fabric, on } = entry;
  const what = `${stitches} stitches in ${printDuration(minutes)}`;
  const remove = (): void => {
    edit((pace) => {
      pace.log = pace.log.filter(({ id }) => id !== entry.id);
    });
    toast(`${what} removed.`, undo);
  };
  return (
    <li>
      <span>
        <strong>{Math.round((10 * stitches) / minutes) / 10} a minute</strong>
        {fabric === 'worked' && `, ${fabrics.worked.toLowerCase()}`}
        <span className="df-soft">
          {what}
          {on && `, ${printDay(on)}`}
        </span>
      </span>
      {!readOnly && <IconButton icon="bin" label={`Remove ${what}`} onPress={remove} />}
    </li>
  );
};

const BOUNDS = { bare: 'minutes', least: 0.5, most: 10_000 } as const;

const AddEntry = () => {
  const { edit } = usePace();
  const fabrics = useFabrics();
  const [fabric, setFabric] = useState<PaceEntry['fabric']>('plain');
  const stitches = useTypedCount('pace/log/new/stitches', 'Stitches knit');
  const minutes = useTyped('pace/log/new/minutes', 'In how many minutes', (text, label) =>
    parseDuration(text, label, BOUNDS),
  );
  const add = (): void => {
    const [many, long] = [stitches.read(), minutes.read()];
    if (many === null || long === null) return;
    edit((pace) => {
      pace.log.push({ id: newId(), on: today(), minutes: long, stitches: many, fabric });
    });
    stitches.clear();
    minutes.clear();
  };
  return (
    <form
      className="df-stack"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <div className="df-columns">
        <TypedField typed={stitches} />
        <TypedField typed={minutes} hint="Such as 4, 1:05 or 1.5 h" />
      </div>
      <ChoiceChips
        label="It was"
        value={fabric}
        onChange={setFabric}
        choices={(['plain', 'worked'] as const).map((value) => ({ value, label: fabrics[value] }))}
      />
      <div>
        <Button
          type="submit"
          icon="add"
          look="main"
          isDisabled={stitches.isEmpty || minutes.isEmpty}
        >
          Note it down
        </Button>
      </div>
    </form>
  );
};
