import type { DryingForecast } from '@dryflat/engine/drying';
import { useState } from 'react';
import { Button, Card, IconButton, Notice, Select, toast } from '../../kit/index.ts';
import { newId, useGarment } from '../../store/index.ts';
import { betweenWords, momentWords } from './clock-words.ts';
import type { DryingProps } from './edit-drying.ts';
import { dryByTouch, handDisagrees, lastTouch, type Touch } from './touched.ts';

const FEELS: readonly { value: Touch['feels']; label: string }[] = [
  { value: 'wet', label: 'Wet' },
  { value: 'cool', label: 'Cool' },
  { value: 'dry', label: 'Dry' },
];

interface TouchProps extends DryingProps {
  readonly forecast: DryingForecast;
  readonly now: number;
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** Places that are worth a touch: the last to dry first. */
const placesOf = ({ touch, places }: DryingForecast): string[] => [
  ...new Set([touch.where, ...places.map(({ name }) => name)]),
];

/** What the hand says, with a scale and without one: a scale does not see a wet hem. */
export const TouchCard = ({ drying, edit, forecast, now }: TouchProps) => {
  const { readOnly } = useGarment();
  const places = placesOf(forecast);
  const [chosen, setChosen] = useState<string | null>(null);
  const where = chosen !== null && places.includes(chosen) ? chosen : forecast.touch.where;
  const feel = (feels: Touch['feels']): void =>
    edit((draft) => {
      draft.touches.push({ id: newId(), at: new Date().toISOString(), where, feels });
    });
  return (
    <Card title="Touch it">
      <p>{forecast.touch.text}</p>
      {places.length > 1 && (
        <Select
          label="Where"
          value={where}
          onChange={setChosen}
          options={places.map((value) => ({ value, label: capital(value) }))}
        />
      )}
      <fieldset className="df-feels">
        <legend>How does it feel there now?</legend>
        {FEELS.map(({ value, label }) => (
          <Button key={value} onPress={() => feel(value)} isDisabled={readOnly}>
            {label}
          </Button>
        ))}
      </fieldset>
      <Worth drying={drying} forecast={forecast} now={now} />
      <Touches drying={drying} edit={edit} now={now} />
    </Card>
  );
};

const Worth = ({ drying, forecast, now }: Omit<TouchProps, 'edit'>) => {
  const { where } = forecast.touch;
  const byTouch = dryByTouch(drying, forecast);
  const last = lastTouch(drying, where);
  if (handDisagrees(drying, forecast))
    return (
      <Notice tone="unsure">
        The scale calls it dry, the hand does not. A scale sees the whole and not {where}: believe
        the hand, and give it more time.
      </Notice>
    );
  if (byTouch)
    return (
      <Notice>
        By touch alone it is dry {betweenWords(byTouch.p5, byTouch.p95, now)}: a dry feel is where
        the last part begins.
      </Notice>
    );
  if (last === null && (forecast.now?.state === 'dry' || forecast.now?.state === 'unsure'))
    return (
      <Notice tone="unsure">
        Before you take the scale’s word: feel {where}. A scale does not see a part that is still
        wet.
      </Notice>
    );
  return null;
};

const SAID: Readonly<Record<Touch['feels'], string>> = { wet: 'wet', cool: 'cool', dry: 'dry' };

const Touches = ({ drying, edit, now }: DryingProps & { now: number }) => {
  const { readOnly, undo } = useGarment();
  if (drying.touches.length === 0) return null;
  const remove = (id: string): void => {
    edit((draft) => {
      draft.touches = draft.touches.filter((each) => each.id !== id);
    });
    toast('The touch is removed.', undo);
  };
  return (
    <ul className="df-dry-log" aria-label="Touches">
      {[...drying.touches].reverse().map(({ id, at, where, feels }) => (
        <li key={id}>
          <span>
            <strong>{capital(SAID[feels])}</strong> at {where}, {momentWords(Date.parse(at), now)}
          </span>
          <IconButton
            icon="bin"
            label={`Remove ${SAID[feels]} at ${where}`}
            isDisabled={readOnly}
            onPress={() => remove(id)}
          />
        </li>
      ))}
    </ul>
  );
};
