import type { ClockMark, DryingForecast, Spread } from '@dryflat/engine/drying';
import { useEffect, useMemo, useRef } from 'react';
import { announce, Card, Disclosure, FaultList, Notice } from '../../kit/index.ts';
import { BrokenForecast } from '../forecast/not-yet.tsx';
import { chanceWords } from '../result/chance-words.ts';
import { aboutWords, betweenWords, lastWords, momentWords, withMoments } from './clock-words.ts';
import type { DryingProps } from './edit-drying.ts';
import { roomWordOf } from './humidity-words.ts';
import { useMasses } from './masses.ts';
import type { DryingNow } from './use-drying.ts';
import { WashingLine } from './washing-line.tsx';

const HOUR = 3_600_000;

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

export interface AnswerProps extends DryingProps {
  readonly at: DryingNow;
  readonly now: number;
}

/** When it is dry, when to look and turn, and what the scale will show. */
export const AnswerCard = (props: AnswerProps) => {
  const { at, now } = props;
  const faults = at.faults.map((fault) => ({
    ...fault,
    given: withMoments(fault.given, now),
    problem: withMoments(fault.problem, now),
  }));
  return (
    <Card title="When it is dry">
      {at.broken !== null && <BrokenForecast message={at.broken} />}
      <FaultList faults={faults} />
      {at.forecast && <Told {...props} forecast={at.forecast} />}
      {at.forecast === null && at.pending && <p role="status">Working it out…</p>}
    </Card>
  );
};

/** A spread of hours as moments. */
const rangeOf = (begun: number, { p5, p95 }: Spread, now: number): string =>
  betweenWords(begun + p5 * HOUR, begun + p95 * HOUR, now);

const headline = (forecast: DryingForecast, begun: number, now: number): string => {
  if (forecast.now?.state === 'dry' || forecast.dryHours.p95 === 0) return 'Dry, by its mass';
  return capital(rangeOf(begun, forecast.dryHours, now));
};

/** What the clock alone says of now, by the ends and the middle of the range. */
const byTheClock = ({ dryHours }: DryingForecast, hours: number): string => {
  if (hours < dryHours.p5) return 'By the clock it is not dry yet: less than 1 chance in 20.';
  if (hours < dryHours.p50) return 'By the clock it may be dry, but more likely it is not.';
  if (hours < dryHours.p95) return 'By the clock it is more likely dry than not.';
  return 'By the clock it is dry: about 19 chances in 20.';
};

const Told = ({ forecast, drying, now, at }: AnswerProps & { forecast: DryingForecast }) => {
  const { mass } = useMasses();
  const begun = Date.parse(drying.begun);
  const main = headline(forecast, begun, now);
  useToldForecast(at.pending ? null : main);
  const weighed = useMemo(
    () =>
      drying.weighings.map((each) => ({
        hours: (Date.parse(each.at) - begun) / HOUR,
        massG: each.massG,
      })),
    [drying.weighings, begun],
  );
  const { p50 } = forecast.dryHours;
  return (
    <>
      <p className="df-dry-when" data-pending={at.pending || undefined}>
        {main}
      </p>
      <p>
        9 in 10 such dryings end in that time; half of them by{' '}
        {aboutWords(begun + p50 * HOUR, now).replace('about ', '')}, {lastWords(p50)} after it was
        laid out. {byTheClock(forecast, (now - begun) / HOUR)}
      </p>
      {forecast.now && (
        <p>
          <strong>{forecast.now.text}</strong> At the weighing of{' '}
          {momentWords(begun + forecast.now.hours * HOUR, now)} the chance that it was dry was{' '}
          {chanceWords(forecast.now.chance)}.
        </p>
      )}
      <p className="df-dry-scale">
        Dry on the scale: <strong>{mass(forecast.dryAtG)}</strong> or less
      </p>
      <WashingLine
        forecast={forecast}
        begun={begun}
        now={now}
        weighed={weighed}
        label={`Mass over time: from ${mass(forecast.course[0]?.massG.p50 ?? forecast.dryAtG)} when it was laid out to ${mass(forecast.dryAtG)} dry. ${main}.`}
      />
      <LineKey />
      <Marks marks={forecast.marks} begun={begun} now={now} />
      <Guess drying={drying} at={at} now={now} />
      {forecast.notices.map(({ code, text }) => (
        <Notice key={code} tone="unsure">
          {text}
        </Notice>
      ))}
      <StandsOn forecast={forecast} begun={begun} now={now} />
    </>
  );
};

const LineKey = () => (
  <ul className="df-wash-key">
    <li>
      <i data-of="band" /> mass: likeliest, and 9 in 10
    </li>
    <li>
      <i data-of="dot" /> weighed
    </li>
    <li>
      <i data-of="dry" /> dry
    </li>
  </ul>
);

const KIND_WORDS: Readonly<Record<ClockMark['id'], string>> = {
  'first-look': 'First look',
  turn: 'Turn it',
  'may-be-dry': 'Look',
  'look-again': 'Look again',
  dry: 'Likely dry',
};

/** A look is when it is; what waits for the fabric is a range. */
const whenOf = ({ id, hours, within }: ClockMark, begun: number, now: number): string => {
  const about = capital(aboutWords(begun + hours * HOUR, now));
  return id === 'turn' || id === 'first-look' ? `${about} (${rangeOf(begun, within, now)})` : about;
};

const Marks = ({
  marks,
  begun,
  now,
}: {
  marks: readonly ClockMark[];
  begun: number;
  now: number;
}) => (
  <ol className="df-marks" aria-label="When to look">
    {marks.map((mark) => (
      <li
        key={mark.id}
        data-kind={mark.kind}
        data-due={begun + mark.hours * HOUR < now || undefined}
      >
        <strong>{KIND_WORDS[mark.id]}</strong>
        <span>{whenOf(mark, begun, now)}</span>
        <span className="df-soft">{mark.text}</span>
      </li>
    ))}
  </ol>
);

/** How much hangs on the humidity where it was said by a word. */
const Guess = ({ drying, at, now }: Omit<AnswerProps, 'edit'>) => {
  const word = roomWordOf(drying.air.humidityPercent);
  if (word === null || at.otherwise === null) return null;
  const begun = Date.parse(drying.begun);
  const { drier, damper } = at.otherwise;
  return (
    <Notice tone="unsure">
      The humidity is a guess, {word.percent} % for a room that is{' '}
      {word.label.toLowerCase().replace(', ', ' and ')}. At {word.low} % it dries{' '}
      {rangeOf(begun, drier, now)}; at {word.high} %, {rangeOf(begun, damper, now)}. A hygrometer
      settles that, and so does one weighing.
    </Notice>
  );
};

const STANDING: Readonly<Record<string, string>> = {
  read: 'read in the work itself',
  'read-second-hand': 'as quoted by others',
  'from-memory': 'from memory',
  data: 'computed from its open data',
  assumption: 'assumption',
};

const StandsOn = ({
  forecast,
  begun,
  now,
}: {
  forecast: DryingForecast;
  begun: number;
  now: number;
}) => {
  const { mass } = useMasses();
  return (
    <Disclosure title="In numbers, and what it stands on">
      <div className="df-stack">
        <dl className="df-dry-numbers">
          <div>
            <dt>Water to lose</dt>
            <dd>
              {mass(forecast.waterG.p50)}; {mass(forecast.waterG.p5)} to {mass(forecast.waterG.p95)}
            </dd>
          </div>
          <div>
            <dt>Lost in an hour while all of it is wet</dt>
            <dd>
              {mass(forecast.rateG.p50)}; {mass(forecast.rateG.p5)} to {mass(forecast.rateG.p95)}
            </dd>
          </div>
          {forecast.places.map(({ name, dryHours }) => (
            <div key={name}>
              <dt>{capital(name)}</dt>
              <dd>dry {rangeOf(begun, dryHours, now)}</dd>
            </div>
          ))}
          <div>
            <dt>Counts as dry</dt>
            <dd>
              the whole within {forecast.tolerance.whole * 100} % of its dry fibre of what this room
              leaves in it, the last place within {forecast.tolerance.place * 100} %
            </dd>
          </div>
        </dl>
        <ul className="df-dry-bases">
          {forecast.bases.map(({ what, source, standing }) => (
            <li key={what}>
              {what}: {STANDING[standing] ?? standing}
              {source && <span className="df-soft">. {source}</span>}
            </li>
          ))}
        </ul>
      </div>
    </Disclosure>
  );
};

/** Speaks a forecast that differs from the one before; the first is not news. */
const useToldForecast = (line: string | null): void => {
  const told = useRef<string | null>(null);
  useEffect(() => {
    if (line === null) return;
    if (told.current !== null && told.current !== line) announce(`Dry: ${line}`);
    told.current = line;
  }, [line]);
};
